package foamfront.model.fabrication;

import java.util.List;

/**
 * A flat piece of board before folding: what it measures, and, when drawings ask, every line on it. The lengths given here are
 * the sums of those lines. Lengths run along the paper's grain, widths across. All in metres.
 */
public sealed interface Pattern permits Rectangle, SlottedBoard, Plate, DeltaSheet, Tube, FoldedPanel {
    /** Extent along the grain. */
    double length();

    /** Extent across the grain. */
    double width();

    /** Width of two such pieces head to tail; twice the width where turning one round gains nothing. */
    double pairWidth();

    /** m². */
    double area();

    /** Through cuts: outline, slits and openings. */
    double cut();

    /** Scored bends. */
    double scored();

    /** Slanted cuts. */
    double bevelled();

    /** Paper hinges of bevelled folds and controls. */
    double folded();

    /** Tape laid on the piece's own lines. */
    double taped();

    /** How many bends and hinges are made. */
    int folds();

    Outline outline();

    List<PatternLine> lines();
}
