package foamfront.optimizer.front;

import foamfront.model.mission.Measure;
import foamfront.model.units.Numbers;
import foamfront.model.units.Unit;
import foamfront.optimizer.study.ShowIn;

/** The units people read, with the digits that mean something. */
public enum Show {
    METRIC,
    INCHES;

    public static Show of(ShowIn wanted) {
        return wanted == ShowIn.INCHES ? INCHES : METRIC;
    }

    /** Unit in which people read a measure. */
    public Unit unit(Measure measure) {
        return unit(measure.unit());
    }

    /** What people read in place of a table's unit. */
    public Unit unit(Unit table) {
        if (this == METRIC) {
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
        String symbol = unit.symbol();
        return number(si, unit) + (symbol.isEmpty() || !Double.isFinite(si) ? "" : " " + symbol);
    }

    /** Head of a column: the words, and the unit in brackets. */
    public String head(Measure measure) {
        return head(measure.words(), unit(measure));
    }

    static String head(String words, Unit unit) {
        return unit.symbol().isEmpty() ? words : words + " [" + unit.symbol() + "]";
    }

    /** The SI value in exactly this unit; a dash for none. */
    public String number(double si, Unit unit) {
        return Double.isFinite(si) ? digits(unit.fromSi(si) + 0.0, unit) : "-";
    }

    /** Small ratios keep two digits that mean something. */
    private static String digits(double value, Unit unit) {
        boolean small = unit == Unit.RATIO && Math.abs(value) < 0.1 && value != 0;
        return Numbers.fixed(value, small ? 3 : decimals(unit));
    }

    private static int decimals(Unit unit) {
        return switch (unit) {
            case GRAM, MILLIMETRE, COUNT, WATT_PER_KILOGRAM, GRAM_PER_SQUARE_DECIMETRE -> 0;
            case KILOMETRE, USD, RATIO, INCH, VOLT -> 2;
            default -> 1;
        };
    }
}
