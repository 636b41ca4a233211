package foamfront.model.propulsion;

import foamfront.model.parts.PropellerCurves;
import java.util.Collection;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Coefficient curves of a propeller that nobody measured, from its diameter, pitch and product line.
 *
 * <p>Each measured propeller is described at n₀ by its advance ratio of zero thrust J₀, by C_T and C_P at rest and by the
 * shares of these left at 0.35, 0.7 and 1 of J₀, and by its speed terms. These descriptors are regressed on pitch ratio,
 * its square, diameter, and for each product line an offset and a slope in either, with a small ridge; the cubic through the four
 * predicted points is the curve. Scaling by J₀ is what lets one form serve all pitches. How the rows marked "regression"
 * in the catalogue were made; judged by leaving each propeller out (UnseenPropellerExternalTest).
 */
final class LineRegression {
    /** Product lines with enough sizes to regress; the first is the reference. */
    static final String LINES = "ABCDEFG";

    /** Penalty on every weight but the constant; found by leaving one out among 1e-6, 0.02, 0.1 and 0.3. */
    private static final double RIDGE = 0.02;

    private static final double MIDDLE_PITCH_RATIO = 0.65;
    private static final double MIDDLE_DIAMETER = 0.25;
    private static final double DIAMETER_UNIT = 0.1;
    private static final double[] STATIONS = {0, 0.35, 0.7, 1};
    private static final double REFERENCE = PropellerCurves.REFERENCE_SPEED;

    private final RealMatrix weights;

    private LineRegression(RealMatrix weights) {
        this.weights = weights;
    }

    /** Whether a propeller belongs to a line that is regressed. */
    static boolean covers(MeasuredPropeller propeller) {
        return LINES.indexOf(propeller.line()) >= 0;
    }

    static LineRegression over(Collection<MeasuredPropeller> measured) {
        List<MeasuredPropeller> used =
                measured.stream().filter(LineRegression::covers).toList();
        double[][] features = new double[used.size()][];
        double[][] targets = new double[used.size()][];
        for (int i = 0; i < features.length; i++) {
            MeasuredPropeller p = used.get(i);
            features[i] = features(p.line(), p.diameter(), p.pitchRatio());
            targets[i] = describe(p);
        }
        RealMatrix a = new Array2DRowRealMatrix(features, false);
        RealMatrix normal = a.transpose().multiply(a);
        for (int i = 1; i < normal.getRowDimension(); i++) {
            normal.addToEntry(i, i, RIDGE);
        }
        RealMatrix right = a.transpose().multiply(new Array2DRowRealMatrix(targets, false));
        return new LineRegression(new LUDecomposition(normal).getSolver().solve(right));
    }

    /** The curves of an unseen size, between the given speeds in rev/s. */
    PropellerCurves predict(char line, double diameter, double pitch, double lowest, double highest) {
        double y = pitch / diameter;
        double[] z = weights.preMultiply(features(line, diameter, y));
        double j0 = y * StrictMath.exp(z[0]);
        double thrust = StrictMath.exp(z[1]);
        double power = StrictMath.exp(z[4]);
        double[] a = cubic(j0, thrust, new double[] {1, z[2], z[3], 0}, z[8], z[9]);
        double[] b = cubic(j0, power, new double[] {1, z[5], z[6], z[7]}, z[10], z[11]);
        return new PropellerCurves(CurveFit.rounded(a), CurveFit.rounded(b), lowest, highest, j0);
    }

    private static double[] features(char line, double diameter, double pitchRatio) {
        double y = pitchRatio - MIDDLE_PITCH_RATIO;
        int lines = LINES.length() - 1;
        double[] f = new double[4 + 3 * lines];
        f[0] = 1;
        f[1] = y;
        f[2] = y * y;
        f[3] = (diameter - MIDDLE_DIAMETER) / DIAMETER_UNIT;
        int index = LINES.indexOf(line);
        if (index > 0) {
            f[3 + index] = 1;
            f[3 + lines + index] = y;
            f[3 + 2 * lines + index] = f[3];
        }
        return f;
    }

    private static double[] describe(MeasuredPropeller p) {
        PropellerCurves curves = CurveFit.of(p).curves();
        double l = curves.speedTerm(REFERENCE);
        double j0 = CurveShape.at(curves, REFERENCE).zeroThrustAdvance();
        double thrust = curves.thrustCoefficient(0, l);
        double power = curves.powerCoefficient(0, l);
        double[] a = curves.thrustTerms();
        double[] b = curves.powerTerms();
        return new double[] {
            StrictMath.log(j0 / p.pitchRatio()),
            StrictMath.log(thrust),
            curves.thrustCoefficient(STATIONS[1] * j0, l) / thrust,
            curves.thrustCoefficient(STATIONS[2] * j0, l) / thrust,
            StrictMath.log(power),
            curves.powerCoefficient(STATIONS[1] * j0, l) / power,
            curves.powerCoefficient(STATIONS[2] * j0, l) / power,
            curves.powerCoefficient(j0, l) / power,
            a[4] / thrust,
            a[5] / thrust,
            b[4] / power,
            b[5] / power
        };
    }

    private static double[] cubic(double j0, double scale, double[] shares, double speed, double speedSlope) {
        double[][] powers = new double[4][4];
        for (int i = 0; i < 4; i++) {
            double j = STATIONS[i] * j0;
            powers[i] = new double[] {1, j, j * j, j * j * j};
        }
        double[] c = new LUDecomposition(new Array2DRowRealMatrix(powers, false))
                .getSolver()
                .solve(new ArrayRealVector(shares))
                .toArray();
        return new double[] {scale * c[0], scale * c[1], scale * c[2], scale * c[3], scale * speed, scale * speedSlope};
    }
}
