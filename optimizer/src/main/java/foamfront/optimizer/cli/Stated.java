package foamfront.optimizer.cli;

import foamfront.model.units.Dimension;
import foamfront.model.units.Quantities;
import foamfront.model.units.QuantityException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Figures and names asked of the bench's options, and what is said where one is missing, double or impossible. */
final class Stated {
    private Stated() {}

    /** A quantity above zero. */
    static double quantity(String option, String text, Dimension dimension) {
        double si = parsed(option, text, dimension);
        if (!(si > 0)) {
            throw new InputException(
                    "foamfront: " + option + " is " + Text.plain(text) + ".", "Use a figure above zero.");
        }
        return si;
    }

    /** A quantity between two, their words for the advice. */
    static double between(String option, String text, Dimension dimension, double low, double high, String words) {
        double si = parsed(option, text, dimension);
        if (!(si >= low && si <= high)) {
            throw new InputException("foamfront: " + option + " is " + Text.plain(text) + ".", "Use " + words + ".");
        }
        return si;
    }

    private static double parsed(String option, String text, Dimension dimension) {
        try {
            return Quantities.parse(text, dimension);
        } catch (QuantityException e) {
            throw new InputException("foamfront: " + option + ": " + e.problem() + ".", e.advice());
        }
    }

    /** The figure that stands for a part without a name. */
    static <T> T first(String part, String named, String option, @Nullable T value) {
        if (value == null) {
            throw new InputException(
                    "foamfront: no " + part + " is given.",
                    "Name one with " + named + ", or describe it from " + option + " on; see foamfront bench --help.");
        }
        return value;
    }

    /** A figure that must come with another. */
    static <T> T beside(String given, String option, @Nullable T value) {
        if (value == null) {
            throw new InputException(
                    "foamfront: " + option + " is missing beside " + given + ".",
                    "Give it too; see foamfront bench --help.");
        }
        return value;
    }

    /** A part of figures: its record's constructor refuses what can never be. */
    static <P> P made(Supplier<P> making) {
        try {
            return making.get();
        } catch (IllegalArgumentException e) {
            throw new InputException("foamfront: " + e.getMessage() + ".", "Correct the figure.");
        }
    }
}
