package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellTest {
    /** Half the last printed digit of a published discharge curve's figures (derived). */
    private static final double PRINTED = 5.1e-4;

    @ParameterizedTest(name = "s = {0}")
    @CsvSource({
        "1.0, 4.103",
        "0.9, 4.017",
        "0.8, 3.946",
        "0.7, 3.888",
        "0.6, 3.841",
        "0.5, 3.803",
        "0.4, 3.773",
        "0.3, 3.748",
        "0.2, 3.725",
        "0.1, 3.675",
        "0.05, 3.516"
    })
    void publishedCurveHasItsTabulatedValues(double s, double volts) {
        assertThat(Cell.publishedVoltage(s)).isCloseTo(volts, within(PRINTED));
    }

    @Test
    void aFullHobbyCellRestsAtItsCustomaryVoltage() {
        assertThat(Cell.openCircuitVoltage(1)).isCloseTo(4.20, within(1e-12));
        assertThat(Cell.openCircuitVoltage(0)).isEqualTo(Cell.publishedVoltage(0));
    }

    @Test
    void voltageRisesWithCharge() {
        for (int i = 0; i < 200; i++) {
            assertThat(Cell.openCircuitVoltage((i + 1) / 200.0)).isGreaterThan(Cell.openCircuitVoltage(i / 200.0));
        }
    }
}
