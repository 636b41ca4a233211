package foamfront.model.aero;

/**
 * Normal velocity at every control point by a unit horseshoe on every row and strip, with its image about y = 0.
 *
 * <p>Biot-Savart: a straight segment from A to B with r₁, r₂ from its ends to the point induces
 * (r₁ × r₂) (1/r₁ + 1/r₂) / (4π (r₁ r₂ + r₁·r₂)); a half-infinite leg along x induces (1 + Δx/r) / (4π (Δy² + Δz²))
 * times (0, -Δz, Δy). J. Katz and A. Plotkin, Low-Speed Aerodynamics, 2001, section 2.11 (from memory, rearranged: with
 * g = n_z Δy - n_y Δz the normal part of r₁ × r₂ is Δx₁ g₂ - Δx₂ g₁, and r₁·r₂ follows from three squared distances). The
 * image is had by looking at the starboard half from the mirrored point with the mirrored normal.
 *
 * <p>The sums run {@link Corner} by corner, over all points at once: long plain loops, which a processor does several
 * points at a time.
 */
final class Influence {
    private static final double PART = 1 / (4 * Math.PI);

    private final int rows;
    private final Lattice lattice;

    /** Points on the starboard half; as many mirrored ones follow, and all again for each further row of vortices. */
    private int half;

    private int all;

    private final double[] pointX;
    private final double[] pointY;
    private final double[] pointZ;
    private final double[] normalY;
    private final double[] normalZ;

    /** Ends of the horseshoes in hand, by turns inner and outer. */
    private Corner inner;

    private Corner outer;
    private final double[] scratch;
    private final double[] horseshoe;

    /** Normal velocity at strip i's place in the far wake by a unit trailing pair of strip j, row-major by strips. */
    final double[] wake;

    Influence(Resolution resolution, Lattice lattice, int mostStrips) {
        rows = resolution.rows();
        this.lattice = lattice;
        int points = 2 * rows * rows * mostStrips;
        pointX = new double[points];
        pointY = new double[points];
        pointZ = new double[points];
        normalY = new double[points];
        normalZ = new double[points];
        inner = new Corner(points);
        outer = new Corner(points);
        scratch = new double[points];
        horseshoe = new double[points];
        wake = new double[mostStrips * mostStrips];
    }

    /**
     * Fills the first rows·strips columns of the matrix, whose rows are {@code stride} long, and the far wake; and of the
     * antisymmetric system, one unknown a strip, the same in {@code lateral}.
     */
    void fill(double[] matrix, int stride, double[] lateral, int lateralStride) {
        placePoints();
        for (int s = 0; s < lattice.surfaces; s++) {
            place(outer, lattice.firstStrip[s] + s);
            for (int j = lattice.firstStrip[s]; j < lattice.firstStrip[s + 1]; j++) {
                join(j + s);
                collect(j, matrix, stride);
                collectWake(j);
                if (j < lattice.lateralStrips) {
                    collectDifference(j, lateral, lateralStride);
                }
            }
        }
    }

    /** x of a row's bound vortex at a node, m. */
    double vortexX(int r, int node) {
        return lattice.nodeX[node] + lattice.nodeChord[node] * ((r + 0.25) / rows - lattice.nodeShift[node]);
    }

    private double controlX(int strip, int r) {
        double at = (r + 0.25 + 0.5 * lattice.slopeRatio[strip]) / rows;
        double shift = 0.25 * (1 - lattice.slopeRatio[strip]) * (1 - 1.0 / rows);
        return lattice.x[strip] + lattice.chord[strip] * (at - shift);
    }

    private void placePoints() {
        int strips = lattice.strips;
        half = rows * strips;
        all = 2 * rows * half;
        for (int r = 0; r < rows; r++) {
            for (int i = 0; i < strips; i++) {
                double x = controlX(i, r);
                placePoint(r * strips + i, x, lattice.y[i], lattice.z[i], lattice.normalY[i], lattice.normalZ[i]);
            }
        }
    }

    private void placePoint(int place, double x, double y, double z, double ny, double nz) {
        for (int p = place; p < all; p += 2 * half) {
            placeSide(p, x, y, z, ny, nz);
            placeSide(p + half, x, -y, z, -ny, nz);
        }
    }

    private void placeSide(int p, double x, double y, double z, double ny, double nz) {
        pointX[p] = x;
        pointY[p] = y;
        pointZ[p] = z;
        normalY[p] = ny;
        normalZ[p] = nz;
    }

    private void place(Corner corner, int node) {
        corner.across(all, pointY, pointZ, normalY, normalZ, lattice.nodeY[node], lattice.nodeZ[node]);
        for (int r = 0; r < rows; r++) {
            corner.along(2 * r * half, 2 * half, pointX, vortexX(r, node));
        }
        corner.trail(all);
    }

    /** The horseshoes of all rows from a node, where the last ones ended, to the next. */
    private void join(int node) {
        Corner passed = inner;
        inner = outer;
        outer = passed;
        place(outer, node + 1);
        double dy = lattice.nodeY[node + 1] - lattice.nodeY[node];
        double dz = lattice.nodeZ[node + 1] - lattice.nodeZ[node];
        inner.join(all, outer, dy * dy + dz * dz, scratch, horseshoe);
    }

    private void collect(int strip, double[] matrix, int stride) {
        for (int r = 0; r < rows; r++) {
            int starboard = 2 * r * half;
            int port = starboard + half;
            int place = r * lattice.strips + strip;
            for (int i = 0; i < half; i++) {
                matrix[place] = (horseshoe[starboard + i] + horseshoe[port + i]) * PART;
                place += stride;
            }
        }
    }

    private void collectWake(int strip) {
        int strips = lattice.strips;
        for (int i = 0; i < strips; i++) {
            double pair = outer.far[i] - inner.far[i] + outer.far[half + i] - inner.far[half + i];
            wake[i * strips + strip] = pair * (2 * PART);
        }
    }

    /** Conditions and shares of all rows together, by horseshoes whose images turn the other way. */
    private void collectDifference(int strip, double[] matrix, int stride) {
        int strips = lattice.strips;
        for (int i = 0; i < lattice.lateralStrips; i++) {
            double sum = 0;
            for (int r = 0; r < rows; r++) {
                double row = 0;
                for (int v = 0; v < rows; v++) {
                    int at = 2 * v * half + r * strips + i;
                    row += lattice.rowShare[strip * rows + v] * (horseshoe[at] - horseshoe[at + half]);
                }
                sum += lattice.rowWeight[i * rows + r] * row;
            }
            matrix[i * stride + strip] = sum * PART;
        }
    }

    /** Upward velocity at a point by circulations that stand row by row, {@code step} apart, per unit speed. */
    double upwash(double[] circulation, int start, int step, double px, double py, double pz) {
        half = 1;
        all = 2 * rows;
        placePoint(0, px, py, pz, 0, 1);
        double sum = 0;
        for (int s = 0; s < lattice.surfaces; s++) {
            place(outer, lattice.firstStrip[s] + s);
            for (int j = lattice.firstStrip[s]; j < lattice.firstStrip[s + 1]; j++) {
                join(j + s);
                for (int r = 0; r < rows; r++) {
                    double both = horseshoe[2 * r] + horseshoe[2 * r + 1];
                    sum += both * circulation[start + step * (r * lattice.strips + j)];
                }
            }
        }
        return sum * PART;
    }
}
