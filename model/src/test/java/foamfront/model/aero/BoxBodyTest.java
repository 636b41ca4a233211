package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoxBodyTest {
    private static final double ROUNDING = 1e-12;

    /** Half the last printed digit. */
    private static final double HALF_DIGIT = 5e-4;

    private static final double VISCOSITY = 1.46e-5; // m²/s
    private static final double SPEED = 12; // m/s
    private static final double FRONTAL = 0.07 * 0.08;

    @ParameterizedTest(name = "forebody {0}")
    @CsvSource({"0.05, 0.130", "0.10, 0.092", "0.20, 0.065"})
    void baseDragFollowsTheForebody(double fore, double base) {
        assertThat(BoxBody.baseCoefficient(fore)).isCloseTo(base, within(HALF_DIGIT));
    }

    @Test
    void aRoundedNoseIsForebodyFrictionAndBase() {
        double friction = SkinFriction.turbulent(SPEED * 0.9 / VISCOSITY) * 0.3 * 0.9;
        double ahead = 0.1 * FRONTAL + friction;
        double base = 0.002 * 0.029 / Math.sqrt(ahead / 0.002);

        assertThat(body(0.9, 0.0105, 0.002).dragArea(SPEED, VISCOSITY)).isCloseTo(ahead + base, within(ROUNDING));
    }

    @Test
    void aSharpNoseIsABluntCylinderAndThereforeTheCeiling() {
        double sharp = body(0.25, 0, FRONTAL).dragArea(SPEED, VISCOSITY);
        assertThat(sharp / FRONTAL).isBetween(0.81, 0.83); // three diameters: 0.82, Kritzinger

        double before = sharp;
        for (double radius = 0.002; radius < 0.02; radius += 0.002) {
            double now = body(0.25, radius, FRONTAL).dragArea(SPEED, VISCOSITY);
            assertThat(now).isPositive().isLessThanOrEqualTo(before);
            before = now;
        }
        assertThat(before).isLessThan(0.6 * sharp);
    }

    @Test
    void dragAreaFallsWithSpeedAndGrowsWithTheBase() {
        for (double speed = 4; speed < 40; speed += 2) {
            assertThat(body(0.9, 0.01, 0.002).dragArea(speed + 2, VISCOSITY))
                    .isLessThan(body(0.9, 0.01, 0.002).dragArea(speed, VISCOSITY));
        }
        assertThat(body(0.9, 0.01, FRONTAL).dragArea(SPEED, VISCOSITY))
                .isGreaterThan(body(0.9, 0.01, 0).dragArea(SPEED, VISCOSITY));
    }

    @Test
    void aTrainersBodyStaysFiniteAtAbsurdSizes() {
        for (double length : new double[] {0.01, 0.1, 10}) {
            assertThat(new BoxBody(length, 0.01, 1, 0.5, 0.01).dragArea(0.5, VISCOSITY))
                    .isPositive()
                    .isFinite();
        }
    }

    private static BoxBody body(double length, double noseRadius, double baseArea) {
        return new BoxBody(length, 0.07, 0.08, noseRadius, baseArea);
    }
}
