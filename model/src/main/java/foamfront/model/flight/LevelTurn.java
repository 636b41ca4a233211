package foamfront.model.flight;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

/**
 * The level turn that a pilot may count on: at most 45 degrees of bank, 1.2 times the stall speed of the turn, and no more bank than
 * full throttle holds level, its slipstream's drag included. With n = 1 / cos φ, V = 1.2 V_s √n and r = V² / (g √(n² − 1))
 * (J. D. Anderson, Introduction to Flight, ch. 6, level turn).
 */
public final class LevelTurn {
    /** Load factor of 45 degrees of bank. */
    private static final double STEEPEST = 1.4142135623730951;

    /** Halvings of the load factor's range where thrust is short: 1e-4 of it. */
    private static final int HALVINGS = 12;

    private LevelTurn() {}

    /** Radius of the steepest turn, which a glider flies on its way down, m. */
    public static double steepest(TrimmedFlight flight) {
        return radius(flight.stallSpeed(), STEEPEST);
    }

    /** Radius, m; infinite where full throttle does not hold it level at 1.2 stall speeds. */
    public static double radius(TrimmedFlight flight, FullThrottle full) {
        double load = holds(flight, full, STEEPEST) ? STEEPEST : shallower(flight, full);
        return radius(flight.stallSpeed(), load);
    }

    private static double shallower(TrimmedFlight flight, FullThrottle full) {
        double low = 1;
        double high = STEEPEST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (holds(flight, full, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static boolean holds(TrimmedFlight flight, FullThrottle full, double load) {
        double speed = speed(flight.stallSpeed(), load);
        return full.holds(flight, speed, load * flight.liftCoefficient(speed));
    }

    private static double speed(double stall, double load) {
        return Performance.SAFE * stall * Math.sqrt(load);
    }

    static double radius(double stall, double load) {
        double speed = speed(stall, load);
        return speed * speed / (GRAVITY * Math.sqrt(load * load - 1));
    }
}
