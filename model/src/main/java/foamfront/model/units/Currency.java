package foamfront.model.units;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What money is counted in, by its code of ISO 4217 as {@link java.util.Currency} knows it. Amounts are plain numbers of it
 * throughout; there are no exchange rates.
 *
 * @param code three capital letters
 */
public record Currency(String code) {
    public Currency {
        if (!known(code)) {
            throw new IllegalArgumentException("'" + code + "' is no currency code of ISO 4217");
        }
    }

    /** The currency that people wrote, whatever its capitals; what names none, or several, is refused. */
    public static Currency of(String text) {
        String upper = text.strip().toUpperCase(Locale.ROOT);
        if (known(upper)) {
            return new Currency(upper);
        }
        if (text.codePoints().anyMatch(c -> c == '€') && !signed(text.replace("€", ""))) {
            throw new QuantityException(
                    Quantities.quote(text) + " has the euro's sign where its code belongs", "Write EUR.");
        }
        if (signed(text) || upper.startsWith("DOLLAR")) {
            throw new QuantityException(
                    Quantities.quote(text) + " does not say whose money it is",
                    text.codePoints().anyMatch(c -> c == '$') || upper.startsWith("DOLLAR")
                            ? "'$' stands for many currencies: write the code of yours, USD, AUD, CAD or another."
                            : "Write the currency's code instead, such as GBP, EGP, JPY or CNY.");
        }
        String near = near(upper);
        throw new QuantityException(
                Quantities.quote(text) + " is no currency code of ISO 4217",
                (near == null ? "" : "Do you mean " + near + "? ")
                        + "Write three letters, such as USD, EUR, GBP or JPY.");
    }

    /** Whether these capitals are the code of money that can be counted: not of gold, not of testing. */
    static boolean known(String code) {
        if (code.length() != 3 || !code.chars().allMatch(c -> c >= 'A' && c <= 'Z')) {
            return false;
        }
        try {
            return java.util.Currency.getInstance(code).getDefaultFractionDigits() >= 0;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** Whether a sign of money, as {@code $}, stands anywhere in it. */
    static boolean signed(String text) {
        return text.codePoints().anyMatch(c -> Character.getType(c) == Character.CURRENCY_SYMBOL);
    }

    /**
     * EURO means EUR; of a slip in the third letter the first two still name the country, if only one code begins so. None begins
     * with X for a country: those are shared by several, or no money.
     */
    private static @Nullable String near(String upper) {
        if (upper.equals("YEN")) {
            return "JPY";
        }
        if (upper.length() < 3 || upper.startsWith("X")) {
            return null;
        }
        String letters = upper.substring(0, upper.length() == 3 ? 2 : 3);
        List<String> fitting =
                living().filter(code -> code.startsWith(letters)).distinct().toList();
        return fitting.size() == 1 ? fitting.get(0) : null;
    }

    /** What countries pay in now; Java knows withdrawn codes and units of account besides. */
    private static Stream<String> living() {
        return Arrays.stream(Locale.getISOCountries())
                .map(country -> java.util.Currency.getInstance(new Locale("", country)))
                .filter(Objects::nonNull)
                .map(java.util.Currency::getCurrencyCode);
    }

    /** Decimals that people write: 2 of most, 0 of the yen. */
    public int decimals() {
        return java.util.Currency.getInstance(code).getDefaultFractionDigits();
    }

    /** An amount as people write it, without the code. */
    public String number(double amount) {
        return Numbers.fixed(amount, decimals());
    }

    /** An amount as people write it, with the code. */
    public String amount(double amount) {
        return number(amount) + " " + code;
    }

    @Override
    public String toString() {
        return code;
    }
}
