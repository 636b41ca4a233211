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
    public double pairWidth() {
        return 2 * width;
    }

    @Override
    public double area() {
        return length * width;
    }

    @Override
    public double cut() {
        return 2 * (length + width);
    }

    @Override
    public double scored() {
        return 0;
    }

    @Override
    public double bevelled() {
        return 0;
    }

    @Override
    public double folded() {
        return 0;
    }

    @Override
    public double taped() {
        return 0;
    }

    @Override
    public int folds() {
        return 0;
    }

    @Override
    public Outline outline() {
        return new Outline(new double[] {0, length, length, 0}, new double[] {0, 0, width, width});
    }

    @Override
    public List<PatternLine> lines() {
        return outline().cuts();
    }
}
