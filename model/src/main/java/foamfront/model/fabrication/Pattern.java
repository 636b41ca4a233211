package foamfront.model.fabrication;

import java.util.List;

/**
 * A flat piece of board before folding: what it measures, and, when drawings ask, every line on it. The lengths given here are
 * the sums of those lines; a piece without such lines has none to say. Lengths run along the paper's grain, widths across. All
 * in metres.
 */
public sealed interface Pattern permits Rectangle, SlottedBoard, Spanned, SparSeat, Tube, FoldedPolygon {
    /** Extent along the grain. */
    double length();

    /** Extent across the grain. */
    double width();

    /** Width of two such pieces head to tail; twice the width where turning one round gains nothing. */
    default double pairWidth() {
        return 2 * width();
    }

    /** m². */
    double area();

    /** Through cuts: outline, slits and openings. */
    double cut();

    /** Scored bends. */
    default double scored() {
        return 0;
    }

    /** Half-depth cuts beside a spar's seat. */
    default double grooved() {
        return 0;
    }

    /** Slanted cuts. */
    default double bevelled() {
        return 0;
    }

    /** Paper hinges of bevelled folds and controls. */
    default double folded() {
        return 0;
    }

    /** Tape laid on the piece's own lines. */
    default double taped() {
        return 0;
    }

    /** How many bends and hinges are made. */
    default int folds() {
        return 0;
    }

    /** How many slanted cuts are made: two walls of each bevelled fold, and edges thinned by themselves. */
    default int bevels() {
        return 0;
    }

    Outline outline();

    List<PatternLine> lines();
}
