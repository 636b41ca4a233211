package foamfront.model.mission;

/**
 * A limit on one measure, in SI.
 *
 * @param measure what is limited
 * @param low least allowed, or −∞
 * @param high greatest allowed, or +∞
 * @param reason where the figure comes from, for the report
 */
public record Bound(Measure measure, double low, double high, String reason) {
    /** A value computed from its own limit may miss it by this much and still meets it. */
    private static final double ROUNDING = 1e-9;

    public Bound {
        if (!(low <= high)) {
            throw new IllegalArgumentException(measure.words() + ": " + low + " to " + high + " is an empty range");
        }
        if (low == Double.NEGATIVE_INFINITY && high == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(measure.words() + ": a bound needs a figure");
        }
    }

    public static Bound atLeast(Measure measure, double low, String reason) {
        return new Bound(measure, low, Double.POSITIVE_INFINITY, reason);
    }

    public static Bound atMost(Measure measure, double high, String reason) {
        return new Bound(measure, Double.NEGATIVE_INFINITY, high, reason);
    }

    /**
     * Room to spare over the limit's own size: positive is good. Of two ends the nearer counts; a limit of zero is scaled
     * by {@link #scale}.
     */
    public double margin(double value) {
        double below = low == Double.NEGATIVE_INFINITY ? Double.POSITIVE_INFINITY : (value - low) / scale(low);
        double above = high == Double.POSITIVE_INFINITY ? Double.POSITIVE_INFINITY : (high - value) / scale(high);
        double least = Math.min(below, above);
        return Math.abs(least) < ROUNDING ? 0 : least;
    }

    /** Graded violation, 0 where the limit holds; a value that is no number counts as wholly missed. */
    public double violation(double value) {
        double margin = margin(value);
        return margin >= 0 ? 0 : margin < 0 ? -margin : 1;
    }

    /** A limit of zero has no size of its own; its measure's unit serves: 5 mm, 5 degrees, 1 of the rest. */
    private double scale(double limit) {
        if (limit != 0) {
            return Math.abs(limit);
        }
        return switch (measure.unit()) {
            case MILLIMETRE -> 5e-3;
            case DEGREE -> 5 * Math.PI / 180;
            default -> 1;
        };
    }
}
