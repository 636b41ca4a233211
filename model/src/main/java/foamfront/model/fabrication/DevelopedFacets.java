package foamfront.model.fabrication;

import static foamfront.model.fabrication.PatternLine.Kind.SCORE;

import java.util.ArrayList;
import java.util.List;

/**
 * The facets of a straight piece of a folded wing, rolled out side by side on the board. Each joins corresponding corners of two
 * similar sections, so it is a plane trapezium, and the trapezia are laid along their common edges (derived; exact for an
 * untwisted piece). Between bottom and top lies the band of {@link Folding#doubledAllowance} for the nose.
 *
 * <p>Where the wing turns up at a joint the ends are mitred: each facet is cut in the plane that halves the angle ({@link Mitre}).
 */
final class DevelopedFacets {
    private final FoldedSection section;
    /** The section's corner where the first edge runs. */
    private final int first;

    private final double rootChord;
    private final double tipChord;
    private final double shift;
    private final double breadth;
    private final Mitre mitre;
    // Edge k runs from (rootX, rootY) to (tipX, tipY) on the board.
    private final double[] rootX;
    private final double[] rootY;
    private final double[] tipX;
    private final double[] tipY;

    /**
     * @param section ended as the piece's is
     * @param first the section's corner where the first edge runs
     * @param end the corner after the last edge
     * @param nose the edge before the nose's band, −1 where there is none
     * @param shift how far the tip's leading edge lies behind the root's, m
     * @param breadth along the span, m
     */
    DevelopedFacets(
            FoldedSection section,
            int first,
            int end,
            int nose,
            double rootChord,
            double tipChord,
            double shift,
            double breadth,
            double thickness,
            Mitre mitre) {
        this.section = section;
        this.first = first;
        this.rootChord = rootChord;
        this.tipChord = tipChord;
        this.shift = shift;
        this.breadth = breadth;
        this.mitre = mitre;
        int n = end - first;
        rootX = new double[n];
        rootY = new double[n];
        tipX = new double[n];
        tipY = new double[n];
        develop(nose, Folding.doubledAllowance(thickness));
        trim();
    }

    /** Lays facet after facet beside the last edge, the first edge along the grain. */
    private void develop(int nose, double band) {
        tipX[0] = edgeLength(first);
        for (int k = 1; k < rootX.length; k++) {
            int corner = first + k;
            double edge = edgeLength(corner - 1);
            double ex = (tipX[k - 1] - rootX[k - 1]) / edge;
            double ey = (tipY[k - 1] - rootY[k - 1]) / edge;
            double dx = section.x(corner) - section.x(corner - 1);
            double dz = section.z(corner) - section.z(corner - 1);
            double along;
            double across;
            double ratio;
            if (k - 1 == nose) {
                along = 0;
                across = band;
                ratio = 1;
            } else {
                // Component of the root edge along the last edge, which leans aft by `lean` and up by `rise`.
                double taper = tipChord - rootChord;
                double lean = shift + section.x(corner - 1) * taper;
                double rise = section.z(corner - 1) * taper;
                along = rootChord * (dx * lean + dz * rise) / edge;
                double size = rootChord * Math.sqrt(dx * dx + dz * dz);
                across = Math.sqrt(Math.max(0, size * size - along * along));
                ratio = tipChord / rootChord;
            }
            double stepX = along * ex - across * ey;
            double stepY = along * ey + across * ex;
            rootX[k] = rootX[k - 1] + stepX;
            rootY[k] = rootY[k - 1] + stepY;
            tipX[k] = tipX[k - 1] + ratio * stepX;
            tipY[k] = tipY[k - 1] + ratio * stepY;
        }
    }

    /** Ends of edges are taken back, or run on, by their height over the chord line times the slant of the joint. */
    private void trim() {
        double root = StrictMath.tan(mitre.root()) / breadth;
        double tip = StrictMath.tan(mitre.tip()) / breadth;
        if (root == 0 && tip == 0) {
            return;
        }
        for (int k = 0; k < rootX.length; k++) {
            double dx = tipX[k] - rootX[k];
            double dy = tipY[k] - rootY[k];
            double inner = section.z(first + k) * rootChord * root;
            double outer = section.z(first + k) * tipChord * tip;
            rootX[k] += inner * dx;
            rootY[k] += inner * dy;
            tipX[k] -= outer * dx;
            tipY[k] -= outer * dy;
        }
    }

