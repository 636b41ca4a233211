package foamfront.model.aero;

import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * A fine vortex lattice over both halves of mirrored flat-plate surfaces of one panel, without any use of symmetry: the
 * reference for rolling and sideslip. Horseshoes on the quarter chord of each row with the textbook's vector form of
 * Biot-Savart (J. Katz and A. Plotkin, Low-Speed Aerodynamics, 2001, section 2.11 and 12.1, from memory).
 */
final class FullLattice {
    /** The velocity of the air against a surface's place, as seen from it, without its unit forward part. */
    interface Wind {
        /** Through the surface along its unit normal (0, ny, nz) at (y, z); fraction of the semispan eta, negative to port. */
        double through(double y, double z, double ny, double nz, double eta);
    }

    private final int rows;
    private final int count;
    private final double[][] from;
    private final double[][] to;
    private final double[][] control;
    private final double[][] normal;
    private final double[] eta;
    private double[] circulation = new double[0];

    FullLattice(int strips, int rows, Surface... surfaces) {
        this.rows = rows;
        int total = 2 * strips * rows * surfaces.length;
        from = new double[total][];
        to = new double[total][];
        control = new double[total][];
        normal = new double[total][];
        eta = new double[total];
        int next = 0;
        for (Surface surface : surfaces) {
            Panel p = surface.panels().get(0);
            for (int k = 0; k < strips; k++) {
                for (int r = 0; r < rows; r++) {
                    double a = Math.sin(Math.PI * k / (2.0 * strips));
                    double b = Math.sin(Math.PI * (k + 1) / (2.0 * strips));
                    double m = Math.sin(Math.PI * (k + 0.5) / (2.0 * strips));
                    double[] inner = at(p, a, r, 0.25);
                    double[] outer = at(p, b, r, 0.25);
                    double[] middle = at(p, m, r, 0.75);
                    double breadth = Math.hypot(outer[1] - inner[1], outer[2] - inner[2]);
                    double[] up = {0, -(outer[2] - inner[2]) / breadth, (outer[1] - inner[1]) / breadth};
                    put(next++, inner, outer, middle, up, m);
                    put(next++, mirror(outer), mirror(inner), mirror(middle), mirror(up), -m);
                }
            }
        }
        count = next;
    }

    private double[] at(Panel p, double s, int row, double part) {
        double chord = p.rootChord() + s * (p.tipChord() - p.rootChord());
        return new double[] {
            p.rootX() + s * (p.tipX() - p.rootX()) + chord * (row + part) / rows,
            p.rootY() + s * (p.tipY() - p.rootY()),
            p.rootZ() + s * (p.tipZ() - p.rootZ())
        };
    }

    private static double[] mirror(double[] v) {
        return new double[] {v[0], -v[1], v[2]};
    }

    private void put(int i, double[] inner, double[] outer, double[] middle, double[] up, double share) {
        from[i] = inner;
        to[i] = outer;
        control[i] = middle;
        normal[i] = up;
        eta[i] = share;
    }

    FullLattice solve(Wind wind) {
        double[] right = new double[count];
        for (int i = 0; i < count; i++) {
            right[i] = -wind.through(control[i][1], control[i][2], normal[i][1], normal[i][2], eta[i]);
        }
        return solve(right);
    }

    /** With the rearmost rows of both halves turned trailing edge down by a unit angle from a fraction of the semispan outwards. */
    FullLattice solveDeflected(int rearRows, double inboard) {
        double[] right = new double[count];
        for (int i = 0; i < count; i++) {
            boolean turned = i / 2 % rows >= rows - rearRows && Math.abs(eta[i]) > inboard;
            right[i] = turned ? -normal[i][2] : 0;
        }
        return solve(right);
    }

    private FullLattice solve(double[] right) {
        double[][] matrix = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                double[] v = horseshoe(control[i], from[j], to[j]);
                matrix[i][j] = v[1] * normal[i][1] + v[2] * normal[i][2];
            }
        }
        circulation = new LUDecomposition(new Array2DRowRealMatrix(matrix, false))
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
        return this;
    }

    /** Lift over dynamic pressure, m². */
    double lift() {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += 2 * circulation[i] * (to[i][1] - from[i][1]);
        }
        return sum;
    }

    /** Circulation of a strip of the first surface's starboard half, m. */
    double circulation(int strip) {
        double sum = 0;
        for (int r = 0; r < rows; r++) {
            sum += circulation[2 * (strip * rows + r)];
        }
        return sum;
    }

    /** x of the centre of lift, m. */
    double centreX() {
        double moment = 0;
        for (int i = 0; i < count; i++) {
            moment += 2 * circulation[i] * (to[i][1] - from[i][1]) * 0.5 * (from[i][0] + to[i][0]);
        }
        return moment / lift();
    }

    /** Side force over dynamic pressure, m². */
    double side() {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum -= 2 * circulation[i] * (to[i][2] - from[i][2]);
        }
        return sum;
    }

    /** Rolling moment about the body axis over dynamic pressure, starboard down positive, m³. */
    double roll() {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double y = 0.5 * (to[i][1] + from[i][1]);
            double z = 0.5 * (to[i][2] + from[i][2]);
            sum -= 2 * circulation[i] * (y * (to[i][1] - from[i][1]) + z * (to[i][2] - from[i][2]));
        }
        return sum;
    }

    private static double[] horseshoe(double[] p, double[] a, double[] b) {
        double[] bound = segment(p, a, b);
        double[] in = leg(p, a);
        double[] out = leg(p, b);
        return new double[] {0, bound[1] - in[1] + out[1], bound[2] - in[2] + out[2]};
    }

    private static double[] segment(double[] p, double[] a, double[] b) {
        double[] r1 = {p[0] - a[0], p[1] - a[1], p[2] - a[2]};
        double[] r2 = {p[0] - b[0], p[1] - b[1], p[2] - b[2]};
        double[] r0 = {b[0] - a[0], b[1] - a[1], b[2] - a[2]};
        double[] cross = cross(r1, r2);
        double square = dot(cross, cross);
        double part = (dot(r0, r1) / norm(r1) - dot(r0, r2) / norm(r2)) / (4 * Math.PI * square);
        return new double[] {0, part * cross[1], part * cross[2]};
    }

    /** A vortex from the point downstream to infinity. */
    private static double[] leg(double[] p, double[] a) {
        double x = p[0] - a[0];
        double y = p[1] - a[1];
        double z = p[2] - a[2];
        double part = (1 + x / Math.sqrt(x * x + y * y + z * z)) / (4 * Math.PI * (y * y + z * z));
        return new double[] {0, -part * z, part * y};
    }

    private static double[] cross(double[] u, double[] v) {
        return new double[] {u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]};
    }

    private static double dot(double[] u, double[] v) {
        return u[0] * v[0] + u[1] * v[1] + u[2] * v[2];
    }

    private static double norm(double[] u) {
        return Math.sqrt(dot(u, u));
    }
}
