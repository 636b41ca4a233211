package foamfront.model.mass;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.BodyShape;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import foamfront.model.parts.Battery;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Fan;
import foamfront.model.parts.Receiver;
import foamfront.model.parts.Servo;
import org.jspecify.annotations.Nullable;

/**
 * Whether everything goes into the body.
 *
 * <p>Clearance is inside width (or height) less the thing's own, as in the trade's rule that a box be 4 to 6 mm wider
 * inside than its widest item (common practice). Battery, controller, servo and receiver may lie on either side. In a two-bay
 * tube battery and loads share the height between them. On a profile board everything hangs outside and only height counts.
 *
 * @param clearance least over all things inside, m; negative where one does not go in
 * @param spareLength of the bay behind all that must lie in a row, m; negative where the row is too long
 */
public record ClearanceCheck(double clearance, double spareLength) {
    /** A fan's housing is wider than its swept circle by two walls and lips, m (judgement). */
    private static final double FAN_WALLS = 0.004;

    public static ClearanceCheck of(Airframe airframe) {
        return new ClearanceCheck(clearance(airframe), spare(airframe));
    }

    private static double clearance(Airframe airframe) {
        Design design = airframe.design();
        BodyShape body = airframe.body();
        boolean profile = design.body() instanceof Body.ProfileBoard;
        // A load as wide as it likes may hang on a profile board: its width never counts.
        double width = profile ? Double.POSITIVE_INFINITY : body.insideWidth();
        double height = profile ? body.height() : body.insideHeight();
        Battery battery = design.power().battery();
        double tallest = 0;
        double least = either(battery.width(), battery.height(), width, height);
        for (Load load : design.loads()) {
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
        Controller controller = controller(design.power());
        if (controller != null) {
            least = Math.min(least, either(controller.width(), controller.height(), width, height));
        }
        double round = roundPart(design.power());
        return round == 0 ? least : Math.min(least, Math.min(width, height) - round);
    }

    private static @Nullable Controller controller(Power power) {
        if (power instanceof Power.NoseTractor tractor) {
            return tractor.plant().controller();
        }
        if (power instanceof Power.Pusher pusher) {
            return pusher.plant().controller();
        }
        if (power instanceof Power.TwinTractor twin) {
            return twin.plant().controller();
        }
        return power instanceof Power.DuctedFan fan ? fan.controller() : null;
    }

    /** Diameter of what is round and must pass inside, m: a nose motor on its firewall, a fan in its duct. */
    private static double roundPart(Power power) {
        if (power instanceof Power.NoseTractor tractor) {
            return tractor.plant().motor().diameter();
        }
        return power instanceof Power.DuctedFan fan ? fan.fan().diameter() + FAN_WALLS : 0;
    }

    /**
     * Room between the body's ends and the row of loads centred on the balance point, m; negative where it sticks out.
     *
     * @param balanceX balance point aimed at, m from the nose
     */
    public static double endRoom(Airframe airframe, double balanceX) {
        double half = 0.5 * LoadRow.balanceLength(airframe);
        if (half == 0) {
            return airframe.body().length();
        }
        return Math.min(balanceX - half - LoadRow.FRONT, airframe.body().length() - balanceX - half);
    }

    private static double spare(Airframe airframe) {
        Design design = airframe.design();
        double row = LoadRow.FRONT;
        for (Load load : design.loads()) {
            if (load.place() == Place.NOSE || load.place() == Place.BEHIND_NOSE) {
                row += load.length() + LoadRow.GAP;
            }
        }
        row += design.power().battery().length() + LoadRow.GAP;
        double middle = LoadRow.balanceLength(airframe);
        boolean apart = design.body() instanceof Body.TwoBayTube;
        if (middle > 0 && !apart) {
            row += middle + LoadRow.GAP;
        }
        int servos = MovingSurfaces.of(design).tail();
        Servo servo = design.radio().servo();
        double abreast = Math.max(1, Math.floor(airframe.body().insideWidth() / servo.width()));
        row += Math.ceil(servos / abreast) * (servo.length() + LoadRow.GAP);
        row += design.radio().receiver().length() + LoadRow.GAP;
        if (design.power() instanceof Power.DuctedFan fan) {
            row += Fan.LENGTH * fan.fan().diameter() + LoadRow.GAP;
        }
        double bay = design.body() instanceof Body.PodAndBoom pod
                ? Math.min(pod.podLength(), pod.length())
                : airframe.body().length();
        double below = apart ? LoadRow.FRONT + middle + LoadRow.GAP : 0;
        return bay - Math.max(row, below);
    }

    /** Clearance of a thing that may lie on either side. */
    private static double either(double a, double b, double width, double height) {
        return Math.max(Math.min(width - a, height - b), Math.min(width - b, height - a));
    }
}
