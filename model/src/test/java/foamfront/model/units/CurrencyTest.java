package foamfront.model.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes and minor units: ISO 4217, list one (from memory). */
class CurrencyTest {
    private static final Currency EUR = new Currency("EUR");

    @ParameterizedTest
    @CsvSource({"USD, 12.35", "EUR, 12.35", "JPY, 12", "KWD, 12.346", "HUF, 12.35"})
    void anAmountHasTheDecimalsOfItsCurrency(String code, String shown) {
        assertThat(new Currency(code).amount(12.3456)).isEqualTo(shown + " " + code);
    }

    @ParameterizedTest
    @CsvSource({"eur, EUR", "' GBP ', GBP", "jpy, JPY"})
    void capitalsAndSpacesDoNotMatterWhereMoneyBelongs(String text, String code) {
        assertThat(Currency.of(text)).isEqualTo(new Currency(code));
    }

    @ParameterizedTest
    @CsvSource({
        "EURO, Do you mean EUR?",
        "EUX, Do you mean EUR?",
        "QQQ, such as USD",
        "XAU, ISO 4217",
        "XXX, ISO 4217",
        "$, USD",
        "dollars, AUD",
        "€, Write EUR.",
        "£, does not say whose money it is",
        "¥, does not say whose money it is",
        "YEN, Do you mean JPY?",
        "CHA, Do you mean CHF?",
        "'', ISO 4217"
    })
    void whatNamesNoneOrSeveralIsRefusedWithARemedy(String text, String part) {
        assertThatThrownBy(() -> Currency.of(text))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining(part);
    }

    /** Gold is no money; of codes with DE and IT there were only the mark and the lira, which are withdrawn. */
    @ParameterizedTest
    @ValueSource(strings = {"XAU", "XAG", "XQX", "DEX", "ITX", "QQQ", "DEMARK"})
    void nothingIsSuggestedWhereNotOneLivingCodeFits(String text) {
        assertThatThrownBy(() -> Currency.of(text))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining("is no currency code of ISO 4217. Write three letters");
    }

    @Test
    void onlyCodesMakeACurrency() {
        assertThatThrownBy(() -> new Currency("eur")).hasMessageContaining("'eur' is no currency code of ISO 4217");
        assertThatThrownBy(() -> new Currency("EURO")).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({
        "80 USD, is in USD where prices are in EUR, there are no exchange rates here",
        "80 $, does not say whose money it is, write the code of yours",
        "$80, does not say whose money it is, write the code of yours",
        "80 dollars, does not say whose money it is, write the code of yours",
        "80 €, has the euro's sign where its code belongs, Write EUR.",
        "80, has no unit, EUR",
        "80 g, is a mass where a price belongs, Use EUR.",
        "80 EURO, is no currency code, Do you mean EUR?",
        "cheap, is not a quantity, Write it like 80 EUR."
    })
    void anotherMoneyIsRefused(String text, String problem, String advice) {
        assertThatThrownBy(() -> Quantities.parse(text, EUR))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining(problem)
                .hasMessageContaining(advice);
    }

    @Test
    void bothEndsOfARangeAreInOneCurrency() {
        assertThat(Quantities.range("40 to 80 EUR", EUR)).isEqualTo(new Range(40, 80));
        assertThat(Quantities.range("at most 80 eur", EUR).high()).isEqualTo(80);
        assertThatThrownBy(() -> Quantities.range("40 USD to 80 EUR", EUR)).hasMessageContaining("is in USD");
        assertThatThrownBy(() -> Quantities.range("80 to 40 EUR", EUR)).hasMessageContaining("40 EUR to 80 EUR");
    }

    @ParameterizedTest
    @CsvSource({"80 CHF", "80 $"})
    void moneyIsKnownWhereALengthBelongs(String text) {
        assertThatThrownBy(() -> Quantities.parse(text, Dimension.LENGTH))
                .hasMessageContaining("'" + text + "' is a price where a length belongs");
    }

    @Test
    void aCellTakesTheCurrencyOfItsHeader() {
        assertThat(Quantities.parseUnder("7.50", EUR)).isEqualTo(7.5);
        assertThat(Quantities.parseUnder("7.50 EUR", EUR)).isEqualTo(7.5);
        assertThatThrownBy(() -> Quantities.parseUnder("7.50 USD", EUR)).hasMessageContaining("is in USD");
    }

    @Test
    void moneyIsNotReadWithoutItsCurrency() {
        assertThatThrownBy(() -> Quantities.parse("80 EUR", Dimension.MONEY))
                .isInstanceOf(IllegalArgumentException.class)
                .isNotInstanceOf(QuantityException.class);
    }
}
