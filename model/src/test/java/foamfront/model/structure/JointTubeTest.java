package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JointTubeTest {
    private static final double ROUNDING = 1e-12;

    /** Shear and moment stepped along the sleeve under its pressure; both end at nothing. */
    @ParameterizedTest(name = "{0} N m, {1} N, {2} m")
    @CsvSource({"3, 0, 0.2", "3, 15, 0.2", "0, 15, 0.2", "0.1, 40, 0.05", "5, 20, 0.12"})
    void theSleevesPressureHoldsTheTube(double moment, double shear, double l) {
        int n = 200_000;
        JointTube joint = JointTube.of(moment, shear, 0.006, l);
        double near = joint.pressure() * 0.006;
        double far = near - 2 * shear / l;
        double v = shear;
        double m = moment;
        double mostShear = v;
        double mostMoment = m;
        for (int i = 0; i < n; i++) {
            double x = (i + 0.5) / n * l;
            double p = near - (near + far) * x / l;
            double next = v - p * l / n;
            m += 0.5 * (v + next) * l / n;
            v = next;
            mostShear = Math.max(mostShear, Math.abs(v));
            mostMoment = Math.max(mostMoment, m);
        }
        double size = moment + shear * l;
        assertThat(v * l).as("shear at the end").isCloseTo(0, within(1e-8 * size));
        assertThat(m).as("moment at the end").isCloseTo(0, within(1e-8 * size));
        assertThat(joint.shear()).isCloseTo(mostShear, withinPercentage(1e-3));
        assertThat(joint.moment()).isCloseTo(mostMoment, withinPercentage(1e-3));
    }

    /** Worked by hand: 6 M / (d l²). */
    @ParameterizedTest(name = "{0} N m on {2} mm")
    @CsvSource({"5,8,150,167", "5,8,100,375", "3,6,120,208"})
    void bearingPressureInTheSleeve(double moment, double diameter, double engaged, double kilopascal) {
        double half = 0.5; // of the last printed kilopascal
        assertThat(JointTube.of(moment, 0, diameter / 1000, engaged / 1000).pressure() / 1000)
                .isCloseTo(kilopascal, within(half));
    }

    @Test
    void aPureMomentShearsTheTubeMost() {
        JointTube joint = JointTube.of(3, 0, 0.006, 0.2);
        assertThat(joint.shear()).isCloseTo(1.5 * 3 / 0.2, within(ROUNDING));
        assertThat(joint.moment()).isEqualTo(3);
        assertThat(JointTube.of(0, 0, 0.006, 0.2)).isEqualTo(new JointTube(0, 0, 0));
    }
}
