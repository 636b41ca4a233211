package foamfront.model.aero;

/**
 * A plain hinged flap in thin-section theory, and how much of it experiments leave.
 *
 * <p>With the hinge at cos θ = 2 E - 1, E the flap's share of the chord: lift like an incidence τ δ,
 * τ = 1 - (θ - sin θ) / π, and a moment about the quarter chord dC_m/dδ = -½ sin θ (1 - cos θ) with cos θ = 1 - 2 x_h.
 * H. Glauert, "Theoretical Relationships for an Aerofoil with Hinged Flap", ARC R&M 1095, 1927 (from memory; re-derived
 * from the cosine series of the mean line).
 */
public final class PlainFlap {
    /** Deflection up to which a sealed flap keeps {@link #SMALL_ANGLE_EFFICIENCY}, rad. */
    private static final double ATTACHED = 15 * Math.PI / 180;

    /** Deflection at which {@link #LARGE_ANGLE_EFFICIENCY} is reached, rad. */
    private static final double SEPARATED = 25 * Math.PI / 180;

    /** Share of τ kept to 15 degrees: plain flaps measure 0.75 to 0.9 (NACA R-721 and R-1075 charts, from memory). */
    public static final double SMALL_ANGLE_EFFICIENCY = 0.85;

    /** Share of τ kept at 25 degrees (the same charts, from memory). */
    public static final double LARGE_ANGLE_EFFICIENCY = 0.6;

    private PlainFlap() {}

    /** τ, incidence per deflection, of a flap taking this share of the chord. */
    public static double effectiveness(double chordFraction) {
        double theta = hinge(chordFraction);
        return 1 - (theta - StrictMath.sin(theta)) / Math.PI;
    }

    /**
     * Change of the section's maximum lift per rad, 2 sin θ: a section that stalls from its leading edge does so at one
     * suction there, to which a flap adds less than to lift (derived from the first two terms of the cosine series; 0.45 of the
     * lift gained at a quarter chord, where plain flaps measure 0.4 to 0.6, from memory).
     */
    public static double maximumLiftSlope(double chordFraction) {
        return 2 * StrictMath.sin(hinge(chordFraction));
    }

    /** dC_m/dδ about the quarter chord, per rad, nose up positive. */
    public static double momentSlope(double chordFraction) {
        double theta = hinge(chordFraction);
        return -0.5 * StrictMath.sin(theta) * (1 - StrictMath.cos(theta));
    }

    /**
     * Share of τ that a deflection in rad keeps: constant to 15 degrees, falling by a straight line to 25, and beyond that
     * lift no longer grows (judgement).
     */
    public static double efficiency(double deflection) {
        double size = Math.abs(deflection);
        if (size > SEPARATED) {
            return LARGE_ANGLE_EFFICIENCY * SEPARATED / size;
        }
        double beyond = Math.max(0, size - ATTACHED) / (SEPARATED - ATTACHED);
        return SMALL_ANGLE_EFFICIENCY - (SMALL_ANGLE_EFFICIENCY - LARGE_ANGLE_EFFICIENCY) * beyond;
    }

    /** The deflection at whole effectiveness that does as much as this one, rad. */
    public static double worth(double deflection) {
        return efficiency(deflection) * deflection;
    }

    /** θ of the hinge, rad. */
    private static double hinge(double chordFraction) {
        return StrictMath.acos(2 * chordFraction - 1);
    }
}
