package foamfront.model.aero;

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

    private static final double QUARTER_CIRCLE = 1 / (4 * Math.PI);

    private final int rows;
    private final Lattice lattice;

    /** Per vortex row and node: offset from the node, its length and reciprocal, the leg's part of the velocity. */
    private final double[] dx;

    private final double[] dy;
    private final double[] dz;
    private final double[] far;
    private final double[] radius;
    private final double[] leg;
    private final double[] row;

    /** x of the bound vortices at the nodes, one vortex row after the other, m. */
    final double[] vortexX;

    /** Normal velocity at strip i's place in the far wake by a unit trailing pair of strip j, row-major by strips. */
    final double[] wake;

    Influence(Resolution resolution, Lattice lattice, int mostStrips) {
        rows = resolution.rows();
        this.lattice = lattice;
        int ends = lattice.nodeX.length;
        dx = new double[ends];
        dy = new double[ends];
        dz = new double[ends];
        far = new double[ends];
        radius = new double[ends];
        leg = new double[ends];
        row = new double[rows * ends];
        vortexX = new double[rows * ends];
        wake = new double[mostStrips * mostStrips];
    }

    /** Fills the first rows·strips columns of the matrix, whose rows are {@code stride} long, and the far wake. */
    void fill(double[] matrix, int stride) {
        placeVortices();
        int strips = lattice.strips;
        for (int i = 0; i < strips; i++) {
            for (int side = 0; side < 2; side++) {
                double sign = 1 - 2 * side;
                double ny = sign * lattice.normalY[i];
                double nz = lattice.normalZ[i];
                offsets(sign * lattice.y[i], lattice.z[i], ny, nz);
                wakeRow(i * strips, side == 0);
                for (int r = 0; r < rows; r++) {
                    velocities(controlX(i, r), ny, nz);
                    collect(matrix, (r * strips + i) * stride, side == 0);
                }
            }
        }
    }

    private void placeVortices() {
        int nodes = lattice.nodes;
        for (int r = 0; r < rows; r++) {
            double at = (r + 0.25) / rows;
            for (int k = 0; k < nodes; k++) {
                vortexX[r * nodes + k] = lattice.nodeX[k] + lattice.nodeChord[k] * (at - lattice.nodeShift[k]);
            }
        }
    }

    private double controlX(int strip, int r) {
        double at = (r + 0.25 + 0.5 * lattice.slopeRatio[strip]) / rows;
        double shift = 0.25 * (1 - lattice.slopeRatio[strip]) * (1 - 1.0 / rows);
        return lattice.x[strip] + lattice.chord[strip] * (at - shift);
    }

    private void offsets(double y, double z, double ny, double nz) {
        int nodes = lattice.nodes;
        for (int k = 0; k < nodes; k++) {
            double across = y - lattice.nodeY[k];
            double up = z - lattice.nodeZ[k];
            dy[k] = across;
            dz[k] = up;
            far[k] = (nz * across - ny * up) / Math.max(across * across + up * up, CORE);
        }
    }

    private void wakeRow(int start, boolean first) {
        int place = 0;
        for (int s = 0; s < lattice.surfaces; s++) {
            for (int j = lattice.firstStrip[s]; j < lattice.firstStrip[s + 1]; j++) {
                double pair = (far[j + s + 1] - far[j + s]) * (2 * QUARTER_CIRCLE);
                wake[start + place] = first ? pair : wake[start + place] + pair;
                place++;
            }
        }
    }

    /** Normal velocities times 4π at (px, y, z) by every vortex of every row, into {@code row}. */
    private void velocities(double px, double ny, double nz) {
        int nodes = lattice.nodes;
        for (int r = 0; r < rows; r++) {
            int start = r * nodes;
            for (int k = 0; k < nodes; k++) {
                double along = px - vortexX[start + k];
                double length = Math.sqrt(along * along + dy[k] * dy[k] + dz[k] * dz[k]);
                dx[k] = along;
                radius[k] = length;
                leg[k] = far[k] * (1 + along / length);
            }
            for (int k = 0; k < nodes - 1; k++) {
                double cross =
                        nz * (dx[k] * dy[k + 1] - dy[k] * dx[k + 1]) + ny * (dz[k] * dx[k + 1] - dx[k] * dz[k + 1]);
                double product = radius[k] * radius[k + 1];
                double dot = dx[k] * dx[k + 1] + dy[k] * dy[k + 1] + dz[k] * dz[k + 1];
                double bound = cross * (radius[k] + radius[k + 1]) / (product * (product + dot));
                row[start + k] = leg[k + 1] - leg[k] + bound;
            }
        }
    }

    private void collect(double[] matrix, int start, boolean first) {
        int nodes = lattice.nodes;
        int place = start;
        for (int r = 0; r < rows; r++) {
            for (int s = 0; s < lattice.surfaces; s++) {
                int from = r * nodes + s;
                for (int j = lattice.firstStrip[s]; j < lattice.firstStrip[s + 1]; j++) {
                    double value = row[from + j] * QUARTER_CIRCLE;
                    matrix[place] = first ? value : matrix[place] + value;
                    place++;
                }
            }
        }
    }

    /** Upward velocity at a point in the plane y ≥ 0 by circulations ordered row by row, m/s for m²/s. */
    double upwash(double[] circulation, int start, int step, double px, double py, double pz) {
        double sum = 0;
        int strips = lattice.strips;
        for (int side = 0; side < 2; side++) {
            offsets((1 - 2 * side) * py, pz, 0, 1);
            velocities(px, 0, 1);
            for (int r = 0; r < rows; r++) {
                for (int s = 0; s < lattice.surfaces; s++) {
                    for (int j = lattice.firstStrip[s]; j < lattice.firstStrip[s + 1]; j++) {
                        sum += row[r * lattice.nodes + s + j] * circulation[start + (r * strips + j) * step];
                    }
                }
            }
        }
        return sum * QUARTER_CIRCLE;
    }
}
