package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The load factor and the pressure of 14 CFR 25.527 and 25.533, in their own units. */
class WaterLandingTest {
    private static final double DEGREE = Math.PI / 180;
    private static final double KNOT = 0.514444; // m/s
    private static final double POUND = 0.45359237; // kg
    private static final double ROUNDING = 1e-9;

    @Test
    void theFactorIsTheRulesInKnotsAndPounds() {
        double factor = WaterLanding.factor(8 * POUND, 20 * KNOT, 45 * DEGREE);

        assertThat(factor).isCloseTo(0.012 * 400 / 2, within(ROUNDING));
    }

    @Test
    void theFactorNeverFallsBelowTheRulesLeast() {
        assertThat(WaterLanding.factor(3, 4, 30 * DEGREE)).isEqualTo(2.33);
    }

    @Test
    void pressureGrowsWithTheSquareOfSpeedAndFallsWithDeadrise() {
        double slow = WaterLanding.pressure(6, 15 * DEGREE);

        assertThat(WaterLanding.pressure(12, 15 * DEGREE)).isCloseTo(4 * slow, within(1e-6));
        assertThat(WaterLanding.pressure(6, 25 * DEGREE)).isLessThan(slow);
        assertThat(WaterLanding.pressure(6, 0)).isEqualTo(WaterLanding.pressure(6, 10 * DEGREE));
    }
}
