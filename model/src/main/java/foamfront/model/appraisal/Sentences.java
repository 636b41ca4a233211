package foamfront.model.appraisal;

import foamfront.model.mass.Balance;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Measure;
import foamfront.model.units.Currency;
import foamfront.model.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** A limit and a value in words. */
final class Sentences {
    private static final MathContext THREE_DIGITS = new MathContext(3, RoundingMode.HALF_EVEN);

    private Sentences() {}

    static String of(Bound bound, double value, Currency currency) {
        Measure measure = bound.measure();
        String found = measure.words() + " is " + print(value, measure.unit(), currency);
        if (value < bound.low()) {
            return found + ", less than the " + print(bound.low(), measure.unit(), currency) + " asked: "
                    + bound.reason();
        }
        if (value > bound.high()) {
            return found + ", more than the " + print(bound.high(), measure.unit(), currency) + " allowed: "
                    + bound.reason();
        }
        return found + ", within its limit";
    }

    /** What would balance it instead of the battery; nothing where it balances. */
    static String ballast(Balance balance) {
        if (balance.missingTravel() == 0) {
            return "";
        }
        boolean nose = balance.noseBallast() > 0;
        double mass = nose ? balance.noseBallast() : balance.tailBallast();
        return "; or " + digits(Unit.GRAM.fromSi(mass)) + " " + Unit.GRAM.symbol()
                + (nose ? " at the nose" : " at the end of the body");
    }

    private static String print(double value, Unit unit, Currency currency) {
        if (!Double.isFinite(value)) {
            return "out of reach";
        }
        String symbol = unit.symbol(currency);
        return digits(unit.fromSi(value)) + (symbol.isEmpty() ? "" : " " + symbol);
    }

    private static String digits(double shown) {
        return new BigDecimal(shown).round(THREE_DIGITS).stripTrailingZeros().toPlainString();
    }
}
