package foamfront.model.parts;

import java.util.Arrays;

/**
 * Thrust and power coefficients of one propeller as fitted polynomials.
 *
 * <p>With J = V / (n D) the advance ratio and λ = 2 (n − n₀) / (n + n₀), n in rev/s and n₀ = {@value #REFERENCE_SPEED}
 * rev/s,
 *
 * <pre>  C = a₀ + a₁ J + a₂ J² + a₃ J³ + a₄ J⁴ + λ (b₀ + b₁ J)</pre>
 *
 * for C_T = T / (ρ n² D⁴) and C_P = P / (ρ n³ D⁵). λ is the (1,1) Padé form of ln(n / n₀), free of transcendental
 * functions. Form: a polynomial in J with a logarithmic speed term (judgement). Over 80 two-blade propellers the quartic leaves
 * a median RMS residual of 1.9 and 1.7 % of the mean where a cubic leaves 2.1 % in both, and predicts a run left out to 2.5 and
 * 2.2 % where a cubic does to 3.2 and 2.8 % (CurveFitExternalTest, LeftOutRunExternalTest).
 *
 * <p>Outside the measured speeds λ is held at the end of the range; the coefficients of the fastest wind-tunnel run stand
 * above it. Beyond the furthest measured advance ratio both curves continue along their tangent, which never rises; power
 * stops at zero, so a windmilling propeller is not credited with driving the motor. Judgement.
 */
public final class PropellerCurves {
    /** n₀, rev/s. */
    public static final double REFERENCE_SPEED = 100;

    /** How many coefficients one curve has: a₀..a₄, b₀, b₁. */
    public static final int TERMS = 7;

    /** Mildest fall of C_T with J beyond the measured range; measured curves fall by 0.2 to 0.4 there. */
    private static final double MILDEST_FALL = -0.1;

    private final double[] thrust;
    private final double[] power;
    private final double lowest;
    private final double highest;
    private final double furthest;

    /**
     * @param thrust the seven coefficients of C_T
     * @param power the seven coefficients of C_P
     * @param lowest slowest measured speed, rev/s
     * @param highest fastest measured speed, rev/s
     * @param furthest largest measured advance ratio
     */
    public PropellerCurves(double[] thrust, double[] power, double lowest, double highest, double furthest) {
        if (thrust.length != TERMS || power.length != TERMS) {
            throw new IllegalArgumentException("a propeller curve has " + TERMS + " coefficients");
        }
        if (!(lowest > 0 && highest >= lowest && furthest > 0)) {
            throw new IllegalArgumentException("the measured range is empty: " + lowest + " to " + highest
                    + " rev/s, advance ratio to " + furthest);
        }
        this.thrust = thrust.clone();
        this.power = power.clone();
        this.lowest = lowest;
        this.highest = highest;
        this.furthest = furthest;
    }

    /**
     * The coefficients a₀ to a₄ of the quartic through five values at J = 0, {@code step}, 2 {@code step} and so on: Newton's
     * forward differences as powers of J. The speed terms are left at nothing.
     */
    static double[] through(double[] values, double step) {
        double[] d = values.clone();
        for (int order = 1; order <= 4; order++) {
            for (int i = 4; i >= order; i--) {
                d[i] = (d[i] - d[i - 1]) / (order * step);
            }
        }
        double[] a = new double[TERMS];
        for (int i = 4; i >= 0; i--) {
            // a(J) becomes d_i + (J − i step) a(J)
            for (int k = 4; k > 0; k--) {
                a[k] = a[k - 1] - i * step * a[k];
            }
            a[0] = d[i] - i * step * a[0];
        }
        return a;
    }

    /** λ, about ln(n / n₀), held inside the measured speeds; n in rev/s. */
    public double speedTerm(double n) {
        double held = Math.max(lowest, Math.min(highest, n));
        return 2 * (held - REFERENCE_SPEED) / (held + REFERENCE_SPEED);
    }

    /** dλ/dn, s; zero outside the measured speeds. */
    public double speedTermSlope(double n) {
        if (n < lowest || n > highest) {
            return 0;
        }
        double sum = n + REFERENCE_SPEED;
        return 4 * REFERENCE_SPEED / (sum * sum);
    }

    /** C_T at advance ratio {@code j} and the speed term of {@link #speedTerm}. */
    public double thrustCoefficient(double j, double speedTerm) {
        return j <= furthest
                ? value(thrust, j, speedTerm)
                : value(thrust, furthest, speedTerm)
                        + (j - furthest) * Math.min(slope(thrust, furthest, speedTerm), MILDEST_FALL);
    }

    /** C_P at advance ratio {@code j} and the speed term of {@link #speedTerm}; never below zero. */
    public double powerCoefficient(double j, double speedTerm) {
        double c = j <= furthest
                ? value(power, j, speedTerm)
                : value(power, furthest, speedTerm) + (j - furthest) * Math.min(slope(power, furthest, speedTerm), 0);
        return Math.max(c, 0);
    }

    /** ∂C_T/∂J. */
    public double thrustSlope(double j, double speedTerm) {
        return j <= furthest ? slope(thrust, j, speedTerm) : Math.min(slope(thrust, furthest, speedTerm), MILDEST_FALL);
    }

    /** ∂C_P/∂J; zero where power stopped at zero. */
    public double powerSlope(double j, double speedTerm) {
        if (powerCoefficient(j, speedTerm) == 0) {
            return 0;
        }
        return j <= furthest ? slope(power, j, speedTerm) : Math.min(slope(power, furthest, speedTerm), 0);
    }

    /** ∂C_T/∂λ; also along the tangent, unless that was held from rising. */
    public double thrustSpeedSlope(double j) {
        return thrust[5] + j * thrust[6];
    }

    /** ∂C_P/∂λ; also along the tangent, unless that was held from rising. */
    public double powerSpeedSlope(double j) {
        return power[5] + j * power[6];
    }

    /** Slowest measured speed, rev/s. */
    public double lowestSpeed() {
        return lowest;
    }

    /** Fastest measured speed, rev/s. */
    public double highestSpeed() {
        return highest;
    }

    /** Largest measured advance ratio. */
    public double furthestAdvance() {
        return furthest;
    }

    /** The coefficients of C_T, a copy. */
    public double[] thrustTerms() {
        return thrust.clone();
    }

    /** The coefficients of C_P, a copy. */
    public double[] powerTerms() {
        return power.clone();
    }

    private static double value(double[] c, double j, double l) {
        return c[0] + l * c[5] + j * (c[1] + l * c[6] + j * (c[2] + j * (c[3] + j * c[4])));
    }

    private static double slope(double[] c, double j, double l) {
        return c[1] + l * c[6] + j * (2 * c[2] + j * (3 * c[3] + j * 4 * c[4]));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PropellerCurves curves
                && Arrays.equals(thrust, curves.thrust)
                && Arrays.equals(power, curves.power)
                && lowest == curves.lowest
                && highest == curves.highest
                && furthest == curves.furthest;
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(thrust) + Arrays.hashCode(power);
    }
}
