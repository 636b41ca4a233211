package foamfront.model.section;

/**
 * Frictionless flow about a closed polygon: vortices whose strength is straight along each side and continuous over the corners.
 * The stream function is one constant on the middle of every side and on the trailing edge, where the strengths of both sides
 * cancel (J. Katz and A. Plotkin, Low-Speed Aerodynamics, 2001, sections 9.3 and 11.4, from memory; integrals <i>derived</i>).
 * Lift and moment come from the circulation: each piece of the sheet feels the stream alone, since what the pieces do to each
 * other lies along the line between them and cancels (<i>derived</i>).
 */
final class PanelMethod {
    private final double[] x;
    private final double[] z;
    /** Strengths for a stream along x and for one along z. */
    private final double[][] strength;

    private PanelMethod(double[] x, double[] z, double[][] strength) {
        this.x = x;
        this.z = z;
        this.strength = strength;
    }

    /** About the corners given from the trailing edge along the lower side, round the nose and back to it. */
    static PanelMethod about(double[] x, double[] z) {
        int sides = x.length - 1;
        double[][] rows = new double[sides + 2][sides + 4];
        for (int i = 0; i <= sides; i++) {
            double px = i < sides ? 0.5 * (x[i] + x[i + 1]) : x[0];
            double pz = i < sides ? 0.5 * (z[i] + z[i + 1]) : z[0];
            for (int j = 0; j < sides; j++) {
                addSide(rows[i], x, z, j, px, pz);
            }
            rows[i][sides + 1] = -1;
            rows[i][sides + 2] = -pz;
            rows[i][sides + 3] = px;
        }
        rows[sides + 1][0] = 1;
        rows[sides + 1][sides] = 1;
        return new PanelMethod(x.clone(), z.clone(), Elimination.solve(rows));
    }

    /** Stream function at a point, (1/2π) ∫ γ ln r ds, for unit strength at each end of side j. */
    private static void addSide(double[] row, double[] x, double[] z, int j, double px, double pz) {
        double length = length(x, z, j);
        double tx = (x[j + 1] - x[j]) / length;
        double tz = (z[j + 1] - z[j]) / length;
        double a = (px - x[j]) * tx + (pz - z[j]) * tz;
        double b = (pz - z[j]) * tx - (px - x[j]) * tz;
        double c = a - length;
        double near = a * a + b * b;
        double far = c * c + b * b;
        boolean onLine = Math.abs(b) < 1e-12 * length;
        double turn = onLine ? 0 : b * (Math.atan2(b, c) - Math.atan2(b, a));
        double whole = 0.5 * (a * log(near) - c * log(far)) - length + turn;
        double towardsEnd = a * whole - 0.25 * (near * log(near) - a * a - far * log(far) + c * c);
        row[j] += (whole - towardsEnd / length) / (2 * Math.PI);
        row[j + 1] += towardsEnd / length / (2 * Math.PI);
    }

    /** Zero at zero: it only ever comes with a factor that vanishes there. */
    private static double log(double square) {
        return square < 1e-28 ? 0 : Math.log(square);
    }

    private static double length(double[] x, double[] z, int side) {
        return Math.hypot(x[side + 1] - x[side], z[side + 1] - z[side]);
    }

    /** c_l at an incidence in rad, on a chord. */
    double lift(double incidence, double chord) {
        double sum = 0;
        for (int i = 0; i < x.length - 1; i++) {
            sum += length(x, z, i) * (at(i, incidence) + at(i + 1, incidence));
        }
        return sum / chord;
    }

    /** c_m about a point on the x axis, nose up positive. */
    double moment(double incidence, double chord, double about) {
        double sum = 0;
        for (int i = 0; i < x.length - 1; i++) {
            double a = at(i, incidence);
            double b = at(i + 1, incidence);
            double sa = (x[i] - about) * Math.cos(incidence) + z[i] * Math.sin(incidence);
            double sb = (x[i + 1] - about) * Math.cos(incidence) + z[i + 1] * Math.sin(incidence);
            sum += length(x, z, i) * (2 * a * sa + a * sb + b * sa + 2 * b * sb) / 6;
        }
        return -2 * sum / (chord * chord);
    }

    /** The same from the pressure on each side, a second way to it. */
    double momentOfPressure(double incidence, double chord, double about) {
        double sum = 0;
        for (int i = 0; i < x.length - 1; i++) {
            double mean = 0.5 * (at(i, incidence) + at(i + 1, incidence));
            double half = 0.5 * (at(i + 1, incidence) - at(i, incidence));
            double pressure = 1 - mean * mean - half * half / 3;
            double px = 0.5 * (x[i] + x[i + 1]) - about;
            double pz = 0.5 * (z[i] + z[i + 1]);
            sum += pressure * (px * (x[i + 1] - x[i]) + pz * (z[i + 1] - z[i]));
        }
        return sum / (chord * chord);
    }

    /** Incidence without lift, rad. */
    double zeroLiftAngle() {
        return -Math.atan2(lift(0, 1), lift(0.5 * Math.PI, 1));
    }

    /** Lift slope at zero lift over 2π, on a chord. */
    double slopeRatio(double chord) {
        return Math.hypot(lift(0, chord), lift(0.5 * Math.PI, chord)) / (2 * Math.PI);
    }

    private double at(int corner, double incidence) {
        return Math.cos(incidence) * strength[0][corner] + Math.sin(incidence) * strength[1][corner];
    }
}
