package foamfront.model.mass;

/**
 * Moments and products of inertia of the full aeroplane about its centre of gravity, kg m²: I_xx = ∫(y² + z²) dm, I_xy = ∫xy dm
 * and so on, axes x aft, y to starboard, z up. Every item counts as an even box, m (a² + b²) / 12 about its own centroid,
 * moved by Steiner's theorem; derived.
 */
public record Inertia(double xx, double yy, double zz, double xy, double xz, double yz) {
    public static Inertia of(MassBreakdown masses, Balance balance) {
        double[] sum = new double[6];
        for (MassItem item : masses.items()) {
            add(sum, item, item.xAt(balance.aim()), balance);
        }
        add(sum, masses.battery(), balance.batteryX(), balance);
        return new Inertia(sum[0], sum[1], sum[2], sum[3], sum[4], sum[5]);
    }

    private static void add(double[] sum, MassItem item, double at, Balance balance) {
        double m = item.mass();
        double x = at - balance.x();
        double y = item.y() - balance.y();
        double z = item.z() - balance.z();
        double ownX = item.length() * item.length() / 12;
        double ownY = item.breadth() * item.breadth() / 12;
        double ownZ = item.height() * item.height() / 12;
        double xx = x * x + ownX;
        double yy = y * y + ownY;
        double zz = z * z + ownZ;
        sum[0] += m * (yy + zz);
        sum[1] += m * (xx + zz);
        sum[2] += m * (xx + yy);
        sum[3] += m * x * y;
        sum[4] += m * x * z;
        sum[5] += m * y * z;
    }
}
