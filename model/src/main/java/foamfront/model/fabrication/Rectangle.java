package foamfront.model.fabrication;

import java.util.List;

/**
 * A plain rectangle of board: floor, former, doubler, mount, strip.
 *
 * @param length along the grain, m
 * @param width m
 */
public record Rectangle(double length, double width) implements Pattern {
    @Override
    public double area() {
        return length * width;
    }

    @Override
    public double cut() {
        return 2 * (length + width);
    }

    @Override
    public Outline outline() {
        return Outline.rectangle(length, width);
    }

    @Override
    public List<PatternLine> lines() {
        return outline().cuts();
    }
}
