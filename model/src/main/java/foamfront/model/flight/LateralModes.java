package foamfront.model.flight;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

/**
 * Rolling, spiral and Dutch roll from the characteristic equation of level flight, s⁴ + b s³ + c s² + d s + e = 0, the product
 * of inertia and the side force of rates left out. With y = Y_β / V, G = g / V and L, N over I_xx, I_zz:
 *
 * <pre>
 * b = −(y + L_p + N_r)
 * c = L_p N_r − L_r N_p + y (L_p + N_r) + N_β
 * d = −y (L_p N_r − L_r N_p) − G L_β + L_β N_p − N_β L_p
 * e = G (L_β N_r − L_r N_β)
 * </pre>
 *
 * (expanded from the equations of motion in R. C. Nelson, Flight Stability and Automatic Control, 2nd ed., 1998, ch. 5, from
 * memory).
 *
 * <p>Newton's method looks for the spiral from 0 and, that root divided out, for rolling from L_p. Where a root does not settle to
 * {@value #CLOSE} of itself, as where rolling and spiral have merged into one slow swing, all four are NaN.
 *
 * @param rollRate the root of rolling, per s; negative, its time constant is −1 over it
 * @param spiralRate the small root, per s; negative dies out
 * @param dutchFrequency undamped, rad/s; NaN where it does not swing
 * @param dutchDamping share of critical; NaN likewise
 */
public record LateralModes(double rollRate, double spiralRate, double dutchFrequency, double dutchDamping) {
    /** A bank that doubles in less keeps its pilot busy, s: level 1 of light aircraft asks for 20 (MIL-F-8785C, from memory). */
    public static final double HASTY = 20;

    private static final int STEPS = 60;
    private static final double CLOSE = 1e-10;

    /**
     * From derivatives.
     *
     * @param pressure dynamic, times reference area, N
     * @param span m
     * @param speed m/s
     * @param mass kg
     * @param inertiaX I_xx, kg m²
     * @param inertiaZ I_zz, kg m²
     */
    static LateralModes of(
            LateralDerivatives k,
            double pressure,
            double span,
            double speed,
            double mass,
            double inertiaX,
            double inertiaZ) {
        double y = k.sideForce() * pressure / (mass * speed);
        double g = GRAVITY / speed;
        double l = pressure * span / inertiaX;
        double n = pressure * span / inertiaZ;
        double rate = span / (2 * speed);
        double lb = l * k.rollSideslip();
        double lp = l * rate * k.rollDamping();
        double lr = l * rate * k.rollYaw();
        double nb = n * k.yawStiffness();
        double np = n * rate * k.yawRoll();
        double nr = n * rate * k.yawDamping();
        double both = lp * nr - lr * np;
        double[] p = {
            g * (lb * nr - lr * nb),
            -y * both - g * lb + lb * np - nb * lp,
            both + y * (lp + nr) + nb,
            -(y + lp + nr),
            1
        };
        double spiral = root(p, 0);
        double roll = root(without(p, spiral), 2 * lp);
        // (s − spiral)(s − roll)(s² + 2ζω s + ω²): the sum of roots, and their product in pairs.
        double twice = p[3] + spiral + roll;
        double square = p[2] - spiral * roll + twice * (spiral + roll);
        double frequency = square > 0 ? Math.sqrt(square) : Double.NaN;
        double damping = 0.5 * twice / frequency;
        return new LateralModes(roll, spiral, frequency, damping);
    }

    /** The real root that Newton's method finds from {@code s}, NaN where it does not settle; p by rising powers. */
    private static double root(double[] p, double s) {
        double at = s;
        for (int i = 0; i < STEPS; i++) {
            double value = 0;
            double slope = 0;
            for (int k = p.length - 1; k >= 0; k--) {
                slope = slope * at + value;
                value = value * at + p[k];
            }
            double step = value == 0 ? 0 : value / slope;
            at -= step;
            if (Math.abs(step) <= CLOSE * Math.abs(at)) {
                return at;
            }
        }
        return Double.NaN;
    }

    /** A polynomial with one of its roots divided out. */
    private static double[] without(double[] p, double root) {
        double[] rest = new double[p.length - 1];
        double carried = 0;
        for (int k = rest.length; k > 0; k--) {
            carried = carried * root + p[k];
            rest[k - 1] = carried;
        }
        return rest;
    }

    /** Whether roots were found. */
    public boolean settled() {
        return !Double.isNaN(rollRate);
    }

    /** Time in which a slow spiral doubles, s; infinite where it dies out, NaN where it is not known. */
    public double spiralDoubling() {
        if (!settled()) {
            return Double.NaN;
        }
        return spiralRate > 0 ? StrictMath.log(2) / spiralRate : Double.POSITIVE_INFINITY;
    }
}
