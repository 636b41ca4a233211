package foamfront.model.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumbersTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "1, 1",
        "1200, 1200",
        "0.1, 0.1",
        "1234567890, 1234567890",
        "1234567891.5, 1234567890",
        "0.333333333333, 0.333333333",
        "1e-7, 0.0000001",
        "1.25e-8, 1.25e-8",
        "-3e20, -3e20",
        "NaN, NaN",
        "-Infinity, -Infinity",
    })
    void filesGetNineSignificantDigits(double value, String text) {
        assertThat(Numbers.exact(value)).isEqualTo(text);
    }

    /** The exact binary values of these lie on a tie. */
    @Test
    void tiesGoToTheEvenDigit() {
        assertThat(Numbers.fixed(0.125, 2)).isEqualTo("0.12");
        assertThat(Numbers.fixed(0.375, 2)).isEqualTo("0.38");
        assertThat(Numbers.fixed(2.5, 0)).isEqualTo("2");
        assertThat(Numbers.significant(1.5, 1)).isEqualTo("2");
        assertThat(Numbers.significant(2.5, 1)).isEqualTo("2");
    }

    @Test
    void peopleGetAllTheDecimalsTheyAskFor() {
        assertThat(Numbers.fixed(3, 1)).isEqualTo("3.0");
        assertThat(Numbers.fixed(1e6, 0)).isEqualTo("1000000");
    }
}
