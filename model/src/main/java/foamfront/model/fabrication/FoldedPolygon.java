package foamfront.model.fabrication;

import java.util.ArrayList;
import java.util.List;

/** A polygon of board with straight lines on it: a panel of a hull or float. Its lengths are sums over its lines. */
public final class FoldedPolygon implements Pattern {
    private final Outline outline;
    private final List<PatternLine> inner;
    private final double area;

    /** Takes over both arrays, the corners in order, and every line but the outline's cuts. */
    FoldedPolygon(double[] x, double[] y, List<PatternLine> inner) {
        outline = new Outline(x, y);
        this.inner = List.copyOf(inner);
        area = outline.area();
    }

    @Override
    public double length() {
        return outline.length();
    }

    @Override
    public double width() {
        return outline.width();
    }

    @Override
    public double pairWidth() {
        return Math.min(2 * outline.width(), outline.pairWidth());
    }

    @Override
    public double area() {
        return area;
    }

    @Override
    public double cut() {
        return outline.perimeter() + sum(PatternLine.Kind.CUT);
    }

    @Override
    public double scored() {
        return sum(PatternLine.Kind.SCORE);
    }

    @Override
    public double bevelled() {
        return sum(PatternLine.Kind.BEVEL);
    }

    @Override
    public double folded() {
        return sum(PatternLine.Kind.FOLD);
    }

    @Override
    public double taped() {
        return sum(PatternLine.Kind.TAPE);
    }

    private double sum(PatternLine.Kind kind) {
        double sum = 0;
        for (int i = 0; i < inner.size(); i++) {
            PatternLine line = inner.get(i);
            sum += line.kind() == kind ? line.length() : 0;
        }
        return sum;
    }

    @Override
    public int folds() {
        return count(PatternLine.Kind.FOLD) + count(PatternLine.Kind.SCORE);
    }

    @Override
    public int bevels() {
        return count(PatternLine.Kind.BEVEL);
    }

    private int count(PatternLine.Kind kind) {
        int count = 0;
        for (int i = 0; i < inner.size(); i++) {
            count += inner.get(i).kind() == kind ? 1 : 0;
        }
        return count;
    }

    @Override
    public Outline outline() {
        return outline;
    }

    @Override
    public List<PatternLine> lines() {
        List<PatternLine> lines = new ArrayList<>(outline.cuts());
        lines.addAll(inner);
        return lines;
    }
}
