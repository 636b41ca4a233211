package foamfront.model.structure;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Tail;

/**
 * The fitted servo's torque against the hinge moments H = ½ ρ V² ∫c_c² dy |b₂| δ of the surfaces it drives at full
 * travel and top speed, horns alike on both ends. Full travel: elevator, elevon and aileron 20°, rudder 25°
 * (judgement); flaps 40°, but let down at no more than 1.8 times the stall speed (judgement).
 */
final class ServoLoad {
    private static final double RADIAN = Math.PI / 180;
    private static final double FLAP_SPEED = 1.8;

    private ServoLoad() {}

    /** Servo torque over the greatest hinge moment. */
    static double ratio(Airframe airframe, FlightLoads loads) {
        double worst = 0;
        double rudders = 0;
        boolean apart = airframe.design().tail() instanceof Tail.VTail;
        // Servos of one side drive both wings of a biplane.
        double wings = 0;
        for (int k = 0; k < airframe.surfaces().size(); k++) {
            Surface surface = airframe.surfaces().get(k);
            wings += surface.role() == Surface.Role.WING || surface.role() == Surface.Role.SECOND_WING ? 1 : 0;
        }
        for (int j = 0; j < airframe.surfaces().size(); j++) {
            Surface surface = airframe.surfaces().get(j);
            for (int i = 0; i < surface.controls().size(); i++) {
                Control control = surface.controls().get(i);
                double moment = moment(surface, control, loads);
                switch (control.kind()) {
                    case RUDDER -> rudders += moment;
                    case ELEVATOR -> worst = Math.max(worst, apart ? moment : 2 * moment);
                    case AILERON, ELEVON, FLAP, FLAPERON -> worst = Math.max(worst, wings * moment);
                }
            }
        }
        double torque = airframe.design().radio().servo().torque();
        return StructureMargins.reserve(torque, Math.max(worst, rudders));
    }

    /** Of the control on one half of the surface, N m. */
    static double moment(Surface surface, Control control, FlightLoads loads) {
        double e = control.chordFraction();
        double travel = travel(control.kind());
        double speed = control.kind() == Control.Kind.FLAP
                ? Math.min(loads.topSpeed(), FLAP_SPEED * loads.stallSpeed())
                : loads.topSpeed();
        double pressure = 0.5 * loads.density() * speed * speed;
        return pressure
                * e
                * e
                * chordSquared(surface, control)
                * -HingeMoment.of(e).deflection()
                * travel;
    }

    static double travel(Control.Kind kind) {
        return switch (kind) {
            case ELEVATOR, AILERON, ELEVON, FLAPERON -> 20 * RADIAN;
            case RUDDER -> 25 * RADIAN;
            case FLAP -> 40 * RADIAN;
        };
    }

    /** ∫ c² along the part of the span the control takes, m³. */
    private static double chordSquared(Surface surface, Control control) {
        double breadth = 0;
        for (int j = 0; j < surface.panels().size(); j++) {
            Panel panel = surface.panels().get(j);
            breadth += panel.breadth();
        }
        double from = control.from() * breadth;
        double to = control.to() * breadth;
        double at = 0;
        double sum = 0;
        for (int i = 0; i < surface.panels().size(); i++) {
            Panel panel = surface.panels().get(i);
            double b = panel.breadth();
            double inner = Math.max(0, Math.min(b, from - at));
            double outer = Math.max(0, Math.min(b, to - at));
            if (outer > inner) {
                double slope = (panel.tipChord() - panel.rootChord()) / b;
                double c1 = panel.rootChord() + slope * inner;
                double c2 = panel.rootChord() + slope * outer;
                sum += (outer - inner) * (c1 * c1 + c1 * c2 + c2 * c2) / 3;
            }
            at += b;
        }
        return sum;
    }
}
