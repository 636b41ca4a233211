package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import foamfront.model.design.Drive;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;
import foamfront.model.design.Undercarriage;
import foamfront.model.parts.Part;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.Wheel;

/** Bought parts that are fitted into the airframe: servos, and what power and wheels need. */
public final class FittedParts {
    /** Receives each kind of bought part; packs side by side come as one part, counted singly. */
    interface Sink {
        void take(Part part, int count);
    }

    private FittedParts() {}

    /** Wheels under the aeroplane. */
    public static int wheels(Undercarriage gear) {
        if (gear instanceof Undercarriage.Tricycle) {
            return 3;
        }
        return gear instanceof Undercarriage.TailWheel || gear instanceof Undercarriage.Amphibian ? 2 : 0;
    }

    /** Everything fitted, pieces. */
    public static int count(Airframe airframe) {
        int[] sum = {0};
        each(airframe, (part, count) -> sum[0] += count);
        return sum[0];
    }

    /** One of a counter-rotating pair is another part: two of one hand do not fly it. */
    private static void propellers(Propeller propeller, Power power, Sink sink) {
        if (power instanceof Power.TwinTractor twin && twin.countering()) {
            sink.take(propeller, 1);
            sink.take(propeller.otherHand(), 1);
        } else {
            sink.take(propeller, power.motors());
        }
    }

    /** In a fixed order. */
    static void each(Airframe airframe, Sink sink) {
        Design design = airframe.design();
        Power power = design.power();
        Drive drive = power.drive();
        if (drive instanceof PowerPlant plant) {
            sink.take(plant.motor(), power.motors());
            propellers(plant.propeller(), power, sink);
            sink.take(plant.controller(), power.motors());
        } else if (power instanceof Power.DuctedFan fan) {
            sink.take(fan.fan(), 1);
            sink.take(fan.controller(), 1);
        }
        sink.take(power.battery(), power.battery().packs());
        sink.take(design.radio().receiver(), 1);
        sink.take(design.radio().servo(), airframe.servos().total());
        Wheel wheel = design.undercarriage().wheel();
        if (wheel != null) {
            sink.take(wheel, wheels(design.undercarriage()));
        }
    }
}
