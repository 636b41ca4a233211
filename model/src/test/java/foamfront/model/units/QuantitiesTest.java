package foamfront.model.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantitiesTest {
    /** Sums and products of a few doubles. */
    private static final double ROUNDING = 1e-15;

    @ParameterizedTest(name = "{0} is {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1.2 m | LENGTH | 1.2",
                "1200 mm | LENGTH | 1.2",
                "1200mm | LENGTH | 1.2",
                "3/16 in | LENGTH | 0.0047625",
                "1 1/2 in | LENGTH | 0.0381",
                "4 ft 6 in | LENGTH | 1.3716",
                "4 feet 6 1/2 inches | LENGTH | 1.3843",
                "-1 ft 6 in | LENGTH | -0.4572",
                "8 % | NUMBER | 0.08",
                "0.08 | NUMBER | 0.08",
                "10 min | TIME | 600",
                "1 h 30 min | TIME | 5400",
                "180 deg | ANGLE | 3.141592653589793",
                "180° | ANGLE | 3.141592653589793",
                "15 degC | TEMPERATURE | 288.15",
                "15 °C | TEMPERATURE | 288.15",
                "59 degF | TEMPERATURE | 288.15",
                "\u22122 deg | ANGLE | -0.03490658503988659",
                "2 lb 3 oz | MASS | 0.992233309375",
                "920 KV | SPEED_CONSTANT | 96.34217471",
                "0.2 N m | TORQUE | 0.2",
                "300 g/m2 | AREAL_DENSITY | 0.3",
                "1.5e1 g | MASS | 0.015",
                "4 | COUNT | 4",
            })
    void readsWhatPeopleWrite(String text, Dimension dimension, double si) {
        double tolerance = Math.max(ROUNDING, 1e-9 * Math.abs(si)); // figures of the table are rounded to ten digits
        assertThat(Quantities.parse(text, dimension)).isCloseTo(si, org.assertj.core.data.Offset.offset(tolerance));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1,2 m | LENGTH | decimal comma | 1.2 m",
                "48\" | LENGTH | inch mark | 4 ft 6 in",
                "5'6 | LENGTH | foot mark | 4 ft 6 in",
                "1.2 | LENGTH | no unit | mm",
                "1.2 kg | LENGTH | a mass where a length belongs | mm",
                "1.2 furlong | LENGTH | no unit 'furlong' | mm",
                "nan m | LENGTH | not a quantity | 1.2 m",
                "Infinity m | LENGTH | not a quantity | 1.2 m",
                "1e999 m | LENGTH | too large | measure",
                "1_000 mm | LENGTH | not a quantity | underscores",
                "3/0 in | LENGTH | divides by zero | 3/16 in",
                "6 in 4 ft | LENGTH | does not add up | 4 ft 6 in",
                "4 ft 14 in | LENGTH | does not add up | 4 ft 6 in",
                "0.9-1.3 m | LENGTH | not a quantity | 0.9 m to 1.3 m",
                "0.9 m to 1.3 m | LENGTH | range where one figure belongs | one figure",
                "at most 8 m/s | SPEED | range where one figure belongs | one figure",
                "8 % | COUNT | where a count belongs | without a unit",
            })
    void refusesTheRestWithAdvice(String text, Dimension dimension, String problem, String advice) {
        assertThatThrownBy(() -> Quantities.read(text, dimension))
                .isInstanceOfSatisfying(QuantityException.class, e -> {
                    assertThat(e.problem()).contains(problem);
                    assertThat(e.advice()).contains(advice);
                });
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "0.9 m to 1.3 m | LENGTH | 0.9 | 1.3",
                "0.9 to 1.3 m | LENGTH | 0.9 | 1.3",
                "900 mm to 1.3 m | LENGTH | 0.9 | 1.3",
                "8 % to 20 % | NUMBER | 0.08 | 0.2",
                "8 to 20 % | NUMBER | 0.08 | 0.2",
                "at most 8 m/s | SPEED | -Infinity | 8",
                "At least 2.5 m/s | SPEED | 2.5 | Infinity",
                "1.2 m | LENGTH | 1.2 | 1.2",
                "-2 deg to 0 deg | ANGLE | -0.03490658503988659 | 0",
            })
    void readsRanges(String text, Dimension dimension, double low, double high) {
        assertThat(Quantities.range(text, dimension)).isEqualTo(new Range(low, high));
    }

    @Test
    void saysWhichWayARangeShouldRun() {
        assertThatThrownBy(() -> Quantities.range("1.3 m to 0.9 m", Dimension.LENGTH))
                .hasMessageContaining("runs downwards")
                .hasMessageContaining("0.9 m to 1.3 m");
    }

    @Test
    void readsSizes() {
        assertThat(Quantities.size("80 mm x 60 mm x 150 mm", 3)).containsExactly(0.08, 0.06, 0.15);
        assertThat(Quantities.size("80 x 60 x 150 mm", 3)).containsExactly(0.08, 0.06, 0.15);
        assertThat(Quantities.size("80 mm × 60 mm", 2)).containsExactly(0.08, 0.06);
        assertThat(Quantities.size("80x60 mm", 2)).containsExactly(0.08, 0.06);
        assertThatThrownBy(() -> Quantities.size("80 mm x 60 mm", 3)).hasMessageContaining("2 sides where 3 belong");
    }
}
