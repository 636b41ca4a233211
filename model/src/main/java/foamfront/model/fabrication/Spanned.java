package foamfront.model.fabrication;

import java.util.List;

/** A piece of wing, which a spar may run along. */
public sealed interface Spanned extends Pattern permits Plate, DeltaSheet, FoldedPanel {
    /** Length of the line at the spar's station, both halves' of a whole; 0 on a top skin, m. */
    double sparLine();

    /** The middle of the spar's seat on each half. */
    List<PatternLine> sparLines();

    /** How far ahead of that line the seat's middle lies, m: a folded wing's spar lies against its web. */
    double seatAhead(double width);
}
