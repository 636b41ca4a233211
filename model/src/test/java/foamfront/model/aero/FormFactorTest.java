package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormFactorTest {
    private static final double HALF_DIGIT = 5e-5;

    @ParameterizedTest(name = "t/c {0}")
    @CsvSource({"0.04, 1.0802", "0.10, 1.2060", "0.12, 1.2524"})
    void surfaces(double thickness, double hoerner) {
        assertThat(FormFactor.surface(thickness)).isCloseTo(hoerner, within(HALF_DIGIT));
    }

    @ParameterizedTest(name = "t/c {0}")
    @CsvSource({"0.04, 1.0803", "0.10, 1.2100", "0.12, 1.2607"})
    void surfacesThickestAtThreeTenths(double thickness, double raymer) {
        assertThat(FormFactor.surface(thickness, 0.3)).isCloseTo(raymer, within(HALF_DIGIT));
    }

    @ParameterizedTest(name = "fineness {0}")
    @CsvSource({
        "4, 1.2969",
        "5, 1.1902",
        "6, 1.1345",
        "8, 1.0800",
        "10, 1.0544",
    })
    void bodies(double fineness, double hoerner) {
        assertThat(FormFactor.body(fineness)).isCloseTo(hoerner, within(HALF_DIGIT));
    }
}
