package foamfront.model.airframe;

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
 * The row inside the body, from the nose aft (common practice): a nose motor's controller behind its firewall, loads
 * for the nose, the battery's room, which ends under the wing's trailing edge or further aft where that is too short, a
 * pusher's controller, the tail's servos abreast as far as the width allows, the receiver, a fan with its jet pipe to
 * the body's end. A twin's controllers hang in its nacelles. On a profile board the same row hangs on its sides, battery on one
 * and the small things on the other; how far that lies off the middle is left out (judgement).
 *
 * @param loadsFrom where the loads for the nose start, m
 * @param from foremost place of the battery's front end, behind those loads, m
 * @param to rearmost place of its rear end, m; behind it things sit that do not slide
 * @param behind length taken by those, gaps included, m
 * @param end of the room inside: of the body, or of the pod ahead of a boom, m
 * @param middle length of the row of loads at the balance point, m; 0 without one
 * @param shared whether that row shares its bay with the battery
 * @param batteryZ centre of the battery, m
 * @param controllerX centre of a controller inside, m; 0 where none is
 * @param servoX centre of the tail's servos, m
 * @param radioX centre of the receiver, m
 * @param fanX centre of a fan unit, m; 0 without one
 */
public record Bay(
        double loadsFrom,
        double from,
        double to,
        double behind,
        double end,
        double middle,
        boolean shared,
        double batteryZ,
        double controllerX,
        double servoX,
        double radioX,
        double fanX) {
    /** Room between things in a row, m. */
    public static final double GAP = 0.005;

    /** Where the row starts, behind the firewall, m. */
    public static final double FRONT = Shaft.FIREWALL + GAP;

    static Bay of(Design design, BodyShape body, Servos servos) {
        Controller controller = controller(design.power());
        double room = controller == null ? 0 : controller.length() + GAP;
        boolean ahead = design.power() instanceof Power.NoseTractor;
        double loadsFrom = FRONT + (ahead ? room : 0);
        double from = loadsFrom + length(design, Place.NOSE, Place.BEHIND_NOSE);
        double middle = Math.max(0, length(design, Place.BALANCE_POINT, Place.BALANCE_POINT) - GAP);
        boolean shared = !(design.body() instanceof Body.TwoBayTube);

        Servo servo = design.radio().servo();
        Receiver receiver = design.radio().receiver();
        boolean profile = design.body() instanceof Body.ProfileBoard;
        // On a profile board one hangs on each side.
        double abreast = profile ? 2 : Math.max(1, Math.floor(body.insideWidth() / servo.width()));
        double rows = Math.ceil(servos.tail() / abreast) * (servo.length() + GAP);
        double first = ahead ? 0 : room;
        Fan fan = design.power() instanceof Power.DuctedFan ducted ? ducted.fan() : null;
        double behind = GAP + first + rows + receiver.length() + GAP + (fan == null ? 0 : length(fan) + GAP);

        double end = design.body().bayLength();
        double held = design.power().battery().length() + (shared && middle > 0 ? middle + GAP : 0);
        double trailing = design.wing().x() + design.wing().planform().rootChord();
        double to = Math.max(from + held, Math.min(trailing, end - behind));
        double servosFrom = to + GAP + first;
        double controllerX = ahead ? FRONT : to + GAP;
        return new Bay(
                loadsFrom,
                from,
                to,
                behind,
                end,
                middle,
                shared,
                batteryZ(design, body),
                controller == null ? 0 : controllerX + 0.5 * controller.length(),
                servosFrom + 0.5 * Math.max(0, rows - GAP),
                servosFrom + rows + 0.5 * receiver.length(),
                fan == null ? 0 : servosFrom + rows + receiver.length() + GAP + 0.5 * length(fan));
    }

    /** Of all that must lie in it one behind the other, what is left of the bay, m; negative where the row is too long. */
    public double spare(Battery battery) {
        double row = from + battery.length() + behind;
        if (shared) {
            return end - (middle > 0 ? row + GAP + middle : row);
        }
        return end - Math.max(row, from + middle + GAP);
    }

    /**
     * Room ahead of and behind the row of loads centred on the balance point, the lesser, m; negative where it runs
     * into the loads for the nose, into what sits behind the battery's room or, under a floor, out of the bay.
     */
    public double endRoom(double balanceX) {
        if (middle == 0) {
            return end;
        }
        double ahead = balanceX - 0.5 * middle - from;
        double last = shared ? to : end - GAP;
        return Math.min(ahead, last - balanceX - 0.5 * middle);
    }

    /** The controller that lies inside the body, or null. */
    public static @Nullable Controller controller(Power power) {
        if (power instanceof Power.NoseTractor tractor) {
            return tractor.plant().controller();
        }
        if (power instanceof Power.Pusher pusher) {
            return pusher.plant().controller();
        }
        return power instanceof Power.DuctedFan fan ? fan.controller() : null;
    }

    private static double length(Fan fan) {
        return Fan.LENGTH * fan.diameter();
    }

    /** Loads at either of two places, each with its gap, m. */
    private static double length(Design design, Place one, Place other) {
        double sum = 0;
        for (int i = 0; i < design.loads().size(); i++) {
            Load load = design.loads().get(i);
            if (load.place() == one || load.place() == other) {
                sum += load.length() + GAP;
            }
        }
        return sum;
    }

    /** On the floor; in a two-bay tube under the roof; on a profile board along its lower edge, or its upper over a low wing. */
    private static double batteryZ(Design design, BodyShape body) {
        if (design.body() instanceof Body.ProfileBoard) {
            Battery battery = design.power().battery();
            double up = 0.5 * (body.height() - Math.min(battery.width(), battery.height()));
            return design.wing().z() < 0 ? up : -up;
        }
        double fromAxis = 0.5 * body.height()
                - body.wall()
                - GAP
                - 0.5 * design.power().battery().height();
        return design.body() instanceof Body.TwoBayTube ? fromAxis : -fromAxis;
    }
}
