package foamfront.model.aero;

import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;

/**
 * Yaw stiffness of an upright fin: dC_n/dβ = a (S_v / S) (l_v / b), a by {@link Helmbold} at an effective aspect ratio,
 * sidewash and loss of dynamic pressure left out. A body below works like part of an end plate: 1.55 times the geometric
 * aspect ratio h² / S_v (NACA R-823 and handbook practice, from memory).
 */
public final class FinYaw {
    /** Effective over geometric aspect ratio of a fin on a body, from memory. */
    public static final double ON_BODY = 1.55;

    /** K of a V-tail's side force: between 0.65 and 0.75 (NACA R-823, 1945, from memory). */
    private static final double V_TAIL = 0.7;

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
        return sideForceSlope(fin, slopeRatio, effective) * (quarterChord(fin) - x) / (area * span);
    }

    /** Side force per rad of sideslip over dynamic pressure, m². */
    public static double sideForceSlope(Surface fin, double slopeRatio, double effective) {
        double height = fin.span();
        return fin.area() * Helmbold.liftSlope(effective * height * height / fin.area(), slopeRatio);
    }

    /**
     * dC_n/dβ of a V-tail, both halves, per rad: C_Yβ = -K a_N sin² ν with ν the panels' dihedral and a_N the slope of the
     * tail laid flat. P. E. Purser and J. P. Campbell, NACA R-823, 1945 (from memory). Zero for a level tail.
     */
    public static double vTailStiffness(Surface tail, double slopeRatio, double x, double area, double span) {
        double breadth = 0;
        double rise = 0;
        for (int i = 0; i < tail.panels().size(); i++) {
            Panel panel = tail.panels().get(i);
            breadth += panel.breadth();
            rise += panel.tipZ() - panel.rootZ();
        }
        double slope = Helmbold.liftSlope(4 * breadth * breadth / tail.area(), slopeRatio);
        double sine = rise / breadth;
        return V_TAIL * slope * sine * sine * tail.area() * (quarterChord(tail) - x) / (area * span);
    }

    /** x of the area's mean quarter chord, m: Simpson's rule, exact on straight edges. */
    static double quarterChord(Surface fin) {
        double sum = 0;
        double area = 0;
        for (int i = 0; i < fin.panels().size(); i++) {
            Panel panel = fin.panels().get(i);
            area += panel.area();
            double root = panel.rootX() + 0.25 * panel.rootChord();
            double tip = panel.tipX() + 0.25 * panel.tipChord();
            double middle = (root + tip) * (panel.rootChord() + panel.tipChord());
            sum += panel.breadth() * (root * panel.rootChord() + middle + tip * panel.tipChord()) / 6;
        }
        return sum / area;
    }
}
