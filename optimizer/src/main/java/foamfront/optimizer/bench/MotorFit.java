package foamfront.optimizer.bench;

import foamfront.model.propulsion.MotorLaw;
import foamfront.model.propulsion.MotorTrend;
import foamfront.optimizer.catalogue.MotorReading;
import java.util.List;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.jspecify.annotations.Nullable;

/**
 * The three constants of a motor from readings at full throttle, by least squares.
 *
 * <p>Over all readings V = ω / K_v + I R is linear in 1/K_v and R; over those without a propeller the current is the no-load
 * current, I₀ (½ + ½ ω / ω_q) in the model's form ({@link MotorLaw}), which leaves one unknown: its value at their mean voltage.
 * Form: M. Drela, "First-Order DC Electric Motor Model", MIT, 2007 (from memory). Uncertainties are standard errors of the
 * regression (Commons Math, ordinary least squares); that of K_v is first order in that of its inverse (derived).
 *
 * @param speedConstant K_v, rad/s per volt
 * @param speedConstantError one standard error
 * @param resistance R under load with the controller's taken off, ohm
 * @param resistanceError ohm
 * @param noLoadCurrent A
 * @param noLoadCurrentError A; NaN with a single reading
 * @param noLoadVoltage to which it belongs, V
 * @param scatter standard deviation of the voltage about the fit, V
 */
public record MotorFit(
        double speedConstant,
        double speedConstantError,
        double resistance,
        double resistanceError,
        double noLoadCurrent,
        double noLoadCurrentError,
        double noLoadVoltage,
        double scatter) {
    private static final double TURN = 2 * Math.PI;

    /** Standard error over value above which a constant is not known: then the readings were too alike. */
    private static final double USELESS = 0.5;

    /**
     * The fit; null where the readings are too alike to tell the constants apart, or contradict the law.
     *
     * @param controllerResistance to take off, ohm
     */
    public static @Nullable MotorFit of(List<MotorReading> readings, double controllerResistance) {
        double[] volts = new double[readings.size()];
        double[][] known = new double[readings.size()][];
        for (int i = 0; i < volts.length; i++) {
            MotorReading reading = readings.get(i);
            volts[i] = reading.voltage() - controllerResistance * reading.current();
            known[i] = new double[] {TURN * reading.rotation(), reading.current()};
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.setNoIntercept(true);
        try {
            regression.newSampleData(volts, known);
            double[] found = regression.estimateRegressionParameters();
            double[] errors = regression.estimateRegressionParametersStandardErrors();
            boolean credible =
                    found[0] > 0 && found[1] > 0 && errors[0] < USELESS * found[0] && errors[1] < USELESS * found[1];
            return credible ? with(found, errors, Math.sqrt(regression.estimateErrorVariance()), readings) : null;
        } catch (SingularMatrixException e) {
            return null; // all readings alike: the caller says what to measure
        }
    }

    private static MotorFit with(double[] found, double[] errors, double scatter, List<MotorReading> readings) {
        List<MotorReading> idle =
                readings.stream().filter(reading -> !reading.loaded()).toList();
        double voltage =
                idle.stream().mapToDouble(MotorReading::voltage).average().orElseThrow();
        double quoted = voltage / found[0];
        double[] scaled = idle.stream()
                .mapToDouble(reading -> reading.current()
                        / (1 - MotorLaw.VISCOUS_SHARE + MotorLaw.VISCOUS_SHARE * TURN * reading.rotation() / quoted))
                .toArray();
        double mean = 0;
        for (double value : scaled) {
            mean += value / scaled.length;
        }
        double square = 0;
        for (double value : scaled) {
            square += (value - mean) * (value - mean);
        }
        double error = scaled.length > 1 ? Math.sqrt(square / (scaled.length - 1) / scaled.length) : Double.NaN;
        return new MotorFit(
                1 / found[0], errors[0] / (found[0] * found[0]), found[1], errors[1], mean, error, voltage, scatter);
    }

    /** What a motor of this winding resistance and speed constant weighs by the trend of the trade, kg. */
    public double expectedMass() {
        return MotorTrend.mass(catalogueResistance(), speedConstant);
    }

    /** What the catalogue's column wants: the model multiplies it by {@link MotorLaw#EFFECTIVE_RESISTANCE} again, ohm. */
    public double catalogueResistance() {
        return resistance / MotorLaw.EFFECTIVE_RESISTANCE;
    }
}
