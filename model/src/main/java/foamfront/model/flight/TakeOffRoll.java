package foamfront.model.flight;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

/**
 * Ground roll from rest to 1.2 stall speeds in still air, by integration of ds/dV = m V / F(V), F = T − D − μ (W − L).
 *
 * <p>Simpson's rule in V² on fixed steps: with u = V², ds = m du / 2F. For constant thrust this is the closed form of Anderson,
 * Introduction to Flight, take-off.
 */
public final class TakeOffRoll {
    /** Lift-off speed over stall speed (common practice). */
    public static final double LIFT_OFF = 1.2;

    private static final int STEPS = 8;

    /** Accelerating force at the square of a ground speed. */
    public interface Force {
        /** Newtons at {@code u} = V², m²/s². */
        double at(double u);
    }

    private TakeOffRoll() {}

    /**
     * Distance to reach a speed, m; infinite where the force gives out on the way.
     *
     * @param mass kg
     * @param speed to be reached, m/s
     */
    public static double distance(double mass, double speed, Force force) {
        double step = speed * speed / STEPS;
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            double f = force.at(i * step);
            if (!(f > 0)) {
                return Double.POSITIVE_INFINITY;
            }
            double weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight / f;
        }
        return 0.5 * mass * sum * step / 3;
    }

    /**
     * The roll of a model on its wheels, m.
     *
     * @param drag coefficient at {@code groundLift}, near the ground
     * @param stallSpeed out of ground effect, as flown, m/s
     */
    static double of(
            TrimmedFlight flight,
            ThrustCurve thrust,
            double drag,
            double groundLift,
            double stallSpeed,
            double friction) {
        double area = 0.5 * flight.density() * flight.referenceArea();
        return distance(
                flight.weight() / GRAVITY,
                LIFT_OFF * stallSpeed,
                u -> thrust.at(Math.sqrt(u))
                        - area * u * drag
                        - friction * Math.max(0, flight.weight() - area * u * groundLift));
    }
}
