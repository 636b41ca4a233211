package foamfront.model.aero;

/**
 * Induced drag close to the ground over that in free air at the same lift: 1 − σ(2h / b), the wing and its image being a
 * biplane of gap 2h whose lower wing lifts downwards. For elliptic loads
 *
 * <pre>  σ = (2/π) ∫₀^π Re[1 − Z / √(Z² − 1)] sin² t dt,  Z = cos t + 2i G / b</pre>
 *
 * (L. Prandtl, "Induced Drag of Multiplanes", NACA TN-182, 1924, and "Applications of Modern Hydrodynamics to Aeronautics",
 * NACA R-116, 1921; the integral derived from the wake of an elliptic load). The lift slope, which grows a little, is left
 * out. Tabled once against G / b; a chord interpolates within 2e-5.
 */
public final class GroundEffect {
    private static final int STEPS_PER_SPAN = 200;
    private static final double HIGHEST = 3;
    private static final int QUADRATURE = 400;
    private static final double[] TABLE = table();

    private GroundEffect() {}

    private static double[] table() {
        double[] table = new double[(int) (HIGHEST * STEPS_PER_SPAN) + 1];
        table[0] = 1;
        for (int i = 1; i < table.length; i++) {
            table[i] = integral((double) i / STEPS_PER_SPAN);
        }
        return table;
    }

    /** By the mid-point rule, which for a periodic integrand is exact as soon as it resolves the gap. */
    private static double integral(double gapOverSpan) {
        double im = 2 * gapOverSpan;
        double sum = 0;
        for (int k = 0; k < QUADRATURE; k++) {
            double t = Math.PI * (k + 0.5) / QUADRATURE;
            double re = StrictMath.cos(t);
            double sine = StrictMath.sin(t);
            // w = √(Z² − 1) on the branch that goes like Z far away; Re(Z / w) = Re(Z w̄) / |w|².
            double a = re * re - im * im - 1;
            double b = 2 * re * im;
            double size = Math.sqrt(a * a + b * b);
            double wIm = Math.sqrt(0.5 * Math.max(0, size - a));
            double wRe = wIm > 0 ? 0.5 * b / wIm : Math.sqrt(size);
            sum += (1 - (re * wRe + im * wIm) / size) * sine * sine;
        }
        return 2.0 / QUADRATURE * sum;
    }

    /** σ of two equal wings with elliptic loads; 0 from three spans on. */
    public static double interference(double gapOverSpan) {
        double at = Math.max(0, gapOverSpan) * STEPS_PER_SPAN;
        int i = (int) at;
        if (i >= TABLE.length - 1) {
            return 0;
        }
        return TABLE[i] + (at - i) * (TABLE[i + 1] - TABLE[i]);
    }

    /**
     * Induced drag over that in free air at the same lift.
     *
     * @param height of the wing over the ground, m
     * @param span m
     */
    public static double inducedShare(double height, double span) {
        return 1 - interference(2 * height / span);
    }
}
