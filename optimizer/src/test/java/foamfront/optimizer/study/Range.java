package foamfront.optimizer.study;

import java.util.Locale;

/** Least and greatest, of what was added or as stated. */
final class Range {
    private double low;
    private double high;

    Range(double low, double high) {
        this.low = low;
        this.high = high;
    }

    static Range none() {
        return new Range(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
    }

    void add(double value) {
        if (!Double.isNaN(value)) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
    }

    double low() {
        return low;
    }

    double high() {
        return high;
    }

    boolean isEmpty() {
        return low > high;
    }

    /** In {@code steps} equal ones, from 0. */
    double at(int step, int steps) {
        return low + (high - low) * step / steps;
    }

    boolean holds(double value) {
        return low <= value && value <= high;
    }

    boolean meets(Range other) {
        return low <= other.high && high >= other.low;
    }

    String words(String format) {
        if (isEmpty()) {
            return "-";
        }
        String least = String.format(Locale.ROOT, format, low);
        String most = String.format(Locale.ROOT, format, high);
        return least.equals(most) ? least : least + " to " + most;
    }
}
