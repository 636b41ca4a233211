package foamfront.model.design;

import static foamfront.model.units.Require.positive;
import static foamfront.model.units.Require.within;

import foamfront.model.parts.Wheel;
import org.jspecify.annotations.Nullable;

/** What the aeroplane stands, floats or lands on. Legs follow from the propeller's clearance and the ground attitude. */
public sealed interface Undercarriage {
    UndercarriageKind kind();

    /** What it rolls on, all of one size; null without wheels. */
    default @Nullable Wheel wheel() {
        return null;
    }

    /** Thrown by hand, lands on its belly. */
    record None() implements Undercarriage {
        @Override
        public UndercarriageKind kind() {
            return UndercarriageKind.NONE;
        }
    }

    /** Two main wheels ahead of the balance point, a skid or small wheel at the tail. */
    record TailWheel(Wheel wheel) implements Undercarriage {
        @Override
        public UndercarriageKind kind() {
            return UndercarriageKind.TAIL_WHEEL;
        }
    }

    /** Two main wheels behind the balance point, one under the nose. */
    record Tricycle(Wheel wheel) implements Undercarriage {
        @Override
        public UndercarriageKind kind() {
            return UndercarriageKind.TRICYCLE;
        }
    }

    /**
     * Two floats.
     *
     * @param length m
     * @param beam of one, m
     * @param deadrise of each half of their bottoms, rad
     */
    record Floats(double length, double beam, double deadrise) implements Undercarriage {
        public Floats {
            within("float deadrise", deadrise, 0, 0.6, "rad");
            positive("float length", length, "m");
            positive("float beam", beam, "m");
        }

        @Override
        public UndercarriageKind kind() {
            return UndercarriageKind.FLOATS;
        }
    }

    /** Two wheels ahead of the balance point of a boat hull, swung up along its sides by hand before it floats. */
    record Amphibian(Wheel wheel) implements Undercarriage {
        @Override
        public UndercarriageKind kind() {
            return UndercarriageKind.AMPHIBIAN;
        }
    }
}
