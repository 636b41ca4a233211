package foamfront.model.flight;

/**
 * The quick pitching oscillation, by the usual two-degree approximation at constant speed:
 *
 * <pre>  ω² = Z_α M_q / V − M_α,   2 ζ ω = −(M_q + M_α̇ + Z_α / V)</pre>
 *
 * with Z_α = −(C_Lα + C_D) q S / m, M_α = C_mα q S c / I_yy, M_q and M_α̇ the same with c / 2V more. R. C. Nelson, Flight
 * Stability and Automatic Control, 2nd ed., 1998, ch. 4 (from memory); B. Etkin, Dynamics of Flight (from memory).
 *
 * <p>Damping can hold the approximation together where C_mα is not negative; the slow motions then drift away all the same,
 * which {@code stable} says.
 *
 * @param frequency undamped, rad/s; NaN where it diverges instead of swinging
 * @param damping share of critical; NaN likewise
 * @param stable whether C_mα turns it back to its trim
 */
public record ShortPeriod(double frequency, double damping, boolean stable) {
    /**
     * From coefficients.
     *
     * @param pressure dynamic, times reference area, N
     * @param chord reference, m
     * @param speed m/s
     * @param mass kg
     * @param inertia I_yy, kg m²
     * @param liftSlope C_Lα, per rad
     * @param drag C_D
     * @param stiffness C_mα, per rad
     * @param damping C_mq, per q c / 2V
     * @param lag C_mα̇, per α̇ c / 2V
     */
    static ShortPeriod of(
            double pressure,
            double chord,
            double speed,
            double mass,
            double inertia,
            double liftSlope,
            double drag,
            double stiffness,
            double damping,
            double lag) {
        double heave = -(liftSlope + drag) * pressure / (mass * speed);
        double moment = pressure * chord / inertia;
        double rate = moment * chord / (2 * speed);
        double square = heave * rate * damping - moment * stiffness;
        double frequency = square > 0 ? Math.sqrt(square) : Double.NaN;
        return new ShortPeriod(frequency, -(rate * (damping + lag) + heave) / (2 * frequency), stiffness < 0);
    }

    /** Time of one swing, s; NaN where it does not swing. */
    public double period() {
        return damping < 1 ? 2 * Math.PI / (frequency * Math.sqrt(1 - damping * damping)) : Double.NaN;
    }
}
