package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The stall speed where lift rises slowly with speed, and where it breaks down at once. */
class StallPointTest {
    @Test
    void slowlyRisingLiftSettlesOnItsClosedForm() {
        // C_L = 0.2 V^0.1: V^2.1 = loading / 0.2
        double speed = StallPoint.settle(v -> 0.2 * Math.pow(v, 0.1), 20);
        assertThat(speed).isCloseTo(Math.pow(100, 1 / 2.1), within(1e-3));
    }

    @Test
    void whereLiftBreaksDownTheSpeedStandsJustAbove() {
        // steps would go to and fro between 4.7 m/s, which 0.9 would carry, and 20 m/s
        assertThat(StallPoint.settle(v -> v < 6 ? 0.05 : 0.9, 20))
                .isCloseTo(6, within(1e-4))
                .isGreaterThanOrEqualTo(6);
    }

    @Test
    void aHeavierOneNeverStallsSlower() {
        double before = 0;
        for (double loading = 5; loading < 60; loading += 0.05) {
            double speed = StallPoint.settle(v -> v < 6 ? 0.3 : 0.9, loading);
            assertThat(speed).isGreaterThanOrEqualTo(before - 1e-6);
            before = speed;
        }
    }
}
