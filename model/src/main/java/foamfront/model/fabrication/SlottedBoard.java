package foamfront.model.fabrication;

import java.util.List;

/**
 * An upright board with a slot that a wing passes through. Its area is that of its outline: what falls out of the slot is not
 * taken off.
 *
 * @param length along the grain, m
 * @param width m
 * @param from where the slot begins, m
 * @param slot its length, m; 0 for none
 * @param low its lower edge, m from the board's
 * @param thickness of the wing, m
 */
public record SlottedBoard(double length, double width, double from, double slot, double low, double thickness)
        implements Pattern {
    @Override
    public double area() {
        return length * width;
    }

    @Override
    public double cut() {
        return 2 * (length + width) + (slot > 0 ? 2 * (slot + thickness) : 0);
    }

    @Override
    public Outline outline() {
        return Outline.rectangle(length, width);
    }

    @Override
    public List<PatternLine> lines() {
        List<PatternLine> lines = outline().cuts();
        if (slot > 0) {
            double to = from + slot;
            double high = low + thickness;
            lines.add(new PatternLine(PatternLine.Kind.CUT, from, low, to, low));
            lines.add(new PatternLine(PatternLine.Kind.CUT, to, low, to, high));
            lines.add(new PatternLine(PatternLine.Kind.CUT, to, high, from, high));
            lines.add(new PatternLine(PatternLine.Kind.CUT, from, high, from, low));
        }
        return lines;
    }
}
