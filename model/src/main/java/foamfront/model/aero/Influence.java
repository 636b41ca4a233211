package foamfront.model.aero;

import java.util.Arrays;

/**
 * Normal velocity at every control point by a unit horseshoe on every row and strip, with its image about y = 0.
 *
 * <p>Biot-Savart: a straight segment from A to B with r₁, r₂ from its ends to the point induces
 * (r₁ × r₂) (1/r₁ + 1/r₂) / (4π (r₁ r₂ + r₁·r₂)); a half-infinite leg along x induces (1 + Δx/r) / (4π (Δy² + Δz²))
 * times (0, -Δz, Δy). J. Katz and A. Plotkin, Low-Speed Aerodynamics, 2001, section 2.11 (from memory, rearranged).
 * Legs are evaluated once per node, since neighbouring horseshoes share them. The image is had by looking at the
 * starboard half from the mirrored point with the mirrored normal.
 */
final class Influence {
    /** Floor of a squared distance from a leg, m²: keeps a point on a leg finite without touching any other. */
    private static final double CORE = 1e-14;

    private static final double PART = 1 / (4 * Math.PI);

    private final int rows;
    private final Lattice lattice;

    /** Length of the arrays below in use: one place for each vortex row, side and node, in this order. */
    private int places;

    /** x of the bound vortex, offset from the point, its length, and the parts of the velocity that a node shares. */
    private final double[] x;

    private final double[] dx;
    private final double[] dy;
    private final double[] dz;
    private final double[] ny;
    private final double[] far;
    private final double[] radius;
    private final double[] leg;
    private final double[] horseshoe;

    /** Normal velocity at strip i's place in the far wake by a unit trailing pair of strip j, row-major by strips. */
    final double[] wake;

    Influence(Resolution resolution, Lattice lattice, int mostStrips) {
        rows = resolution.rows();
        this.lattice = lattice;
        int ends = 2 * rows * lattice.nodeX.length;
        x = new double[ends];
        dx = new double[ends];
        dy = new double[ends];
        dz = new double[ends];
        ny = new double[ends];
        far = new double[ends];
        radius = new double[ends];
        leg = new double[ends];
        horseshoe = new double[ends];
        wake = new double[mostStrips * mostStrips];
    }

    /**
     * Fills the first rows·strips columns of the matrix, whose rows are {@code stride} long, and the far wake; and of the
     * antisymmetric system, one unknown a strip, the same in {@code lateral}.
     */
    void fill(double[] matrix, int stride, double[] lateral, int lateralStride) {
        placeVortices();
        int strips = lattice.strips;
        for (int i = 0; i < strips; i++) {
            double nz = lattice.normalZ[i];
            offsets(lattice.y[i], lattice.z[i], lattice.normalY[i], nz);
            wakeRow(i * strips);
            boolean takesPart = i < lattice.lateralStrips;
            if (takesPart) {
                Arrays.fill(lateral, i * lateralStride, i * lateralStride + lattice.lateralStrips, 0);
            }
            for (int r = 0; r < rows; r++) {
                velocities(controlX(i, r), nz);
                collect(matrix, (r * strips + i) * stride);
                if (takesPart) {
                    collectDifference(lateral, i * lateralStride, lattice.rowWeight[i * rows + r] * PART);
                }
            }
        }
    }

    /** x of a row's bound vortex at a node, m. */
    double vortexX(int r, int node) {
        return x[2 * r * lattice.nodes + node];
    }

    private void placeVortices() {
        int nodes = lattice.nodes;
        places = 2 * rows * nodes;
        for (int r = 0; r < rows; r++) {
            double at = (r + 0.25) / rows;
            int start = 2 * r * nodes;
            for (int k = 0; k < nodes; k++) {
                double vortex = lattice.nodeX[k] + lattice.nodeChord[k] * (at - lattice.nodeShift[k]);
                x[start + k] = vortex;
                x[start + nodes + k] = vortex;
            }
        }
    }

    private double controlX(int strip, int r) {
        double at = (r + 0.25 + 0.5 * lattice.slopeRatio[strip]) / rows;
        double shift = 0.25 * (1 - lattice.slopeRatio[strip]) * (1 - 1.0 / rows);
        return lattice.x[strip] + lattice.chord[strip] * (at - shift);
    }

