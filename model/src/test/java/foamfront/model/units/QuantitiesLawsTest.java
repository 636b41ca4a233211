package foamfront.model.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantitiesLawsTest {
    private static final int CASES = 2000;
    private static final List<Dimension> DIMENSIONS = List.of(Dimension.values());

    /** Half a unit of the ninth significant digit. */
    private static final double NINE_DIGITS = 5e-9;

    @ParameterizedTest
    @EnumSource(value = Unit.class, mode = EnumSource.Mode.EXCLUDE, names = "MONEY")
    void whatIsPrintedReadsBackToNineDigits(Unit unit) {
        Random random = new Random(unit.symbol().hashCode());
        for (int i = 0; i < CASES; i++) {
            double value = (random.nextDouble() - 0.3) * StrictMath.pow(10, random.nextInt(9) - 3);
            double si = unit.toSi(value);
            String text = Quantities.print(si, unit);
            double back = Quantities.parse(text, unit.dimension());
            assertThat(unit.fromSi(back))
                    .as(text)
                    .isCloseTo(unit.fromSi(si), within(NINE_DIGITS * Math.abs(value) + 1e-12));
            assertThat(Quantities.print(back, unit)).isEqualTo(text);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"USD", "EUR", "JPY", "KWD"})
    void moneyReadsBackInItsOwnCurrencyAlone(String code) {
        Currency currency = new Currency(code);
        Random random = new Random(code.hashCode());
        for (int i = 0; i < CASES; i++) {
            double amount = (random.nextDouble() - 0.3) * StrictMath.pow(10, random.nextInt(9) - 3);
            String text = Quantities.print(amount, Unit.MONEY, currency);
            assertThat(text).endsWith(" " + code);
            assertThat(Quantities.parse(text, currency)).isCloseTo(amount, within(NINE_DIGITS * Math.abs(amount)));
            assertThatThrownBy(() -> Quantities.parse(text, new Currency("CHF")))
                    .isInstanceOf(QuantityException.class)
                    .hasMessageContaining("is in " + code + " where prices are in CHF");
        }
    }

    /** Whole millimetres and grams survive a file bit for bit. */
    @ParameterizedTest
    @CsvSource({"MILLIMETRE, 1000", "GRAM, 1000"})
    void snappedFiguresReadBackExactly(Unit unit, double parts) {
        for (int i = 1; i < 30_000; i++) {
            double si = i / parts;
            assertThat(Quantities.parse(Quantities.print(si, unit), unit.dimension()))
                    .isEqualTo(si);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG", "hi-IN-u-nu-deva"})
    void digitsDoNotDependOnTheCountry(String tag) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(Quantities.print(1.2345, Unit.METRE)).isEqualTo("1.2345 m");
            assertThat(Quantities.print(1.2345, Unit.METRE, 2)).isEqualTo("1.23 m");
            assertThat(Quantities.parse("1.2345 M", Dimension.LENGTH)).isEqualTo(1.2345);
            assertThat(Quantities.parse("3 IN", Dimension.LENGTH)).isEqualTo(Unit.INCH.toSi(3));
            assertThat(Quantities.range("AT MOST 3 KM/H", Dimension.SPEED).high())
                    .isEqualTo(Unit.KILOMETRE_PER_HOUR.toSi(3));
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void anyTextIsReadOrRefusedInOneWay(long seed) {
        Random random = new Random(seed);
        String alphabet = "0123456789.,-+/ eEmincft%xto°\"'_µ\u0660\u2212ag";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(14); n >= 0; n--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            Dimension dimension = DIMENSIONS.get(random.nextInt(DIMENSIONS.size()));
            try {
                Range range = dimension == Dimension.MONEY
                        ? Quantities.range(text.toString(), new Currency("EUR"))
                        : Quantities.range(text.toString(), dimension);
                assertThat(range.low()).isNotNaN();
            } catch (QuantityException e) {
                assertThat(e.problem()).isNotBlank();
                assertThat(e.advice()).endsWith(".");
            }
        }
    }
}
