package foamfront.model.flight;

/**
 * Roll between rest and a speed, by integration of ds/dV = m V / F, V over the ground and F the force along it. A take-off
 * gains speed by F = T − D − μ (W − L), a landing loses it by F = D + μ (W − L); both take their air forces at the airspeed,
 * which is V and the headwind.
 *
 * <p>Simpson's rule in V² on fixed steps: with u = V², ds = m du / 2F. For constant thrust in still air this is the closed form
 * of Anderson, Introduction to Flight, take-off.
 */
public final class TakeOffRoll {
    /** Lift-off speed over stall speed (common practice). */
    public static final double LIFT_OFF = 1.2;

    private static final int STEPS = 8;

    /** Force along the ground at the square of an airspeed. */
    public interface Force {
        /** Newtons at {@code u} = V², m²/s². */
        double at(double u);
    }

    private TakeOffRoll() {}

    /**
     * Distance between rest and a speed, m; infinite where the force gives out on the way, 0 where the wind alone is as fast.
     *
     * @param mass kg
     * @param speed airspeed at the end that is not rest, m/s
     * @param headwind m/s
     */
    public static double distance(double mass, double speed, double headwind, Force force) {
        double fastest = Math.max(0, speed - headwind);
        double step = fastest * fastest / STEPS;
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            double u = i * step;
            double f = force.at(u + headwind * (2 * Math.sqrt(u) + headwind));
            if (!(f > 0)) {
                return Double.POSITIVE_INFINITY;
            }
            double weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight / f;
        }
        return 0.5 * mass * sum * step / 3;
    }
}
