package foamfront.model.flight;

import foamfront.model.aero.FinYaw;
import foamfront.model.aero.Helmbold;
import foamfront.model.aero.LateralSystem;
import foamfront.model.aero.LiftingSystem;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Tail;

/**
 * Dynamic derivatives of an aeroplane from its {@link LiftingSystem} and closed forms.
 *
 * <ul>
 *   <li>C_mq = −2 a_t (S_t / S)(l_t / c)² of the tail and the same of the wing's quarter-chord line, and −(π/4)(a / 2π) of the
 *       wing's own chord (thin sections; derived). C_mα̇ = C_mq of the tail times dε/dα = 2a / πA (handbook practice, from memory).
 *   <li>C_lr = C_L / 8 + (−C_lp) C_L / C_Lα: half from the lift's own share of the faster wing, half from its circulation, which
 *       meets the same antisymmetric downwash as rolling (derived for elliptic loads). C_np = −C_L / 8 (from memory). C_nr = −2
 *       C_nβ l_v / b of fins and canted tail − C_D / 3 of the wing (strips, derived).
 *   <li>C_lβ ({@link #dihedralEffect}, the one figure for limits and motions): the lifting system's, with −2 C_L tan Λ ȳ / b of a
 *       swept wing (lift goes with cos² of the sweep that each half shows the wind; derived, ȳ that of an ellipse),
 *       1.2 √A (z_w / b)(2 d / b) of a wing above (negative) or below a body of depth d (the DATCOM, from memory), and the fins'
 *       side force at their height.
 * </ul>
 */
public final class Stability {
    /** Spanwise centre of lift of one half of an elliptic load, of the span. */
    private static final double ELLIPTIC_ARM = 2 / (3 * Math.PI);

    private static final double BODY = 1.2;

    private Stability() {}

    /**
     * C_lβ of the whole aeroplane at a lift coefficient, per rad; negative: it rolls away from the wind.
     *
     * @param z of the balance point over the body axis, m
     */
    public static double dihedralEffect(Airframe airframe, LateralSystem system, double z, double lift) {
        double moment = 0;
        for (int i = 0; i < airframe.surfaces().size(); i++) {
            Surface fin = airframe.surfaces().get(i);
            if (fin.role() == Surface.Role.FIN) {
                Panel panel = fin.panels().get(0);
                double height = 0.5 * (panel.rootZ() + panel.tipZ()) - z;
                moment -= FinYaw.sideForceSlope(fin, 1, FinYaw.ON_BODY) * height;
            }
        }
        double fins = moment / (airframe.area() * airframe.span());
        return system.dihedralEffect() + heightAndSweep(airframe, lift) + fins;
    }

    /** C_lβ that the lifting system leaves out: sweep, body and the wing's height on it; per rad. */
    private static double heightAndSweep(Airframe airframe, double lift) {
        double span = airframe.span();
        double sweep = sweep(airframe.wing());
        double aspect = span * span / airframe.area();
        // A biplane's wings stand one above and one below; their mean height counts.
        double height = Math.max(
                -0.5, Math.min(0.5, airframe.wingHeight() / airframe.body().height()));
        double depth = 0.5 * (airframe.body().width() + airframe.body().height());
        double body = -BODY * Math.sqrt(aspect) * height * airframe.body().height() / span * 2 * depth / span;
        return body - 2 * lift * sweep * ELLIPTIC_ARM;
    }

    /** Mean tangent of the quarter chord's sweep, each stretch by its share of the moment of an elliptic load (derived). */
    private static double sweep(Surface wing) {
        double sum = 0;
        for (int i = 0; i < wing.panels().size(); i++) {
            Panel panel = wing.panels().get(i);
            double back = panel.tipX() + 0.25 * panel.tipChord() - panel.rootX() - 0.25 * panel.rootChord();
            double share = beyond(wing, panel.rootY()) - beyond(wing, panel.tipY());
            sum += share * back / (panel.tipY() - panel.rootY());
        }
        return sum;
    }

