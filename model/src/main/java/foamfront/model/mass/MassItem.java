package foamfront.model.mass;

import static foamfront.model.units.Require.notNegative;

/**
 * One mass at its centroid, spread evenly over a box of its own size; x aft from the nose, y to starboard, z up from
 * the body axis.
 *
 * @param mass kg
 * @param x m from the nose, or from the balance point
 * @param y m
 * @param z m
 * @param length of its box along x, m; 0 for a point
 * @param breadth along y, m
 * @param height along z, m
 * @param fromBalancePoint whether x counts from the balance point, as for wheels and loads placed by it
 */
public record MassItem(
        String name,
        double mass,
        double x,
        double y,
        double z,
        double length,
        double breadth,
        double height,
        MassGroup group,
        boolean fromBalancePoint) {
    public MassItem {
        notNegative("mass of an item", mass, "kg");
    }

    /** A point mass at a fixed place. */
    public static MassItem point(String name, double mass, double x, double y, double z, MassGroup group) {
        return new MassItem(name, mass, x, y, z, 0, 0, 0, group, false);
    }

    /** Its place from the nose once the balance point is known, m. */
    double xAt(double balancePoint) {
        return fromBalancePoint ? balancePoint + x : x;
    }
}
