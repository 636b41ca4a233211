package foamfront.model.aero;

/**
 * Roll damping, dihedral effect and aileron power of a straight tapered wing by interpolation in computed lifting-line
 * values (a₀ = 2π; derived, compare the charts of H. A. Pearson and R. T. Jones, NACA R-635, 1938).
 *
 * <p>The reciprocal of each derivative is nearly a straight line in 1/A from strip theory at 1/A = 0; between tapers it
 * is linear in strip theory's own taper factor. A section slope κ 2π follows from the similarity of the lifting-line
 * equation, C(A, κ) = κ C(A / κ, 1) (derived). Within 2 % of the Fourier series for aspect ratios 4 to 16 and tapers 0.3
 * to 1 (LateralDerivativesTest); sweep is left out, and the lifting line itself is some 5 % high.
 */
public final class LateralDerivatives {
    private static final double[] INVERSE_ASPECT = {0, 1.0 / 8, 1.0 / 6, 1.0 / 4};

    /** -C_lp at aspect ratio infinite, 8, 6, 4; taper 1. */
    private static final double[] DAMPING_RECTANGULAR = {Math.PI / 3, 0.5914, 0.5233, 0.4264};

    /** The same at taper 0.5 as far as computed. */
    private static final double[] DAMPING_TAPERED = {Math.PI / 3.6, 0.5438, 0.4866};

    /** -C_lβ per rad of dihedral over the full span; taper 1. */
    private static final double[] DIHEDRAL_RECTANGULAR = {Math.PI / 2, 0.955, 0.8515, 0.701};

    private static final double[] DIHEDRAL_TAPERED = {Math.PI / 2.25, 0.901, 0.8095};

    private LateralDerivatives() {}

    /** C_lp, per unit helix angle p b / 2V; negative. */
    public static double rollDamping(double aspectRatio, double taper, double slopeRatio) {
        double inverse = slopeRatio / aspectRatio;
        double shape = (1 + 3 * taper) / (1 + taper);
        double part = (shape - 5.0 / 3) / (2 - 5.0 / 3);
        return -slopeRatio * between(at(DAMPING_TAPERED, inverse), at(DAMPING_RECTANGULAR, inverse), part);
    }

    /** C_lβ per rad of sideslip and per rad of dihedral over the whole span; negative. */
    public static double dihedralEffect(double aspectRatio, double taper, double slopeRatio) {
        double inverse = slopeRatio / aspectRatio;
        double shape = (1 + 2 * taper) / (1 + taper);
        double part = (shape - 4.0 / 3) / (1.5 - 4.0 / 3);
        return -slopeRatio * between(at(DIHEDRAL_TAPERED, inverse), at(DIHEDRAL_RECTANGULAR, inverse), part);
    }

    /**
     * C_lδ of ailerons, per rad of each side's deflection, positive: strip theory over the aileron's span, reduced by the
     * finite wing as roll damping is (judgement; within 6 % of the Fourier series for ailerons on the outer half).
     *
     * @param effectiveness incidence per deflection, losses included
     * @param from inner end, fraction of semispan
     * @param to outer end, fraction of semispan
     */
    public static double aileronPower(
            double aspectRatio, double taper, double slopeRatio, double effectiveness, double from, double to) {
        double strip = -Math.PI / 6 * slopeRatio * (1 + 3 * taper) / (1 + taper);
        double reduction = rollDamping(aspectRatio, taper, slopeRatio) / strip;
        return -effectiveness * reduction * stripDihedral(taper, slopeRatio, from, to);
    }

    /** -(a₀ / 2) ∫ (c / c̄) η dη between two stations. */
    private static double stripDihedral(double taper, double slopeRatio, double from, double to) {
        double square = 0.5 * (to * to - from * from);
        double cube = (to * to * to - from * from * from) / 3;
        return -Math.PI * slopeRatio * 2 / (1 + taper) * (square - (1 - taper) * cube);
    }

    private static double at(double[] values, double inverse) {
        int k = 1;
        while (k + 1 < values.length && inverse > INVERSE_ASPECT[k]) {
            k++;
        }
        double t = (inverse - INVERSE_ASPECT[k - 1]) / (INVERSE_ASPECT[k] - INVERSE_ASPECT[k - 1]);
        return 1 / between(1 / values[k - 1], 1 / values[k], t);
    }

    private static double between(double from, double to, double t) {
        return from + (to - from) * t;
    }
}
