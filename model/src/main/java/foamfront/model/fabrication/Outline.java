package foamfront.model.fabrication;

import java.util.ArrayList;
import java.util.List;

/** A closed polygon on the board, counter-clockwise or clockwise, x along the grain and y across, m. */
public final class Outline {
    private final double[] x;
    private final double[] y;

    /** Takes over both arrays; package code hands in fresh ones. */
    Outline(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    /** With one corner at the origin. */
    static Outline rectangle(double length, double width) {
        return new Outline(new double[] {0, length, length, 0}, new double[] {0, 0, width, width});
    }

    public int size() {
        return x.length;
    }

    public double x(int corner) {
        return x[corner];
    }

    public double y(int corner) {
        return y[corner];
    }

    /** Enclosed area by the shoelace formula, m². */
    public double area() {
        double sum = 0;
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            sum += x[j] * y[i] - x[i] * y[j];
        }
        return 0.5 * Math.abs(sum);
    }

    public double perimeter() {
        double sum = 0;
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            sum += distance(x[j], y[j], x[i], y[i]);
        }
        return sum;
    }

    /** Least x, m. */
    public double left() {
        return min(x);
    }

    /** Least y, m. */
    public double low() {
        return min(y);
    }

    /** Extent along the grain, m. */
    public double length() {
        return max(x) - min(x);
    }

    /** Extent across the grain, m. */
    public double width() {
        return max(y) - min(y);
    }

    /**
     * Width of this piece and a second one turned by 180° pushed against its upper side, ends level. With U(x) the upper
     * edge and x′ the mirrored place, the pair is as wide as the largest U(x) + U(x′) over the lower edge; both are straight
     * between corners, so corners suffice. Derived; two trapezia with one side along the grain need c₁ + c₂.
     */
    public double pairWidth() {
        double low = min(y);
        double ends = min(x) + max(x);
        double widest = 0;
        for (double at : x) {
            widest = Math.max(widest, upper(at) + upper(ends - at) - 2 * low);
        }
        return widest;
    }

    /** Highest point of the polygon at a place along the grain. */
    double upper(double at) {
        double best = -Double.MAX_VALUE;
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            double from = Math.min(x[i], x[j]);
            double to = Math.max(x[i], x[j]);
            if (at >= from - ROUND && at <= to + ROUND) {
                double high = to - from < ROUND
                        ? Math.max(y[i], y[j])
                        : y[j] + (y[i] - y[j]) * Math.min(1, Math.max(0, (at - x[j]) / (x[i] - x[j])));
                best = Math.max(best, high);
            }
        }
        return best;
    }

    /** The outline as cut lines. */
    List<PatternLine> cuts() {
        List<PatternLine> lines = new ArrayList<>(x.length + 8);
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            lines.add(new PatternLine(PatternLine.Kind.CUT, x[j], y[j], x[i], y[i]));
        }
        return lines;
    }

    /** Corners closer along the grain than this stand over one another, m; far below any knife. */
    private static final double ROUND = 1e-12;

    static double distance(double x1, double y1, double x2, double y2) {
        double dx = x2 - x1;
        double dy = y2 - y1;
        return Math.sqrt(dx * dx + dy * dy);
    }

    private static double min(double[] a) {
        double low = a[0];
        for (double v : a) {
            low = Math.min(low, v);
        }
        return low;
    }

    private static double max(double[] a) {
        double high = a[0];
        for (double v : a) {
            high = Math.max(high, v);
        }
        return high;
    }
}
