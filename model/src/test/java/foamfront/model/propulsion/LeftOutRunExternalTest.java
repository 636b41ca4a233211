package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.parts.PropellerCurves;
import foamfront.model.validation.ErrorStatistics;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * A measured propeller between its measured speeds: each inner wind-tunnel run of every two-blade propeller left out and predicted
 * from the propeller's other runs. Source: Brandt, Deters, Ananda, Dantsker and Selig, UIUC Propeller Database, volumes 1-3. Beside
 * it a polynomial of degree 2 in J and P/D over all propellers, what diameter and pitch alone can do.
 */
class LeftOutRunExternalTest {
    /** The project's target, RMS over mean. */
    private static final double TARGET = 0.035;

    /** What the quartic was found to do, rounded up. */
    private static final double FOUND_THRUST = 0.0255;

    private static final double FOUND_POWER = 0.0225;

    /**
     * Largest errors over mean when the quartics were made, rounded up. Those of the cubics before them were 0.21 and 0.13: a quartic
     * swings a little more at the end of a run and less everywhere else, as the RMS shows.
     */
    private static final double LARGEST_THRUST = 0.215;

    private static final double LARGEST_POWER = 0.14;

    /** A polynomial of degree 2 was published at 21 % in both coefficients; half its last digit and the retests more. */
    private static final double POLYNOMIAL = 0.215;

    /** It was fitted to 89 sets and is read here over 80. */
    private static final double PRINTED = 0.02;

    /** The published cubic's RMS error of efficiency, where C_T is above this. */
    private static final double EFFICIENCY = 0.032;

    private static final double LEAST_THRUST = 0.03;

    /** Found with the quartics, rounded up. */
    private static final double LARGEST_EFFICIENCY = 0.065;

    /** A cubic in J and ln n of each propeller was found at 3.4 and 2.9 %; the quartic in J and about ln n leaves 2.5 and 2.2 %. */
    private static final Validation RUNS = Validation.of(
            Subject.PROPULSION,
            "Runs left out",
            "UIUC Propeller Database, volumes 1-3: each inner run predicted from the propeller's other runs, errors over the mean"
                    + " coefficient; and a polynomial of degree 2 in J and P/D, for comparison.");

    private record Errors(int count, double largest, double rms) {}

    @Test
    void aRunBetweenMeasuredOnesIsPredictedWithinTheTarget() {
        List<double[]> rows = new ArrayList<>();
        MeasuredPropeller.all().values().forEach(p -> leaveOut(p, rows));
        Errors thrust = errors(rows, 0);
        Errors power = errors(rows, 1);
        RUNS.set("C_T, over its mean", thrust.count(), thrust.largest(), thrust.rms(), LARGEST_THRUST, TARGET, "")
                .set("C_P, over its mean", power.count(), power.largest(), power.rms(), LARGEST_POWER, TARGET, "");
        ErrorStatistics efficiency = new ErrorStatistics();
        rows.stream().filter(row -> row[2] > LEAST_THRUST).forEach(row -> efficiency.add(row[4]));
        RUNS.set("efficiency where C_T is above 0.03", efficiency, LARGEST_EFFICIENCY, EFFICIENCY, "");
        assertThat(thrust.rms()).isLessThan(FOUND_THRUST);
        assertThat(power.rms()).isLessThan(FOUND_POWER);
    }

    @Test
    void sizeAloneDoesSixTimesWorse() {
        List<double[]> rows = new ArrayList<>();
        for (MeasuredPropeller p : MeasuredPropeller.all().values()) {
            double y = p.pitchRatio();
            for (MeasuredPropeller.Point q : p.points()) {
                double j = q.j();
                if (q.thrust() > 0) {
                    rows.add(new double[] {
                        .0273 + .1898 * y - .0854 * y * y - .1695 * j + .1753 * j * y - .1133 * j * j - q.thrust(),
                        .0284 - .0291 * y + .1055 * y * y - .0011 * j + .0161 * j * y - .0712 * j * j - q.power(),
                        q.thrust(),
                        q.power()
                    });
                }
            }
        }
        assertThat(errors(rows, 0).rms()).isBetween(6 * TARGET - 0.01, POLYNOMIAL);
        assertThat(errors(rows, 1).rms()).isBetween(5.5 * TARGET, POLYNOMIAL);
        RUNS.value(
                        "C_T, polynomial of degree 2, RMS over mean",
                        0.21,
                        errors(rows, 0).rms(),
                        PRINTED,
                        "")
                .value(
                        "C_P, polynomial of degree 2, RMS over mean",
                        0.21,
                        errors(rows, 1).rms(),
                        PRINTED,
                        "");
    }

    /** Rows of error in C_T and C_P, the measured values, and the error of efficiency. */
    private static void leaveOut(MeasuredPropeller p, List<double[]> rows) {
        TreeMap<Long, List<MeasuredPropeller.Point>> runs = new TreeMap<>();
        for (MeasuredPropeller.Point q : p.points()) {
            if (q.j() > 0) {
                // Runs of about the same speed, within 250 rpm, are one.
                runs.computeIfAbsent(Math.round(q.rotation() * 60 / 500), k -> new ArrayList<>())
                        .add(q);
            }
        }
        List<List<MeasuredPropeller.Point>> each = new ArrayList<>(runs.values());
        for (List<MeasuredPropeller.Point> out : each.subList(Math.min(1, each.size()), Math.max(1, each.size() - 1))) {
            List<MeasuredPropeller.Point> rest = new ArrayList<>(p.points());
            rest.removeAll(out);
            PropellerCurves curves = CurveFit.of(new MeasuredPropeller(p.name(), p.diameter(), p.pitch(), rest))
                    .curves();
            for (MeasuredPropeller.Point q : out) {
                double l = curves.speedTerm(q.rotation());
                if (q.thrust() > 0) {
                    double thrust = curves.thrustCoefficient(q.j(), l);
                    double power = curves.powerCoefficient(q.j(), l);
                    rows.add(new double[] {
                        thrust - q.thrust(),
                        power - q.power(),
                        q.thrust(),
                        q.power(),
                        q.j() * thrust / power - q.efficiency()
                    });
                }
            }
        }
    }

    private static Errors errors(List<double[]> rows, int column) {
        double square = 0;
        double sum = 0;
        double largest = 0;
        for (double[] row : rows) {
            square += row[column] * row[column];
            sum += row[column + 2];
            largest = Math.max(largest, Math.abs(row[column]));
        }
        double mean = sum / rows.size();
        return new Errors(rows.size(), largest / mean, Math.sqrt(square / rows.size()) / mean);
    }
}
