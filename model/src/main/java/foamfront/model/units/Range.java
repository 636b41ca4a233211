package foamfront.model.units;

/**
 * A closed range in SI; an open end is infinite, a single figure has both ends alike.
 *
 * @param low least, or −∞
 * @param high greatest, or +∞
 */
public record Range(double low, double high) {
    public Range {
        if (!(low <= high)) {
            throw new IllegalArgumentException(low + " to " + high + " is an empty range");
        }
    }

    public boolean contains(double value) {
        return value >= low && value <= high;
    }

    /** Whether it names one figure only. */
    public boolean single() {
        return low == high;
    }

    /** As a study file would say it, in {@code unit}. */
    public String print(Unit unit) {
        if (single()) {
            return Quantities.print(low, unit);
        }
        if (low == Double.NEGATIVE_INFINITY) {
            return "at most " + Quantities.print(high, unit);
        }
        if (high == Double.POSITIVE_INFINITY) {
            return "at least " + Quantities.print(low, unit);
        }
        return Quantities.print(low, unit) + " to " + Quantities.print(high, unit);
    }
}
