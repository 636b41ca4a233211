package foamfront.optimizer.genome;

import foamfront.model.units.Range;

/**
 * The values one dimension may take: a fixed one, or multiples of a step inside a range.
 *
 * @param first least value, SI
 * @param step SI; 0 for a fixed value
 * @param count how many values
 */
record Grid(double first, double step, int count) {
    /** Of a step, so that a range's end written in other units still counts as inside. */
    private static final double TOLERANCE = 1e-6;

    /** Multiples of {@code step} inside {@code range}; where there is none, or one figure was given, the figure as stated. */
    static Grid of(Range range, double step) {
        if (range.single()) {
            return new Grid(range.low(), 0, 1);
        }
        double low = Math.ceil(range.low() / step - TOLERANCE);
        double high = Math.floor(range.high() / step + TOLERANCE);
        if (high < low) {
            return new Grid(range.low(), 0, 1);
        }
        return new Grid(low * step, step, (int) (high - low) + 1);
    }

    boolean fixed() {
        return count == 1;
    }

    /** Nearest value's index to a fraction of the range. */
    int index(double fraction) {
        return (int) Math.rint(Math.min(1, Math.max(0, fraction)) * (count - 1));
    }

    /** Nearest value's index to a value. */
    int indexOf(double value) {
        double steps = fixed() ? 0 : Math.rint((value - first) / step);
        return (int) Math.min(count - 1, Math.max(0, steps));
    }

    /** The value at an index, the same number however the range was written. */
    double value(int index) {
        return fixed() ? first : (Math.rint(first / step) + index) * step;
    }

    /** The fraction that stands for an index. */
    double fraction(int index) {
        return fixed() ? 0 : (double) index / (count - 1);
    }

    /** {@code value} moved to the nearest multiple of {@code step}, at least one step. */
    static double snap(double value, double step) {
        return Math.max(1, Math.rint(value / step)) * step;
    }
}
