package foamfront.model.aero;

/**
 * Horseshoe vortices on a straight tapered wing with an upright plate on each tip, one row of them, no flow through their
 * three-quarter points (Weissinger), drag from the far wake (Munk). Slow and plain: an oracle for {@link Winglets}.
 */
final class TipPlateLattice {
    private static final int WING = 24;
    private static final int PLATE = 8;
    private static final double INCIDENCE = 0.1;

    private final double[][] left;
    private final double[][] right;
    private final double[] chord;
    private final double[] strength;
    private final int half;
    private final double span;

    /** A wing of root chord 1 in the unit of everything. */
    TipPlateLattice(double span, double taper, double height) {
        this.span = span;
        half = WING + (height > 0 ? PLATE : 0);
        double[][] node = new double[half + 1][];
        double[] c = new double[half + 1];
        for (int i = 0; i <= WING; i++) {
            double share = StrictMath.sin(0.5 * Math.PI * i / WING);
            node[i] = new double[] {0, 0.5 * span * share, 0};
            c[i] = 1 + share * (taper - 1);
        }
        for (int i = 1; i <= half - WING; i++) {
            double share = 0.5 * (1 - StrictMath.cos(Math.PI * i / PLATE));
            c[WING + i] = taper * (1 - 0.4 * share);
            // trailing edge upright, so the quarter chord runs aft
            node[WING + i] = new double[] {0.75 * (taper - c[WING + i]), 0.5 * span, height * share};
        }
        int n = 2 * half;
        left = new double[n][];
        right = new double[n][];
        chord = new double[n];
        for (int i = 0; i < half; i++) {
            left[i] = node[i];
            right[i] = node[i + 1];
            left[half + i] = mirrored(node[i + 1]);
            right[half + i] = mirrored(node[i]);
            chord[i] = 0.5 * (c[i] + c[i + 1]);
            chord[half + i] = chord[i];
        }
        strength = solve(n);
    }

    private static double[] mirrored(double[] p) {
        return new double[] {p[0], -p[1], p[2]};
    }

    private double[] solve(int n) {
        double[] matrix = new double[n * (n + 1)];
        for (int i = 0; i < n; i++) {
            double[] at = middle(i);
            at[0] += 0.5 * chord[i];
            double ny = -(right[i][2] - left[i][2]);
            double nz = right[i][1] - left[i][1];
            for (int j = 0; j < n; j++) {
                double[] v = new double[3];
                segment(at, left[j], right[j], v);
                trailing(at, right[j], 1, v);
                trailing(at, left[j], -1, v);
                matrix[i * (n + 1) + j] = v[1] * ny + v[2] * nz;
            }
            matrix[i * (n + 1) + n] = -INCIDENCE * nz;
        }
        return eliminated(matrix, n);
    }

    private static double[] eliminated(double[] a, int n) {
        int w = n + 1;
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < n; i++) {
                double f = a[i * w + k] / a[k * w + k];
                for (int j = k; j < w; j++) {
                    a[i * w + j] -= f * a[k * w + j];
                }
            }
        }
        double[] x = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = a[i * w + n];
            for (int j = i + 1; j < n; j++) {
                sum -= a[i * w + j] * x[j];
            }
            x[i] = sum / a[i * w + i];
        }
        return x;
    }

    private double[] middle(int i) {
        double[] m = new double[3];
        for (int k = 0; k < 3; k++) {
            m[k] = 0.5 * (left[i][k] + right[i][k]);
        }
        return m;
    }

    private static void trailing(double[] at, double[] from, double sign, double[] v) {
        double x = at[0] - from[0];
        double y = at[1] - from[1];
        double z = at[2] - from[2];
        double square = y * y + z * z;
        if (square < 1e-14) {
            return;
        }
        double k = sign * (1 + x / Math.sqrt(x * x + square)) / (4 * Math.PI * square);
        v[1] -= k * z;
        v[2] += k * y;
    }

    private static void segment(double[] at, double[] a, double[] b, double[] v) {
        double[] p = {at[0] - a[0], at[1] - a[1], at[2] - a[2]};
        double[] q = {at[0] - b[0], at[1] - b[1], at[2] - b[2]};
        double[] cross = {p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]};
        double square = cross[0] * cross[0] + cross[1] * cross[1] + cross[2] * cross[2];
        if (square < 1e-14) {
            return;
        }
        double np = Math.sqrt(p[0] * p[0] + p[1] * p[1] + p[2] * p[2]);
        double nq = Math.sqrt(q[0] * q[0] + q[1] * q[1] + q[2] * q[2]);
        double dot = 0;
        for (int k = 0; k < 3; k++) {
            dot += (b[k] - a[k]) * (p[k] / np - q[k] / nq);
        }
        for (int k = 0; k < 3; k++) {
            v[k] += cross[k] * dot / (4 * Math.PI * square);
        }
    }

    /** Lift over ½ρV² of the whole. */
    double lift() {
        double sum = 0;
        for (int i = 0; i < half; i++) {
            sum += 4 * strength[i] * (right[i][1] - left[i][1]);
        }
        return sum;
    }

    /** L² / (π b² D), over ½ρV². */
    double spanEfficiency() {
        double drag = 0;
        for (int i = 0; i < 2 * half; i++) {
            double[] at = middle(i);
            double flow = 0;
            for (int j = 0; j < 2 * half; j++) {
                flow += strength[j] * (wake(at, right[j], i) - wake(at, left[j], i));
            }
            drag -= strength[i] * flow;
        }
        return lift() * lift() / (Math.PI * span * span * drag);
    }

    private double wake(double[] at, double[] from, int i) {
        double y = at[1] - from[1];
        double z = at[2] - from[2];
        double k = 1 / (2 * Math.PI * (y * y + z * z));
        return -k * z * -(right[i][2] - left[i][2]) + k * y * (right[i][1] - left[i][1]);
    }

    /** Root bending moment of a half over its lift, over the span. */
    double bendingArm() {
        double moment = 0;
        for (int i = 0; i < half; i++) {
            double[] at = middle(i);
            double dy = right[i][1] - left[i][1];
            double dz = right[i][2] - left[i][2];
            moment += 4 * strength[i] * (dy * at[1] + dz * at[2]);
        }
        return moment / (lift() * span);
    }
}
