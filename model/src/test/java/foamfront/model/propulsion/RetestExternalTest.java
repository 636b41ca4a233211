package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * How far two tests of one type of propeller lie apart at rest: the noise below which no fit can claim to be right. Means over the
 * speeds of the second test that the first covers, straight between its rows.
 */
class RetestExternalTest {
    /** Half the last printed digit, and as much again for the reading between rows. */
    private static final double MEAN = 0.001;

    private static final Validation AGAIN = Validation.of(
            Subject.PROPULSION,
            "The same propeller tested again",
            "UIUC Propeller Database, volumes 1-3 (means derived): a second test of two types over the first, at rest. What the"
                    + " measurements themselves scatter.");

    @Test
    void aSecondTestDiffersByMoreThanTheFitsDo() {
        compare("E 9x6", 14, 0.063, 0.004);
        compare("D 9x5", 16, 0.055, 0.011);
    }

    private static void compare(String type, int speeds, double thrust, double power) {
        List<MeasuredPropeller.Point> first = still(type);
        List<MeasuredPropeller.Point> again = still(type + MeasuredPropeller.AGAIN);
        double[] sums = new double[2];
        int count = 0;
        for (MeasuredPropeller.Point p : again) {
            int above = 0;
            while (above < first.size() && first.get(above).rotation() < p.rotation()) {
                above++;
            }
            if (above > 0 && above < first.size()) {
                MeasuredPropeller.Point a = first.get(above - 1);
                MeasuredPropeller.Point b = first.get(above);
                double part = (p.rotation() - a.rotation()) / (b.rotation() - a.rotation());
                sums[0] += p.thrust() / (a.thrust() + part * (b.thrust() - a.thrust())) - 1;
                sums[1] += p.power() / (a.power() + part * (b.power() - a.power())) - 1;
                count++;
            }
        }
        assertThat(count).as(type).isEqualTo(speeds);
        AGAIN.value(type + ", C_T", thrust, sums[0] / count, MEAN, "")
                .value(type + ", C_P", power, sums[1] / count, MEAN, "");
    }

    private static List<MeasuredPropeller.Point> still(String name) {
        List<MeasuredPropeller.Point> points = new ArrayList<>();
        for (MeasuredPropeller each : MeasuredPropeller.all().values()) {
            if (each.name().equals(name)) {
                each.points().stream().filter(p -> p.j() == 0).forEach(points::add);
            }
        }
        points.sort(Comparator.comparingDouble(MeasuredPropeller.Point::rotation));
        return points;
    }
}
