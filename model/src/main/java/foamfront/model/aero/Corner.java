package foamfront.model.aero;

/**
 * One node of the lattice seen from all points, once for each row of vortices: the corners of its bound vortices and the legs
 * that leave them. Neighbouring horseshoes share both.
 *
 * <p>Each loop is short of arrays: with many more the compiler does not do several points at a time.
 */
final class Corner {
    /** Floor of a squared distance from a leg, m²: keeps a point on a leg finite without touching any other. */
    private static final double CORE = 1e-14;

    /** Offset along the stream, m. */
    final double[] along;

    /** Squared distance across the stream, m². */
    final double[] across;

    /** n_z Δy - n_y Δz, the part of the offset that turns a leg's velocity into the normal, m. */
    final double[] facing;

    /** The same over the squared distance: half the normal velocity by the leg far ahead of its end, times 4π, 1/m. */
    final double[] far;

    /** Distance, m, and its inverse. */
    final double[] radius;

    final double[] inverse;

    /** Normal velocity by the leg, times 4π, 1/m. */
    final double[] leg;

    Corner(int points) {
        along = new double[points];
        across = new double[points];
        facing = new double[points];
        far = new double[points];
        radius = new double[points];
        inverse = new double[points];
        leg = new double[points];
    }

    /** Across the stream: a node at y and z. */
    void across(int count, double[] pointY, double[] pointZ, double[] normalY, double[] normalZ, double y, double z) {
        project(count, pointY, pointZ, normalY, normalZ, facing, y, z);
        distances(count, pointY, pointZ, across, y, z);
        divide(count, facing, across, far);
    }

    /** Along the stream: a vortex that leaves the node at x, as seen from {@code count} points. */
    void along(int from, int count, double[] pointX, double x) {
        for (int p = from; p < from + count; p++) {
            along[p] = pointX[p] - x;
        }
    }

    /** Legs and distances. */
    void trail(int count) {
        lengths(count, along, across, radius, inverse);
        legs(count, along, far, inverse, leg);
    }

    private static void project(
            int count,
            double[] pointY,
            double[] pointZ,
            double[] ny,
            double[] nz,
            double[] facing,
            double y,
            double z) {
        for (int p = 0; p < count; p++) {
            facing[p] = nz[p] * (pointY[p] - y) - ny[p] * (pointZ[p] - z);
        }
    }

    private static void distances(int count, double[] pointY, double[] pointZ, double[] across, double y, double z) {
        for (int p = 0; p < count; p++) {
            double dy = pointY[p] - y;
            double dz = pointZ[p] - z;
            across[p] = dy * dy + dz * dz;
        }
    }

    private static void divide(int count, double[] facing, double[] across, double[] far) {
        for (int p = 0; p < count; p++) {
            far[p] = facing[p] * across[p] / (across[p] * across[p] + CORE * CORE);
        }
    }

    private static void lengths(int count, double[] along, double[] across, double[] radius, double[] inverse) {
        for (int p = 0; p < count; p++) {
            double length = Math.sqrt(along[p] * along[p] + across[p]);
            radius[p] = length;
            inverse[p] = 1 / length;
        }
    }

    private static void legs(int count, double[] along, double[] far, double[] inverse, double[] leg) {
        for (int p = 0; p < count; p++) {
            leg[p] = far[p] * (1 + along[p] * inverse[p]);
        }
    }

    /**
     * Normal velocities times 4π by the horseshoes between this node and the next one outboard.
     *
     * @param breadth squared distance across the stream between both, m²
     * @param scratch as long as there are points
     */
    void join(int count, Corner next, double breadth, double[] scratch, double[] horseshoe) {
        turn(count, along, facing, next.along, next.facing, horseshoe);
        dot(count, along, across, next.along, next.across, breadth, scratch);
        open(count, radius, next.radius, scratch);
        bind(count, inverse, next.inverse, scratch, horseshoe);
        shed(count, leg, next.leg, horseshoe);
    }

    private static void turn(
            int count, double[] along, double[] facing, double[] nextAlong, double[] nextFacing, double[] cross) {
        for (int p = 0; p < count; p++) {
            cross[p] = along[p] * nextFacing[p] - nextAlong[p] * facing[p];
        }
    }

    private static void dot(
            int count,
            double[] along,
            double[] across,
            double[] nextAlong,
            double[] nextAcross,
            double breadth,
            double[] dot) {
        for (int p = 0; p < count; p++) {
            dot[p] = along[p] * nextAlong[p] + 0.5 * (across[p] + nextAcross[p] - breadth);
        }
    }

    private static void open(int count, double[] radius, double[] nextRadius, double[] sum) {
        for (int p = 0; p < count; p++) {
            sum[p] += radius[p] * nextRadius[p];
        }
    }

    private static void bind(int count, double[] inverse, double[] nextInverse, double[] sum, double[] velocity) {
        for (int p = 0; p < count; p++) {
            velocity[p] *= (inverse[p] + nextInverse[p]) / sum[p];
        }
    }

    private static void shed(int count, double[] leg, double[] nextLeg, double[] velocity) {
        for (int p = 0; p < count; p++) {
            velocity[p] += nextLeg[p] - leg[p];
        }
    }
}
