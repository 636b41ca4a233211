package foamfront.model.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Ends, middle and slopes of the cubic step. */
class SmoothStepTest {
    private static final double ROUNDING = 1e-15;

    @Test
    void itRunsFromNothingToAllAndStaysThere() {
        assertThat(SmoothStep.at(-2)).isZero();
        assertThat(SmoothStep.at(0.5)).isCloseTo(0.5, within(ROUNDING));
        assertThat(SmoothStep.at(0.25)).isCloseTo(5.0 / 32, within(ROUNDING));
        assertThat(SmoothStep.at(7)).isEqualTo(1);
    }

    /** Δ² and no less: 3 t² is what is left of a step near its end. */
    @Test
    void itIsLevelAtBothEnds() {
        double near = 1e-4;
        assertThat(SmoothStep.at(near)).isLessThan(3 * near * near);
        assertThat(1 - SmoothStep.at(1 - near)).isLessThan(3 * near * near);
    }
}
