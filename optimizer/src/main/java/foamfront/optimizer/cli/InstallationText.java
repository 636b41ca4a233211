package foamfront.optimizer.cli;

import foamfront.model.aero.ParasiteBuildUp;
import foamfront.model.aero.PropellerDrag;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Drive;
import foamfront.model.design.Power;
import foamfront.model.parts.Fan;
import foamfront.model.parts.Propeller;
import foamfront.model.propulsion.Installation;
import foamfront.model.units.Numbers;
import foamfront.model.units.Unit;

/** What the aeroplane does to its propellers or fan, and what they do to it when idle, in sentences. */
final class InstallationText {
    private InstallationText() {}

    /** Empty without a motor. */
    static String of(Airframe airframe) {
        Power power = airframe.design().power();
        Drive drive = power.drive();
        if (drive == null) {
            return "";
        }
        return installed(airframe, power) + idle(drive);
    }

    private static String installed(Airframe airframe, Power power) {
        String thrust = percent(Installation.thrustShare(airframe));
        if (power instanceof Power.Pusher) {
            return "In the wake of wing and pylon the propeller gives " + thrust + " of its thrust and counts "
                    + percent(Installation.noise(power) - 1) + " of tip speed, 3 dB, louder (common practice).\n";
        }
        if (power instanceof Power.DuctedFan) {
            return "Its intakes leave the fan " + thrust + " of its thrust (derived).\n";
        }
        if (power instanceof Power.NoseTractor) {
            return "The body behind it slows the air at the propeller to "
                    + percent(Installation.inflow(airframe.design()))
                    + " of the airspeed (a textbook's rule, from memory).\n";
        }
        return "";
    }

    private static String idle(Drive drive) {
        if (!(drive.rotor() instanceof Propeller propeller)) {
            double fan = ParasiteBuildUp.idleFan((Fan) drive.rotor());
            return "Idle, the fan adds " + area(fan) + " of drag area (judgement).\n";
        }
        String still = area(ParasiteBuildUp.idlePropeller(propeller));
        if (propeller.folds()) {
            return "Idle, a propeller folds and adds " + still
                    + " of drag area (a textbook's feathered blades, from memory).\n";
        }
        double turning =
                PropellerDrag.dragArea(PropellerDrag.State.WINDMILLING, propeller.diameter(), propeller.blades());
        return "Idle, a braked propeller adds " + still
                + " of drag area (a textbook's stopped blades, from memory); with the brake"
                + " off it windmills and adds " + area(turning) + " (judgement).\n";
    }

    private static String area(double si) {
        return Numbers.significant(Unit.SQUARE_DECIMETRE.fromSi(si), 2) + " dm2";
    }

    private static String percent(double share) {
        return Numbers.significant(Unit.PERCENT.fromSi(share), 3) + " %";
    }
}
