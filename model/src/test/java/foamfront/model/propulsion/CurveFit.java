package foamfront.model.propulsion;

import foamfront.model.parts.PropellerCurves;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealVector;

/**
 * Least squares of the curve form on every published point with C_T above {@value #LEAST_THRUST}, each of equal weight:
 * how the measured rows of the catalogue were made. Static points faster than the fastest wind-tunnel run count with that run's
 * speed term, because the curves are held there: a folding 10x6 would otherwise read a figure of merit of 0.83 for 0.78.
 *
 * @param curves rounded as the catalogue prints them
 * @param thrustRms RMS residual of C_T over mean C_T, points with C_T above 0 in the mean
 * @param powerRms RMS residual of C_P over mean C_P
 * @param thrustWorst largest residual of C_T over largest C_T
 * @param powerWorst largest residual of C_P over largest C_P
 */
record CurveFit(PropellerCurves curves, double thrustRms, double powerRms, double thrustWorst, double powerWorst) {
    /** A little below zero, so that the zero crossing is fitted too. */
    static final double LEAST_THRUST = -0.01;

    /** The catalogue prints coefficients to 1e-5, well inside the fourth decimal of the data. */
    static final double PRINTED = 1e5;

    static CurveFit of(MeasuredPropeller propeller) {
        List<MeasuredPropeller.Point> used = propeller.points().stream()
                .filter(p -> p.thrust() > LEAST_THRUST)
                .toList();
        PropellerCurves speeds = blank(used);
        double[][] rows = new double[used.size()][];
        double[] thrust = new double[used.size()];
        double[] power = new double[used.size()];
        for (int i = 0; i < rows.length; i++) {
            double j = used.get(i).j();
            double l = speeds.speedTerm(used.get(i).rotation());
            rows[i] = new double[] {1, j, j * j, j * j * j, j * j * j * j, l, l * j};
            thrust[i] = used.get(i).thrust();
            power[i] = used.get(i).power();
        }
        Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(rows, false);
        QRDecomposition qr = new QRDecomposition(matrix);
        double[] a = rounded(qr.getSolver().solve(new ArrayRealVector(thrust)).toArray());
        double[] b = rounded(qr.getSolver().solve(new ArrayRealVector(power)).toArray());
        RealVector thrustError = matrix.operate(new ArrayRealVector(a)).subtract(new ArrayRealVector(thrust));
        RealVector powerError = matrix.operate(new ArrayRealVector(b)).subtract(new ArrayRealVector(power));
        double root = Math.sqrt(rows.length);
        return new CurveFit(
                new PropellerCurves(a, b, speeds.lowestSpeed(), speeds.highestSpeed(), speeds.furthestAdvance()),
                thrustError.getNorm() / root / positiveMean(thrust),
                powerError.getNorm() / root / positiveMean(power),
                thrustError.getLInfNorm() / new ArrayRealVector(thrust).getMaxValue(),
                powerError.getLInfNorm() / new ArrayRealVector(power).getMaxValue());
    }

    static double[] rounded(double[] coefficients) {
        double[] rounded = new double[coefficients.length];
        for (int i = 0; i < rounded.length; i++) {
            rounded[i] = Math.rint(coefficients[i] * PRINTED) / PRINTED;
        }
        return rounded;
    }

    private static PropellerCurves blank(List<MeasuredPropeller.Point> used) {
        double low = Double.MAX_VALUE;
        double high = 0;
        double far = 0;
        for (MeasuredPropeller.Point p : used) {
            low = Math.min(low, p.rotation());
            high = p.j() > 0 ? Math.max(high, p.rotation()) : high;
            far = Math.max(far, p.j());
        }
        return new PropellerCurves(
                new double[PropellerCurves.TERMS], new double[PropellerCurves.TERMS], low, high, far);
    }

    private static double positiveMean(double[] values) {
        double sum = 0;
        int count = 0;
        for (double value : values) {
            if (value > 0) {
                sum += value;
                count++;
            }
        }
        return sum / count;
    }
}
