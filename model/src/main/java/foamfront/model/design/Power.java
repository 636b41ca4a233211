package foamfront.model.design;

import static foamfront.model.units.Require.positive;

import foamfront.model.parts.Battery;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Fan;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Rotor;
import org.jspecify.annotations.Nullable;

/** What drives the aeroplane, and where. Every kind carries a battery: the radio needs one too. */
public sealed interface Power {
    PowerKind kind();

    Battery battery();

    /** What each motor is and turns; null without one. */
    @Nullable
    Drive drive();

    /** How many such drives share the battery. */
    default int motors() {
        return 1;
    }

    /** Motor and propeller at the nose. */
    record NoseTractor(PowerPlant plant) implements Power {
        @Override
        public PowerKind kind() {
            return PowerKind.NOSE_TRACTOR;
        }

        @Override
        public Battery battery() {
            return plant.battery();
        }

        @Override
        public Drive drive() {
            return plant;
        }
    }

    /** Motor on a pylon over the wing's trailing edge, propeller behind it and clear of the body below. */
    record Pusher(PowerPlant plant) implements Power {
        @Override
        public PowerKind kind() {
            return PowerKind.PUSHER;
        }

        @Override
        public Battery battery() {
            return plant.battery();
        }

        @Override
        public Drive drive() {
            return plant;
        }
    }

    /**
     * Two alike on the wing, one battery.
     *
     * @param y of each motor from the centre line, m
     * @param countering whether they turn against each other, with a propeller of either hand at the same price
     */
    record TwinTractor(PowerPlant plant, double y, boolean countering) implements Power {
        public TwinTractor {
            positive("motor station", y, "m");
        }

        @Override
        public PowerKind kind() {
            return countering ? PowerKind.COUNTER_TWIN : PowerKind.TWIN_TRACTOR;
        }

        @Override
        public Battery battery() {
            return plant.battery();
        }

        @Override
        public Drive drive() {
            return plant;
        }

        @Override
        public int motors() {
            return 2;
        }
    }

    /** A fan unit with its motor in the body. */
    record DuctedFan(Fan fan, Battery battery, Controller controller) implements Power, Drive {
        @Override
        public PowerKind kind() {
            return PowerKind.DUCTED_FAN;
        }

        @Override
        public Drive drive() {
            return this;
        }

        @Override
        public Motor motor() {
            return fan.motor();
        }

        @Override
        public Rotor rotor() {
            return fan;
        }
    }

    /** Thrown by hand; the battery feeds the radio. */
    record Unpowered(Battery battery) implements Power {
        /** Cells in series that a receiver and its servos stand through a small regulator (common practice). */
        public static final int MOST_CELLS = 2;

        @Override
        public PowerKind kind() {
            return PowerKind.NONE;
        }

        @Override
        public @Nullable Drive drive() {
            return null;
        }

        @Override
        public int motors() {
            return 0;
        }
    }
}
