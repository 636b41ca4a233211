package foamfront.model.aero;

import foamfront.model.airframe.Surface;

/**
 * Yaw stiffness of an upright fin: dC_n/dβ = a (S_v / S) (l_v / b), a by {@link Helmbold} at an effective aspect ratio,
 * sidewash and loss of dynamic pressure left out. A body below works like part of an end plate: 1.55 times the geometric
 * aspect ratio h² / S_v (NACA R-823 and handbook practice, from memory).
 */
public final class FinYaw {
    /** Effective over geometric aspect ratio of a fin on a body, from memory. */
    public static final double ON_BODY = 1.55;

    private FinYaw() {}

    /**
     * dC_n/dβ of one fin, per rad, positive: into the wind.
     *
     * @param fin an upright surface that is not mirrored
     * @param slopeRatio its section's lift slope over 2π
     * @param effective effective over geometric aspect ratio
     * @param x of the balance point, m
     * @param area of the wing, m²
     * @param span of the wing, m
     */
    public static double stiffness(
            Surface fin, double slopeRatio, double effective, double x, double area, double span) {
        return sideForceSlope(fin, slopeRatio, effective) * (fin.quarterChordX() - x) / (area * span);
    }

    /** Side force per rad of sideslip over dynamic pressure, m². */
    public static double sideForceSlope(Surface fin, double slopeRatio, double effective) {
        double height = fin.span();
        return fin.area() * Helmbold.liftSlope(effective * height * height / fin.area(), slopeRatio);
    }
}
