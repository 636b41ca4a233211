package foamfront.model.flight;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

/**
 * The flight between ground and an obstacle's height: an arc that is level at the ground and as steep as the straight path at
 * its end, then that path. Pulled up to after lift-off, or flown down and flared from; both with
 *
 * <pre>  R = V² / ((n − 1) g),  arc height R (1 − cos γ),  arc length on the ground R sin γ</pre>
 *
 * and n = {@value #LOAD_FACTOR} (J. D. Anderson, Aircraft Performance and Design, 1999, sections 6.7 and 6.8; D. P. Raymer, Aircraft Design,
 * chapter 17: both from memory). A headwind takes its speed times the time in the air off the distance (derived).
 */
final class VerticalPath {
    static final double LOAD_FACTOR = 1.2;

    /** Sine of the steepest path that is flown so near the ground: 30 degrees (judgement). */
    static final double STEEPEST = 0.5;

    private VerticalPath() {}

    /**
     * Distance on the ground from nothing to {@code height}, m; 0 where the wind blows it all away.
     *
     * @param height m
     * @param sine of the straight path's angle, above 0; held to {@value #STEEPEST}
     * @param arcSpeed airspeed on the arc, m/s
     * @param speed airspeed on the straight path, m/s
     * @param headwind m/s
     */
    static double distance(double height, double sine, double arcSpeed, double speed, double headwind) {
        double steep = Math.min(STEEPEST, sine);
        double radius = arcSpeed * arcSpeed / ((LOAD_FACTOR - 1) * GRAVITY);
        double cosine = Math.sqrt(1 - steep * steep);
        // An obstacle lower than the whole arc is cleared on it.
        double cleared = Math.max(cosine, 1 - height / radius);
        double arc = radius * Math.sqrt(1 - cleared * cleared);
        double time = radius * StrictMath.acos(cleared) / arcSpeed;
        double rest = Math.max(0, height - radius * (1 - cosine));
        double straight = rest * cosine / steep;
        return Math.max(0, arc + straight - headwind * (time + rest / (steep * speed)));
    }
}
