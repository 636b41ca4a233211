package foamfront.model.structure;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.PlaningForm;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Board;

/**
 * Alighting on water. The step's load factor and the pressure on its bottom are those of 14 CFR 25.527 and 25.533(b), which
 * descend from H. Wagner's and T. von Kármán's impact theory: n = 0.012 V_S0² / (tan^⅔ β W^⅓), at least 2.33, and p = 0.00213 K₂
 * V_S1² / tan β in psi, with knots and pounds, K₂ = 1 at the keel of the step (constants of the pressure from memory). Both
 * grow without bound as the bottom gets flat; below {@value #FLATTEST_DEGREES} degrees the trapped air is taken to stand for what
 * deadrise is missing (judgement).
 *
 * <p>Each half of the bottom is a strip clamped at keel and chine: M = p l² / 12 stresses its papers, V = p l / 2 its core,
 * which bears 0.10 MPa. A float's two struts carry half of the weight times n, as pinned columns of board: π² D c / l²
 * (Euler) or their papers' crushing strength. Derived.
 *
 * @param factor n
 * @param pressure on the bottom, Pa
 * @param reserve strength over the load, least of bottom and struts
 */
public record WaterLanding(double factor, double pressure, double reserve) {
    static final double FLATTEST_DEGREES = 10;
    private static final double FLATTEST = FLATTEST_DEGREES * Math.PI / 180;
    private static final double KNOT = 0.514444; // m/s
    private static final double POUND = 0.45359237; // kg
    private static final double PSI = 6894.757; // Pa
    private static final double FACTOR = 0.012;
    private static final double LEAST_FACTOR = 2.33;
    private static final double PRESSURE = 0.00213;
    private static final double CORE_SHEAR = 0.10e6; // Pa
    private static final int STRUTS = 2; // to a float

    /** Step landing at the stall speed (m/s). */
    public static WaterLanding of(
            Airframe airframe, Flotation flotation, double mass, double stallSpeed, Factors factors) {
        PlaningForm form = flotation.form();
        Board material = airframe.design().board();
        Sandwich board =
                Sandwich.of(material, factors).covered(airframe.design().covering());
        double strength = WingReserve.faceStrength(material, board, factors);
        double factor = factor(mass, stallSpeed, form.deadrise());
        double pressure = pressure(stallSpeed, form.deadrise());
        double half = 0.5 * form.beam() / StrictMath.cos(form.deadrise());
        double face = StructureMargins.reserve(strength, board.faceStress(pressure * half * half / 12));
        double core =
                StructureMargins.reserve(factors.boardStrength() * CORE_SHEAR, 0.5 * pressure * half / board.depth());
        double reserve = Math.min(face, core);
        if (flotation.count() > 1) {
            double load = factor * mass * GRAVITY / flotation.count() / STRUTS;
            reserve = Math.min(reserve, struts(airframe, flotation, board, strength, load));
        }
        return new WaterLanding(factor, pressure, reserve);
    }

    private static double struts(Airframe airframe, Flotation flotation, Sandwich board, double strength, double load) {
        double height = flotation.strutHeight(airframe.body().height());
        double out = Math.max(0, flotation.y() - 0.5 * airframe.body().width());
        double length = Math.sqrt(height * height + out * out);
        double along = load * length / height;
        double chord = Airframe.STRUT_CHORD;
        double buckles = Math.PI * Math.PI * board.bendingStiffness() * chord / (length * length);
        return StructureMargins.reserve(Math.min(buckles, 2 * board.face() * chord * strength), along);
    }

    /** n at the step. */
    static double factor(double mass, double stallSpeed, double deadrise) {
        double knots = stallSpeed / KNOT;
        double tan = StrictMath.cbrt(StrictMath.tan(Math.max(FLATTEST, deadrise)));
        return Math.max(LEAST_FACTOR, FACTOR * knots * knots / (tan * tan * StrictMath.cbrt(mass / POUND)));
    }

    /** At the keel of the step, Pa. */
    static double pressure(double stallSpeed, double deadrise) {
        double knots = stallSpeed / KNOT;
        return PSI * PRESSURE * knots * knots / StrictMath.tan(Math.max(FLATTEST, deadrise));
    }
}
