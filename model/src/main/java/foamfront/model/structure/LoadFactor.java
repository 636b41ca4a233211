package foamfront.model.structure;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

/**
 * The limit load factor: a pull-up of 4 g or the gust in cruise, the larger, neither beyond what the wing can lift at that
 * speed, (V / V_s)² (judgement).
 *
 * <pre>n = 1 + K ρ V U a / (2 W/S),   K = 0.88 μ / (5.3 + μ),   μ = 2 (W/S) / (ρ g c a)</pre>
 *
 * K. G. Pratt and W. G. Walker, NACA Report 1206 (1954), and 14 CFR 23.341 (both from memory).
 */
public final class LoadFactor {
    /** Pull-up of a gentle model, common practice. */
    static final double PULL_UP = 4;

    /** Sink at touch-down (design case), m/s, and the way in which grass and foam stop it, m (judgement). */
    private static final double SINK = 1;

    private static final double STOP = 0.015;

    private LoadFactor() {}

    /** Load factor of the landing, 1 + v² / (2 g s) = 4.4: inside 3 to 5 g, common practice. */
    static double landing() {
        return 1 + SINK * SINK / (2 * GRAVITY * STOP);
    }

    /**
     * Mass ratio μ.
     *
     * @param wingLoading N/m²
     * @param chord mean geometric, m
     */
    public static double massRatio(double wingLoading, double density, double chord, double liftSlope) {
        return 2 * wingLoading / (density * GRAVITY * chord * liftSlope);
    }

    /** Alleviation K of a gust by the aeroplane's rise. */
    public static double alleviation(double massRatio) {
        return 0.88 * massRatio / (5.3 + massRatio);
    }

    /** Δn of a gust that strikes at once, without alleviation. */
    public static double sharpGust(double wingLoading, double density, double speed, double gust, double liftSlope) {
        return density * speed * gust * liftSlope / (2 * wingLoading);
    }

    /**
     * The limit load factor, at least 1.
     *
     * @param area of all wings, m²
     * @param chord mean geometric, m
     */
    public static double limit(FlightLoads loads, double area, double chord) {
        double wingLoading = loads.mass() * GRAVITY / area;
        double mu = massRatio(wingLoading, loads.density(), chord, loads.liftSlope());
        double gust = 1
                + alleviation(mu)
                        * sharpGust(wingLoading, loads.density(), loads.cruiseSpeed(), loads.gust(), loads.liftSlope());
        double cruise = loads.cruiseSpeed() / loads.stallSpeed();
        double top = loads.topSpeed() / loads.stallSpeed();
        return Math.max(1, Math.max(Math.min(PULL_UP, top * top), Math.min(gust, cruise * cruise)));
    }
}