    /** Offsets across the stream from a point's two sides to all nodes, alike for every row. */
    private void offsets(double y, double z, double normalY, double normalZ) {
        int nodes = lattice.nodes;
        for (int side = 0; side < 2; side++) {
            double sign = 1 - 2 * side;
            int start = side * nodes;
            for (int k = 0; k < nodes; k++) {
                double across = sign * y - lattice.nodeY[k];
                double up = z - lattice.nodeZ[k];
                dy[start + k] = across;
                dz[start + k] = up;
                ny[start + k] = sign * normalY;
                far[start + k] = (normalZ * across - sign * normalY * up) / Math.max(across * across + up * up, CORE);
            }
        }
        for (int r = 1; r < rows; r++) {
            System.arraycopy(dy, 0, dy, 2 * r * nodes, 2 * nodes);
            System.arraycopy(dz, 0, dz, 2 * r * nodes, 2 * nodes);
            System.arraycopy(ny, 0, ny, 2 * r * nodes, 2 * nodes);
            System.arraycopy(far, 0, far, 2 * r * nodes, 2 * nodes);
        }
    }

    private void wakeRow(int start) {
        int nodes = lattice.nodes;
        int place = start;
        for (int s = 0; s < lattice.surfaces; s++) {
            for (int j = lattice.firstStrip[s] + s; j < lattice.firstStrip[s + 1] + s; j++) {
                double pair = far[j + 1] - far[j] + far[nodes + j + 1] - far[nodes + j];
                wake[place++] = pair * (2 * PART);
            }
        }
    }

    /** Normal velocities times 4π at px abreast of the offsets by every horseshoe and image, by places. */
    private void velocities(double px, double nz) {
        for (int k = 0; k < places; k++) {
            double along = px - x[k];
            double length = Math.sqrt(along * along + dy[k] * dy[k] + dz[k] * dz[k]);
            dx[k] = along;
            radius[k] = length;
            leg[k] = far[k] * (1 + along / length);
        }
        for (int k = 0; k < places - 1; k++) {
            double cross =
                    nz * (dx[k] * dy[k + 1] - dy[k] * dx[k + 1]) + ny[k] * (dz[k] * dx[k + 1] - dx[k] * dz[k + 1]);
            double product = radius[k] * radius[k + 1];
            double dot = dx[k] * dx[k + 1] + dy[k] * dy[k + 1] + dz[k] * dz[k + 1];
            double bound = cross * (radius[k] + radius[k + 1]) / (product * (product + dot));
            horseshoe[k] = leg[k + 1] - leg[k] + bound;
        }
    }

    private void collect(double[] matrix, int start) {
        int nodes = lattice.nodes;
        int place = start;
        for (int r = 0; r < rows; r++) {
            for (int s = 0; s < lattice.surfaces; s++) {
                int from = 2 * r * nodes + s;
                for (int j = lattice.firstStrip[s]; j < lattice.firstStrip[s + 1]; j++) {
                    matrix[place++] = (horseshoe[from + j] + horseshoe[from + nodes + j]) * PART;
                }
            }
        }
    }

    /** Adds one row's condition by horseshoes whose images turn the other way, their rows' shares together. */
    private void collectDifference(double[] matrix, int start, double weight) {
        int nodes = lattice.nodes;
        for (int r = 0; r < rows; r++) {
            for (int s = 0; s < lattice.lateralSurfaces; s++) {
                int from = 2 * r * nodes + s;
                for (int j = lattice.firstStrip[s]; j < lattice.firstStrip[s + 1]; j++) {
                    double difference = horseshoe[from + j] - horseshoe[from + nodes + j];
                    matrix[start + j] += weight * lattice.rowShare[j * rows + r] * difference;
                }
            }
        }
    }

    /** Upward velocity at a point by circulations that stand row by row, {@code step} apart, per unit speed. */
    double upwash(double[] circulation, int start, int step, double px, double py, double pz) {
        int nodes = lattice.nodes;
        offsets(py, pz, 0, 1);
        velocities(px, 1);
        double sum = 0;
        int place = start;
        for (int r = 0; r < rows; r++) {
            for (int s = 0; s < lattice.surfaces; s++) {
                int from = 2 * r * nodes + s;
                for (int j = lattice.firstStrip[s]; j < lattice.firstStrip[s + 1]; j++) {
                    sum += (horseshoe[from + j] + horseshoe[from + nodes + j]) * circulation[place];
                    place += step;
                }
            }
        }
        return sum * PART;
    }
}
