package foamfront.model.fabrication;

/**
 * A straight line on a flat pattern.
 *
 * @param kind what is done along it
 * @param x1 along the grain, m
 * @param y1 across, m
 * @param x2 m
 * @param y2 m
 */
public record PatternLine(Kind kind, double x1, double y1, double x2, double y2) {
    /** What is done along a line. */
    public enum Kind {
        /** Through both papers. */
        CUT,
        /** Through one paper and the foam, then bent. */
        SCORE,
        /** Through one paper and half of the foam, which is picked out as far as the next such line. */
        GROOVE,
        /** Slanted cut that leaves the far paper. */
        BEVEL,
        /** The paper hinge of a bevelled fold or control. */
        FOLD,
        /** Tape laid along it. */
        TAPE
    }

    public double length() {
        double dx = x2 - x1;
        double dy = y2 - y1;
        return Math.sqrt(dx * dx + dy * dy);
    }
}
