package foamfront.optimizer.pictures;

import foamfront.model.units.Numbers;

/**
 * One axis of a plot: from and to round numbers, a few steps between.
 *
 * @param words what it shows, with its unit
 * @param low a multiple of the step
 * @param step between marks
 * @param steps how many
 */
public record Axis(String words, double low, double step, int steps) {
    private static final int MOST_STEPS = 8;

    /** Steps of one, two or five of a decade. */
    private static final double[] ROUND = {1, 2, 5};

    /** That holds all values between two. */
    public static Axis holding(String words, double least, double greatest) {
        double span = greatest > least ? greatest - least : 1;
        double decade = StrictMath.pow(10, Math.floor(StrictMath.log10(span / MOST_STEPS)));
        double step = 10 * decade;
        for (double round : ROUND) {
            if (round * decade * MOST_STEPS >= span) {
                step = round * decade;
                break;
            }
        }
        double low = Math.floor(least / step + ROUNDING) * step;
        int steps = (int) Math.max(1, Math.ceil((greatest - low) / step - ROUNDING));
        return new Axis(words, low, step, steps);
    }

    /** A value that is a mark but for its last bits is one. */
    private static final double ROUNDING = 1e-9;

    /** Where a value lies, 0 to 1. */
    public double share(double value) {
        return (value - low) / (steps * step);
    }

    /** A mark's figure, without a rest of rounding. */
    public String mark(int i) {
        double value = (Math.rint(low / step) + i) * step;
        int decimals = (int) Math.max(0, -Math.floor(StrictMath.log10(step) + ROUNDING));
        return Numbers.fixed(value + 0.0, decimals);
    }
}
