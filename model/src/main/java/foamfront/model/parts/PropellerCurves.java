package foamfront.model.parts;

import java.util.Arrays;

/**
 * Thrust and power coefficients of one propeller as fitted polynomials.
 *
 * <p>With J = V / (n D) the advance ratio and λ = ln(n / n₀), n in rev/s and n₀ = {@value #REFERENCE_SPEED} rev/s,
 *
 * <pre>  C = a₀ + a₁ J + a₂ J² + a₃ J³ + λ (b₀ + b₁ J)</pre>
 *
 * for C_T = T / (ρ n² D⁴) and C_P = P / (ρ n³ D⁵). Outside the measured speeds λ is held at the end of the range; the
 * coefficients of the fastest measured run stand above it. Form: cubic in J with a logarithmic speed term, as the
 * project's checks of propulsion, row PF-07, found accurate to 3.4 and 2.9 % RMS on measured sets.
 */
public final class PropellerCurves {
    /** n₀, rev/s. */
    public static final double REFERENCE_SPEED = 100;

    /** How many coefficients one curve has: a₀..a₃, b₀, b₁. */
    public static final int TERMS = 6;

    private final double[] thrust;
    private final double[] power;
    private final double lowest;
    private final double highest;
    private final double furthest;

    /**
     * @param thrust the six coefficients of C_T
     * @param power the six coefficients of C_P
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

    /** ln(n / n₀) held inside the measured speeds; n in rev/s. */
    public double speedTerm(double n) {
        return StrictMath.log(Math.max(lowest, Math.min(highest, n)) / REFERENCE_SPEED);
    }

    /** C_T at advance ratio {@code j} and the speed term of {@link #speedTerm}. */
    public double thrustCoefficient(double j, double speedTerm) {
        return value(thrust, j, speedTerm);
    }

    /** C_P at advance ratio {@code j} and the speed term of {@link #speedTerm}. */
    public double powerCoefficient(double j, double speedTerm) {
        return value(power, j, speedTerm);
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
        return c[0] + l * c[4] + j * (c[1] + l * c[5] + j * (c[2] + j * c[3]));
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
