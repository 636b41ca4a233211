package foamfront.model.units;

import org.jspecify.annotations.Nullable;

/**
 * What kind of quantity belongs in a place.
 *
 * @param currency of money; null for all else
 */
record Wanted(Dimension dimension, @Nullable Currency currency) {
    Wanted {
        if ((dimension == Dimension.MONEY) != (currency != null)) {
            throw new IllegalArgumentException("money, and nothing else, has a currency");
        }
    }

    static Wanted of(Dimension dimension) {
        return new Wanted(dimension, null);
    }

    static Wanted money(Currency currency) {
        return new Wanted(Dimension.MONEY, currency);
    }

    /** What it is written with, for advice. */
    String symbols() {
        return currency == null ? UnitNames.symbols(dimension) : currency.code();
    }

    String example() {
        return currency == null ? Examples.of(dimension) : "80 " + currency;
    }

    String shown(Reading reading) {
        return currency == null ? reading.toString() : Quantities.print(reading.si(), reading.unit(), currency);
    }
}
