package foamfront.model.propulsion;

/**
 * Velocity behind a propeller by the actuator disc. Froude's momentum theory, derived: T = 2 ρ A (V + w) w, so
 *
 * <pre>  w = ½ (√(V² + 2 T / (ρ A)) − V)</pre>
 *
 * at the disc and 2 w far behind. Between, the stream of a disc of radius R speeds up as that of a semi-infinite vortex
 * cylinder does on its axis, w (1 + x / √(x² + R²)) at x behind the disc (derived from Biot and Savart's law). Swirl and
 * mixing are left out.
 */
public final class Slipstream {
    private Slipstream() {}

    /** Added velocity at the disc, m/s; zero without thrust. */
    public static double atDisc(double thrust, double speed, double discArea, double density) {
        double loading = Math.max(0, thrust) / (density * discArea);
        return 0.5 * (Math.sqrt(speed * speed + 2 * loading) - speed);
    }

    /** What dynamic pressure far behind gains over that of flight: (V + 2 w)² / V² − 1 = 2 T / (ρ A V²) by the above; speed above 0. */
    public static double pressureGain(double thrust, double speed, double discArea, double density) {
        return 2 * Math.max(0, thrust) / (density * discArea * speed * speed);
    }

    /** Added velocity at {@code distance} m behind the disc (before it: negative), m/s. */
    public static double behind(double thrust, double speed, double discArea, double density, double distance) {
        double radiusSquared = discArea / Math.PI;
        double growth = 1 + distance / Math.sqrt(distance * distance + radiusSquared);
        return growth * atDisc(thrust, speed, discArea, density);
    }

    /**
     * Radius of the stream at {@code distance} m behind the disc, m: the same air passes every station, so it narrows as
     * the velocity grows. Derived from continuity.
     */
    public static double radius(double thrust, double speed, double discArea, double density, double distance) {
        double disc = speed + atDisc(thrust, speed, discArea, density);
        double there = speed + behind(thrust, speed, discArea, density, distance);
        double contraction = there > 0 ? Math.min(1, disc / there) : 1;
        return Math.sqrt(discArea / Math.PI * contraction);
    }
}