    /** True length in space of the edge through a section corner. */
    private double edgeLength(int corner) {
        double taper = tipChord - rootChord;
        double dx = shift + section.x(corner) * taper;
        double dz = section.z(corner) * taper;
        return Math.sqrt(breadth * breadth + dx * dx + dz * dz);
    }

    /** As its ends are cut. */
    Mitre mitre() {
        return mitre;
    }

    /** True length of the leading edge, m. */
    double leadingEdge() {
        return Outline.distance(0, 0, breadth, shift);
    }

    /** Whether the tip is not the root moved straight out. */
    boolean tapered() {
        return Math.abs(rootChord - tipChord) > 0.01 * rootChord || Math.abs(shift) > 0.01 * rootChord;
    }

    /** Between the skins at the trailing edge, rad. */
    double trailingAngle() {
        int end = section.corners() - 1;
        double bottom = StrictMath.atan2(section.z(1) - section.z(0), section.x(0) - section.x(1));
        double top = StrictMath.atan2(section.z(end - 1) - section.z(end), section.x(end) - section.x(end - 1));
        return top - bottom;
    }

    int edges() {
        return rootX.length;
    }

    double rootX(int edge) {
        return rootX[edge];
    }

    double rootY(int edge) {
        return rootY[edge];
    }

    double tipX(int edge) {
        return tipX[edge];
    }

    double tipY(int edge) {
        return tipY[edge];
    }

    /** Extent along the grain, of the whole as laid, m. */
    double length() {
        return extent(rootX, tipX);
    }

    /** Extent across the grain, m. */
    double width() {
        return extent(rootY, tipY);
    }

    private static double extent(double[] roots, double[] tips) {
        double low = roots[0];
        double high = roots[0];
        for (int k = 0; k < roots.length; k++) {
            low = Math.min(low, Math.min(roots[k], tips[k]));
            high = Math.max(high, Math.max(roots[k], tips[k]));
        }
        return high - low;
    }

    /** Length of an edge as cut, m. */
    double edge(int k) {
        return Outline.distance(rootX[k], rootY[k], tipX[k], tipY[k]);
    }

    /** Chord fraction covered by the facet above edge k. */
    double covered(int k) {
        int corner = first + k;
        return Math.abs(section.x(corner + 1) - section.x(corner));
    }

    /** Where on the board a point of the facet above edge k lies, as fractions along the span and up the facet. */
    double x(int k, double station, double up) {
        double low = rootX[k] + station * (tipX[k] - rootX[k]);
        double high = rootX[k + 1] + station * (tipX[k + 1] - rootX[k + 1]);
        return low + up * (high - low);
    }

    double y(int k, double station, double up) {
        double low = rootY[k] + station * (tipY[k] - rootY[k]);
        double high = rootY[k + 1] + station * (tipY[k + 1] - rootY[k + 1]);
        return low + up * (high - low);
    }

    /** Length of a line across facet k. */
    double run(int k, double s1, double u1, double s2, double u2) {
        return Outline.distance(x(k, s1, u1), y(k, s1, u1), x(k, s2, u2), y(k, s2, u2));
    }

    PatternLine line(PatternLine.Kind kind, int k, double s1, double u1, double s2, double u2) {
        return new PatternLine(kind, x(k, s1, u1), y(k, s1, u1), x(k, s2, u2), y(k, s2, u2));
    }

    /** An edge along the span, as it lies on the board. */
    PatternLine line(PatternLine.Kind kind, int edge) {
        return new PatternLine(kind, rootX[edge], rootY[edge], tipX[edge], tipY[edge]);
    }

    /** All edges along the span. */
    List<PatternLine> lines() {
        List<PatternLine> lines = new ArrayList<>(rootX.length);
        for (int k = 0; k < rootX.length; k++) {
            lines.add(line(SCORE, k));
        }
        return lines;
    }
}