    /** Share of the moment about the root that the elliptic load beyond y makes: ∫ η √(1 − η²) from η to 1 over its whole. */
    private static double beyond(Surface wing, double y) {
        double eta = 2 * y / wing.span();
        double rest = Math.max(0, 1 - eta * eta);
        return rest * Math.sqrt(rest);
    }

    /**
     * All derivatives of rolling and yawing.
     *
     * @param x balance point from the nose, m
     * @param z of the same over the body axis, m
     * @param yaw C_nβ of the whole aeroplane
     * @param lift C_L
     * @param drag C_D
     */
    public static LateralDerivatives lateral(
            Airframe airframe, LiftingSystem lifting, double x, double z, double yaw, double lift, double drag) {
        LateralSystem system = lifting.lateral();
        double area = airframe.area();
        double span = airframe.span();
        double side = 0;
        double damping = 0;
        for (int i = 0; i < airframe.surfaces().size(); i++) {
            Surface fin = airframe.surfaces().get(i);
            if (fin.role() == Surface.Role.FIN) {
                double force = FinYaw.sideForceSlope(fin, 1, FinYaw.ON_BODY);
                double arm = fin.quarterChordX() - x;
                side -= force / area;
                damping -= 2 * force / area * (arm / span) * (arm / span);
            }
        }
        if (airframe.design().tail() instanceof Tail.VTail && airframe.tail() != null) {
            double arm = airframe.tail().quarterChordX() - x;
            damping -= 2 * Math.abs(system.yawStiffness(x)) * arm / span;
        }
        double rollDamping = system.rollDamping();
        return new LateralDerivatives(
                side + system.sideForceSlope(),
                dihedralEffect(airframe, system, z, lift),
                rollDamping,
                lift / 8 - rollDamping * lift / lifting.liftSlope(),
                yaw,
                -lift / 8,
                damping - drag / 3);
    }

    /** C_mq, per q c / 2V, of wings and tail about x. */
    public static double pitchDamping(Airframe airframe, LiftingSystem lifting, double x) {
        double chord = lifting.referenceChord();
        double area = lifting.referenceArea();
        double slope = lifting.liftSlope();
        double wings = 0;
        for (int i = 0; i < airframe.surfaces().size(); i++) {
            Surface surface = airframe.surfaces().get(i);
            if (surface.isWing()) {
                wings += slope / area * squares(surface, x);
            }
        }
        return -2 * wings / (chord * chord) - slope / 8 + tailDamping(airframe, lifting, x);
    }

    /** The tail's share: what a downwash that arrives late adds is this times dε/dα. */
    public static double tailDamping(Airframe airframe, LiftingSystem lifting, double x) {
        Surface tail = airframe.tail();
        if (tail == null) {
            return 0;
        }
        double flat = 0.5 * tail.span();
        double breadth = 0;
        for (int i = 0; i < tail.panels().size(); i++) {
            Panel panel = tail.panels().get(i);
            breadth += panel.breadth();
        }
        double cosine = flat / breadth;
        double slope = Helmbold.liftSlope(4 * breadth * breadth / tail.area(), 1) * cosine * cosine;
        double chord = lifting.referenceChord();
        return -2 * slope * squares(tail, x) / (lifting.referenceArea() * chord * chord);
    }

    /** ∫ (x − x₀)² dS of the quarter-chord line, both halves, by Simpson's rule, m⁴. */
    private static double squares(Surface surface, double x) {
        double sum = 0;
        for (int i = 0; i < surface.panels().size(); i++) {
            Panel panel = surface.panels().get(i);
            double inner = panel.rootX() + 0.25 * panel.rootChord() - x;
            double outer = panel.tipX() + 0.25 * panel.tipChord() - x;
            double middle = 0.5 * (inner + outer);
            sum += panel.breadth()
                    / 6
                    * (inner * inner * panel.rootChord()
                            + 2 * middle * middle * (panel.rootChord() + panel.tipChord())
                            + outer * outer * panel.tipChord());
        }
        return 2 * sum;
    }
}
