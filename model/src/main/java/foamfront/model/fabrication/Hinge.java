package foamfront.model.fabrication;

/**
 * A control cut along part of a piece.
 *
 * @param chordFraction of the local chord behind the hinge
 * @param from its inner end, fraction of the piece's breadth
 * @param to its outer end, fraction of the piece's breadth
 */
public record Hinge(double chordFraction, double from, double to) {
    /** Nearer to an end of the piece than this the control runs out over it. */
    static final double END = 1e-9;

    /** A free end inside the piece needs a slit. */
    boolean slitAtStart() {
        return from > END;
    }

    boolean slitAtEnd() {
        return to < 1 - END;
    }
}
