package foamfront.model.flight;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Tail;

/**
 * Tail volumes, weathercock stability, spiral parameter and roll response.
 *
 * <ul>
 *   <li>Tail volumes V_H = S_h l_h / (S c), V_V = S_v l_v / (S b), arms between quarter chords (common practice, T-04).
 *   <li>C_nβ = a_v V_V − 1.3 (Vol / S b)(h / w): fin by Helmbold with 1.55 times its geometric aspect ratio for standing on a
 *       body (DATCOM practice, from memory), body by Raymer, Aircraft Design, ch. 16 (from memory).
 *   <li>Spiral parameter B = (l_v / b)(Υ / C_L), Υ in degrees (M. Drela, MIT Unified Engineering notes, from memory).
 *   <li>Roll helix angle p b / 2V: with ailerons τ δ (b/2) ∫c y dy / ∫c y² dy, strip theory for power and damping alike, in
 *       which the induction that halves both cancels (derived); without, dihedral effect times the sideslip that the rudder
 *       holds, over roll damping, both by {@link foamfront.model.aero.LateralDerivatives}.
 * </ul>
 */
public final class Handling {
    /** Full travel of ailerons and elevator, rad (the project's limits, point 10). */
    public static final double FULL_TRAVEL = 20 * Math.PI / 180;

    /** Full travel of the rudder, rad. */
    public static final double RUDDER_TRAVEL = 25 * Math.PI / 180;

    private static final double BODY_GAIN = 1.55;
    private static final double BODY_YAW = 1.3;

    private Handling() {}

    /** V_H; 0 for a tailless aeroplane. */
    public static double horizontalTailVolume(Airframe airframe) {
        Surface tail = airframe.tail();
        if (tail == null) {
            return 0;
        }
        double flat = cosine(tail);
        double arm = quarterChord(tail) - (airframe.chordX() + 0.25 * airframe.chord());
        return tail.area() * flat * flat * arm / (airframe.area() * airframe.chord());
    }

    /** V_V of fins and canted tails. */
    public static double verticalTailVolume(Airframe airframe) {
        double sum = 0;
        double wing = airframe.chordX() + 0.25 * airframe.chord();
        for (Surface fin : airframe.fins()) {
            sum += fin.area() * (quarterChord(fin) - wing);
        }
        Surface tail = airframe.tail();
        if (tail != null && airframe.design().tail() instanceof Tail.VTail) {
            double flat = cosine(tail);
            sum += tail.area() * (1 - flat * flat) * (quarterChord(tail) - wing);
        }
        return sum / (airframe.area() * airframe.span());
    }

    /** Fin lift slope on its own area, per rad. */
    public static double finSlope(Airframe airframe) {
        if (airframe.fins().isEmpty()) {
            return 3; // a V-tail's panels are of middling aspect ratio (judgement)
        }
        Surface fin = airframe.fins().get(0);
        double aspect = BODY_GAIN * fin.span() * fin.span() / fin.area();
        return 2 * Math.PI * aspect / (2 + Math.sqrt(aspect * aspect + 4));
    }

    /** C_nβ about the balance point, per rad. */
    public static double yawStiffness(Airframe airframe, double balanceX) {
        double fins = 0;
        double slope = finSlope(airframe);
        for (Surface fin : airframe.fins()) {
            fins += slope * fin.area() * (quarterChord(fin) - balanceX);
        }
        Surface tail = airframe.tail();
        if (tail != null && airframe.design().tail() instanceof Tail.VTail) {
            double flat = cosine(tail);
            fins += slope * tail.area() * (1 - flat * flat) * (quarterChord(tail) - balanceX);
        }
        BodyShape body = airframe.body();
        double volume = body.length() * body.width() * body.height();
        double bodyShare = BODY_YAW * volume * body.height() / body.width();
        return (fins - bodyShare) / (airframe.area() * airframe.span());
    }

    /** B at a lift coefficient. */
    public static double spiralParameter(Airframe airframe, double balanceX, double lift) {
        double arm = 0;
        if (!airframe.fins().isEmpty()) {
            arm = quarterChord(airframe.fins().get(0)) - balanceX;
        } else if (airframe.tail() != null) {
            arm = quarterChord(airframe.tail()) - balanceX;
        }
        return arm / airframe.span() * effectiveDihedral(airframe.wing()) * 180 / Math.PI / lift;
    }

    /** Dihedral weighted by the area and arm it acts on, rad; the height of the wing on the body adds 0 here. */
    public static double effectiveDihedral(Surface wing) {
        double sum = 0;
        double weight = 0;
        for (Panel panel : wing.panels()) {
            double dy = panel.tipY() - panel.rootY();
            double arm = panel.area() * 0.5 * (panel.rootY() + panel.tipY());
            sum += arm * StrictMath.atan2(panel.tipZ() - panel.rootZ(), dy);
            weight += arm;
        }
        return sum / weight;
    }

    /** pb/2V at full ailerons, τ being their effectiveness with losses; 0 where there are none. */
    public static double aileronHelix(Surface wing, double effectiveness) {
        double power = 0;
        double semispan = 0.5 * wing.span();
        for (Control control : wing.controls()) {
            if (control.kind() == Control.Kind.AILERON || control.kind() == Control.Kind.ELEVON) {
                power += moment(wing, control.from() * semispan, control.to() * semispan, 1);
            }
        }
        double damping = moment(wing, 0, semispan, 2);
        return effectiveness * FULL_TRAVEL * semispan * power / damping;
    }

    /** ∫ c y^n dy between two stations, n 1 or 2, by Simpson's rule, exact for straight edges. */
    private static double moment(Surface wing, double from, double to, int n) {
        double sum = 0;
        for (Panel panel : wing.panels()) {
            double a = Math.max(from, panel.rootY());
            double b = Math.min(to, panel.tipY());
            if (b > a) {
                double m = 0.5 * (a + b);
                sum += (b - a) / 6 * (term(panel, a, n) + 4 * term(panel, m, n) + term(panel, b, n));
            }
        }
        return sum;
    }

    private static double term(Panel panel, double y, int n) {
        double share = (y - panel.rootY()) / (panel.tipY() - panel.rootY());
        double chord = panel.rootChord() + share * (panel.tipChord() - panel.rootChord());
        return n == 1 ? chord * y : chord * y * y;
    }

    private static double quarterChord(Surface surface) {
        double sum = 0;
        double area = 0;
        for (Panel panel : surface.panels()) {
            double inner = panel.rootX() + 0.25 * panel.rootChord();
            double outer = panel.tipX() + 0.25 * panel.tipChord();
            double c1 = panel.rootChord();
            double c2 = panel.tipChord();
            sum += panel.area() * (inner * (2 * c1 + c2) + outer * (c1 + 2 * c2)) / (3 * (c1 + c2));
            area += panel.area();
        }
        return sum / area;
    }

    /** cos of a surface's mean dihedral. */
    private static double cosine(Surface surface) {
        Panel panel = surface.panels().get(surface.panels().size() - 1);
        return (panel.tipY() - panel.rootY()) / panel.breadth();
    }
}
