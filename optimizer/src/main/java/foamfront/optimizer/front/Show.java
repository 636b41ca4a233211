package foamfront.optimizer.front;

import foamfront.model.mission.Measure;
import foamfront.model.units.Currency;
import foamfront.model.units.Numbers;
import foamfront.model.units.Unit;
import foamfront.optimizer.study.ShowIn;
import foamfront.optimizer.study.Study;

/**
 * The units people read, with the digits that mean something.
 *
 * @param currency of every amount
 */
public record Show(ShowIn wanted, Currency currency) {
    /** As the study wants it. */
    public static Show of(Study study) {
        return new Show(study.showIn(), study.currency());
    }

    public boolean metric() {
        return wanted == ShowIn.METRIC;
    }

    /** Unit in which people read a measure. */
    public Unit unit(Measure measure) {
        return unit(measure.unit());
    }

    /** What people read in place of a table's unit. */
    public Unit unit(Unit table) {
        if (metric()) {
            return table;
        }
        return switch (table) {
            case MILLIMETRE -> Unit.INCH;
            case METRE -> Unit.FOOT;
            case GRAM -> Unit.OUNCE;
            case METRE_PER_SECOND -> Unit.MILE_PER_HOUR;
            case GRAM_PER_SQUARE_DECIMETRE -> Unit.OUNCE_PER_SQUARE_FOOT;
            default -> table;
        };
    }

    /** The SI value in people's unit, without the unit; a dash for what a design cannot have. */
    public String number(Measure measure, double si) {
        return number(si, unit(measure));
    }

    /** The SI value in people's unit, with the unit. */
    public String quantity(Measure measure, double si) {
        return quantity(si, measure.unit());
    }

    /** The SI value in what stands for {@code table}, with its unit. */
    public String quantity(double si, Unit table) {
        Unit unit = unit(table);
        String symbol = unit.symbol(currency);
        return number(si, unit) + (symbol.isEmpty() || !Double.isFinite(si) ? "" : " " + symbol);
    }

    /** Head of a column: the words, and the unit in brackets. */
    public String head(Measure measure) {
        return head(measure.words(), unit(measure), currency);
    }

    static String head(String words, Unit unit) {
        return head(words, unit.symbol());
    }

    /** The same, of money with the code of its currency. */
    static String head(String words, Unit unit, Currency currency) {
        return head(words, unit.symbol(currency));
    }

    private static String head(String words, String symbol) {
        return symbol.isEmpty() ? words : words + " [" + symbol + "]";
    }

    /** The SI value in exactly this unit; a dash for none. */
    public String number(double si, Unit unit) {
        return Double.isFinite(si) ? digits(unit.fromSi(si) + 0.0, unit) : "-";
    }

    /** Small figures keep two digits that mean something. */
    private String digits(double value, Unit unit) {
        double size = Math.abs(value);
        boolean small = size > 0 && ((unit == Unit.RATIO && size < 0.1) || (unit == Unit.MILLIMETRE && size < 1));
        return Numbers.fixed(value, small ? decimals(unit) + 1 : decimals(unit));
    }

    private int decimals(Unit unit) {
        return switch (unit) {
            case GRAM, MILLIMETRE, COUNT, WATT_PER_KILOGRAM, GRAM_PER_SQUARE_DECIMETRE -> 0;
            case MONEY -> currency.decimals();
            case KILOMETRE, RATIO, INCH, VOLT -> 2;
            default -> 1;
        };
    }
}
