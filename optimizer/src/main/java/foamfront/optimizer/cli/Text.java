package foamfront.optimizer.cli;

/** Text on its way to a terminal. */
final class Text {
    private static final int WIDTH = 10;
    private static final double EXACT = 1e-9;

    private Text() {}

    /** Without anything that could steer a terminal. */
    static String plain(String text) {
        return text.replaceAll("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]", "?");
    }

    /** Room to spare as a bar and words; a full bar is half of the limit or more. */
    static String room(double margin) {
        if (margin < -EXACT) {
            return "x".repeat(bar(-margin)) + " misses by " + percent(-margin);
        }
        if (margin < EXACT) {
            return ".".repeat(WIDTH) + " met exactly";
        }
        return "#".repeat(bar(margin)) + ".".repeat(WIDTH - bar(margin)) + " " + percent(margin) + " to spare";
    }

    private static int bar(double margin) {
        double share = Math.min(1, 2 * margin);
        return margin > 0 ? (int) Math.max(1, Math.rint(share * WIDTH)) : 0;
    }

    private static String percent(double share) {
        double percent = 100 * share;
        return percent >= 1000 ? "much" : foamfront.model.units.Numbers.fixed(percent, percent < 10 ? 1 : 0) + " %";
    }
}
