package foamfront.model.mass;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Bay;
import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Flotation;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Nose;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import foamfront.model.parts.Battery;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Receiver;
import foamfront.model.parts.Servo;

/**
 * Whether everything goes into the body, across it; {@link Bay} knows whether it does so along it.
 *
 * <p>Clearance is inside width (or height) less the thing's own, as in the trade's rule that a box be 4 to 6 mm wider
 * inside than its widest item (common practice). Battery, controller, servo and receiver may lie on either side. In a two-bay
 * tube battery and loads share the height between them. On a profile board everything hangs outside and only height counts.
 */
public final class ClearanceCheck {
    /** A fan's housing is wider than its swept circle by two walls and lips, m (judgement). */
    private static final double FAN_WALLS = 0.004;

    private ClearanceCheck() {}

    /** Least clearance over all things inside, m; negative where one does not go in. */
    public static double least(Airframe airframe) {
        Design design = airframe.design();
        BodyShape body = airframe.body();
        boolean profile = design.body() instanceof Body.ProfileBoard;
        // A load as wide as it likes may hang on a profile board: its width never counts.
        double width = profile ? Double.POSITIVE_INFINITY : body.insideWidth() - tongues(design, body);
        double height = profile ? beside(design) : body.insideHeight();
        Flotation water = airframe.stations().flotation();
        if (water != null && water.count() == 1) {
            // Behind the step the floor rises as far as the battery may slide.
            height -= water.form().rise(airframe.stations().bay().to());
        }
        Battery battery = design.power().battery();
        double tallest = 0;
        double least = either(battery.width(), battery.height(), width, height);
        for (int i = 0; i < design.loads().size(); i++) {
            Load load = design.loads().get(i);
            if (load.place() == Place.ON_TOP || load.place() == Place.BELOW) {
                continue;
            }
            least = Math.min(least, Math.min(width - load.width(), height - load.height()));
            tallest = load.place() == Place.BALANCE_POINT ? Math.max(tallest, load.height()) : tallest;
        }
        if (design.body() instanceof Body.TwoBayTube) {
            // Each bay gets half of what is left over both.
            least = Math.min(least, 0.5 * (height - battery.height() - tallest));
        }
        Servo servo = design.radio().servo();
        Receiver receiver = design.radio().receiver();
        least = Math.min(least, either(servo.width(), servo.height(), width, height));
        least = Math.min(least, either(receiver.width(), receiver.height(), width, height));
        Controller controller = Bay.controller(design.power());
        if (controller != null) {
            least = Math.min(least, either(controller.width(), controller.height(), width, height));
        }
        double round = roundPart(design.power());
        return round == 0 ? least : Math.min(least, Math.min(width, height) - round);
    }

    /** Free height on a profile board's side, under a wing in its slot or over all of it, m. */
    private static double beside(Design design) {
        double half = 0.5 * design.body().height();
        double z = design.wing().z();
        return Math.abs(z) < half ? half + Math.abs(z) - 0.5 * design.board().thickness() : 2 * half;
    }

    /** Width the tongues of a replaceable nose take from what slides past them, m. */
    private static double tongues(Design design, BodyShape body) {
        return design.body().nose() == Nose.REPLACEABLE ? 2 * body.wall() : 0;
    }

    /** Diameter of what is round and must pass inside, m: a nose motor on its firewall, a fan in its duct. */
    private static double roundPart(Power power) {
        if (power instanceof Power.NoseTractor tractor) {
            return tractor.plant().motor().diameter();
        }
        return power instanceof Power.DuctedFan fan ? fan.fan().diameter() + FAN_WALLS : 0;
    }

    /** Clearance of a thing that may lie on either side. */
    private static double either(double a, double b, double width, double height) {
        return Math.max(Math.min(width - a, height - b), Math.min(width - b, height - a));
    }
}
