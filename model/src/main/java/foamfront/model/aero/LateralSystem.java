package foamfront.model.aero;

/**
 * Rolling, sideslipping and turning by controls: the antisymmetric half of the {@link LiftingSystem}, with the sign of the
 * image about y = 0 turned. Strip theory would double these derivatives, since the two halves' trailing vortices help each
 * other's downwash.
 *
 * <p>One unknown a strip: each strip's circulation is shared among its rows as on a flat section at incidence, and its flow
 * condition is weighted so that any downwash along the chord gives the section's exact lift (M. M. Munk's reverse-flow
 * weights; derived for equal rows from the Cauchy system of {@link Lattice}: with vortices and control points half a row's κ
 * apart the shares are Π(xᵢ - yⱼ) / Π(yₖ - yⱼ), and the weights are the same numbers from the back). Within 1 % of a fine
 * lattice over both halves (LateralSystemExternalTest).
 *
 * <p>Wings and canted tails take part. Level tails, which add two or three per cent of roll damping, and fins on the centre
 * line ({@link FinYaw}) do not. Moments are about the body axis at z = 0; the effect of sweep on a lifting wing in sideslip,
 * and drag's share of yaw, are left out. Positive: roll starboard down, yaw and sideslip nose and wind to starboard.
 */
public final class LateralSystem {
    private static final int COLUMNS = 4;
    private static final int ROLL = 0;
    private static final int SIDESLIP = 1;
    private static final int AILERON = 2;
    private static final int RUDDER = 3;

    private final Lattice lattice;
    private final double[] matrix;
    private final double[] roll = new double[COLUMNS];

    /** Side force over dynamic pressure by columns, m², and the same times x, m³. */
    private final double[] side = new double[COLUMNS];

    private final double[] sideX = new double[COLUMNS];
    private double area;
    private double span;

    LateralSystem(Lattice lattice, int mostStrips) {
        this.lattice = lattice;
        matrix = new double[mostStrips * (mostStrips + COLUMNS)];
    }

    /** The rows to be filled with influence coefficients, {@link #stride} apart. */
    double[] matrix() {
        return matrix;
    }

    int stride() {
        return lattice.lateralStrips + COLUMNS;
    }

    /** Solves the filled matrix on the given references. */
    void solve(double area, double span) {
        this.area = area;
        this.span = span;
        int n = lattice.lateralStrips;
        int stride = stride();
        for (int i = 0; i < n; i++) {
            int at = i * stride + n;
            double ny = lattice.normalY[i];
            matrix[at + ROLL] = -2 / span * (lattice.y[i] * lattice.normalZ[i] - lattice.z[i] * ny);
            matrix[at + SIDESLIP] = ny;
            matrix[at + AILERON] = lattice.aileron[i];
            matrix[at + RUDDER] = -lattice.rudder[i];
        }
        DenseSolver.solve(matrix, n, stride);
        for (int b = 0; b < COLUMNS; b++) {
            moments(b, n, stride);
        }
    }

    private void moments(int b, int n, int stride) {
        double rolling = 0;
        double force = 0;
        double forceX = 0;
        for (int s = 0; s < lattice.surfaces && lattice.firstStrip[s] < n; s++) {
            for (int i = lattice.firstStrip[s]; i < lattice.firstStrip[s + 1]; i++) {
                int node = i + s;
                double circulation = 4 * matrix[i * stride + n + b];
                double y1 = lattice.nodeY[node];
                double y2 = lattice.nodeY[node + 1];
                double z1 = lattice.nodeZ[node];
                double z2 = lattice.nodeZ[node + 1];
                rolling -= circulation * 0.5 * (y2 * y2 - y1 * y1 + z2 * z2 - z1 * z1);
                double across = -circulation * (z2 - z1);
                force += across;
                forceX += across * (lattice.x[i] + 0.25 * lattice.chord[i]);
            }
        }
        roll[b] = rolling;
        side[b] = force;
        sideX[b] = forceX;
    }

    /** C_lp, per unit helix angle p b / 2V; negative. */
    public double rollDamping() {
        return roll[ROLL] / (area * span);
    }

    /** C_lβ, per rad; negative with dihedral. */
    public double dihedralEffect() {
        return roll[SIDESLIP] / (area * span);
    }

    /** C_lδ of ailerons or elevons at their theoretical effectiveness, per rad of each side, starboard up; positive. */
    public double aileronPower() {
        return roll[AILERON] / (area * span);
    }

    /** C_Yβ of wings and canted tails, per rad; negative. */
    public double sideForceSlope() {
        return side[SIDESLIP] / area;
    }

    /** C_nβ of wings and canted tails about x, per rad; positive: into the wind. */
    public double yawStiffness(double x) {
        return yaw(SIDESLIP, x);
    }

    /** C_nδ of a canted tail's surfaces turned as rudder at their theoretical effectiveness, per rad, about x; positive. */
    public double rudderPower(double x) {
        return yaw(RUDDER, x);
    }

    /** C_l of the same rudder: negative where it rolls out of the turn it steers into, as on an upright V. */
    public double rudderRoll() {
        return roll[RUDDER] / (area * span);
    }

    private double yaw(int column, double x) {
        return (x * side[column] - sideX[column]) / (area * span);
    }
}
