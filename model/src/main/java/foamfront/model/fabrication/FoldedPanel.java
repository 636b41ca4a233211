package foamfront.model.fabrication;

import static foamfront.model.fabrication.PatternLine.Kind.BEVEL;
import static foamfront.model.fabrication.PatternLine.Kind.CUT;
import static foamfront.model.fabrication.PatternLine.Kind.FOLD;
import static foamfront.model.fabrication.PatternLine.Kind.SCORE;
import static foamfront.model.fabrication.PatternLine.Kind.TAPE;

import foamfront.model.section.SectionShape;
import java.util.ArrayList;
import java.util.List;

/**
 * A straight-edged piece of a folded wing laid flat. Each facet joins corresponding corners of two similar sections, so it is a
 * plane trapezium, and the trapezia are laid side by side along their common edges (derived; exact for an untwisted piece).
 * Between bottom and top lies the band of {@link Folding#doubledAllowance} for the nose. Facet bends are scored, the nose is two
 * bevelled folds, one skin is bevelled to the trailing edge. Controls are cut in the last top facet; the bottom ends at their
 * hinge.
 *
 * <p>The trailing edge is one board high on the mean chord, so that sections stay similar; on a panel of taper 0.6 its ends are
 * then a quarter of a board off, which changes no length by 0.3 mm.
 *
 * <p>Where the wing turns up at a joint the ends are mitred: each facet is cut in the plane that halves the angle ({@link Mitre}).
 *
 * <p>Where the whole is wider than the sheet, bottom and top come as two pieces taped along the nose. The bottom's trailing edge
 * (or the first edge of a top skin) lies along the grain at y = 0.
 */
public final class FoldedPanel implements Spanned {
    /** Which skins a piece holds. */
    public enum Skins {
        BOTH,
        BOTTOM,
        TOP
    }

    private final FoldedSection section;
    private final Skins skins;
    private final double thickness;
    private final List<Hinge> hinges;
    private final double breadth;
    private final double shift;
    private final double rootChord;
    private final double tipChord;
    // Edge k runs from (rootX, rootY) to (tipX, tipY) on the board.
    private final double[] rootX;
    private final double[] rootY;
    private final double[] tipX;
    private final double[] tipY;
    /** Index of the edge at the nose of the bottom, −1 in a top skin. */
    private final int nose;

    private final Outline outline;
    private final double length;
    private final double width;
    private final double area;

    FoldedPanel(
            FoldedSection section,
            Skins skins,
            double rootChord,
            double tipChord,
            double shift,
            double breadth,
            double thickness,
            List<Hinge> hinges) {
        this(section, skins, rootChord, tipChord, shift, breadth, thickness, hinges, Mitre.SQUARE);
    }

    FoldedPanel(
            FoldedSection section,
            Skins skins,
            double rootChord,
            double tipChord,
            double shift,
            double breadth,
            double thickness,
            List<Hinge> hinges,
            Mitre mitre) {
        this.section = section.ending(2 * thickness / (rootChord + tipChord));
        this.skins = skins;
        this.thickness = thickness;
        this.hinges = hinges;
        this.rootChord = rootChord;
        this.tipChord = tipChord;
        this.shift = shift;
        this.breadth = breadth;
        int first = skins == Skins.TOP ? section.bottomCorners() : 0;
        int end = skins == Skins.BOTTOM ? section.bottomCorners() : section.corners();
        int n = end - first;
        rootX = new double[n];
        rootY = new double[n];
        tipX = new double[n];
        tipY = new double[n];
        nose = skins == Skins.TOP ? -1 : section.bottomCorners() - 1;
        develop(first);
        trim(first, mitre);
        outline = trace();
        length = outline.length();
        width = outline.width();
        area = outline.area();
    }

    /** Lays facet after facet beside the last edge, the first edge along the grain. */
    private void develop(int first) {
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
                across = Folding.doubledAllowance(thickness);
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
    private void trim(int first, Mitre mitre) {
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

    /** Round the edges: along the first edge, up the tip, back along the last, down the root; notched for the controls. */
    private Outline trace() {
        int n = rootX.length;
        int notches = skins == Skins.TOP ? 0 : hinges.size();
        int corners = 2 * n + 4 * notches;
        boolean rootGone = false;
        boolean tipGone = false;
        for (int i = 0; i < notches; i++) {
            Hinge hinge = hinges.get(i);
            rootGone |= !hinge.slitAtStart();
            tipGone |= !hinge.slitAtEnd();
            corners -= (hinge.slitAtStart() ? 0 : 1) + (hinge.slitAtEnd() ? 0 : 1);
        }
        corners -= (rootGone ? 1 : 0) + (tipGone ? 1 : 0);
        double[] x = new double[corners];
        double[] y = new double[corners];
        int at = 0;
        if (!rootGone) {
            x[at] = rootX[0];
            y[at++] = rootY[0];
        }
        for (int i = 0; i < notches; i++) {
            Hinge hinge = hinges.get(i);
            double up = hinge.chordFraction() / facet(0);
            double[] stations = {hinge.from(), hinge.from(), hinge.to(), hinge.to()};
            double[] heights = {0, up, up, 0};
            int from = hinge.slitAtStart() ? 0 : 1;
            int to = hinge.slitAtEnd() ? 4 : 3;
            for (int j = from; j < to; j++) {
                x[at] = px(0, stations[j], heights[j]);
                y[at++] = py(0, stations[j], heights[j]);
            }
        }
        for (int k = tipGone ? 1 : 0; k < n; k++) {
            x[at] = tipX[k];
            y[at++] = tipY[k];
        }
        for (int k = n - 1; k > 0; k--) {
            x[at] = rootX[k];
            y[at++] = rootY[k];
        }
        return new Outline(x, y);
    }

    /** Chord fraction covered by the facet above edge k. */
    private double facet(int k) {
        int corner = (skins == Skins.TOP ? section.bottomCorners() : 0) + k;
        return Math.abs(section.x(corner + 1) - section.x(corner));
    }

    private double px(int k, double station, double up) {
        double low = rootX[k] + station * (tipX[k] - rootX[k]);
        double high = rootX[k + 1] + station * (tipX[k + 1] - rootX[k + 1]);
        return low + up * (high - low);
    }

    private double py(int k, double station, double up) {
        double low = rootY[k] + station * (tipY[k] - rootY[k]);
        double high = rootY[k + 1] + station * (tipY[k + 1] - rootY[k + 1]);
        return low + up * (high - low);
    }

    private PatternLine line(PatternLine.Kind kind, int k, double s1, double u1, double s2, double u2) {
        return new PatternLine(kind, px(k, s1, u1), py(k, s1, u1), px(k, s2, u2), py(k, s2, u2));
    }

    /** A control's hinge on the last top facet. */
    private PatternLine hingeLine(PatternLine.Kind kind, Hinge hinge) {
        double up = hingeHeight(hinge);
        return line(kind, rootX.length - 2, hinge.from(), up, hinge.to(), up);
    }

    /** Where a hinge lies between the edges of the last top facet. */
    private double hingeHeight(Hinge hinge) {
        return 1 - hinge.chordFraction() / facet(rootX.length - 2);
    }

    /** Length of a line across facet k. */
    private double run(int k, double s1, double u1, double s2, double u2) {
        return Outline.distance(px(k, s1, u1), py(k, s1, u1), px(k, s2, u2), py(k, s2, u2));
    }

    @Override
    public double sparLine() {
        return skins == Skins.TOP ? 0 : run(0, 0, seatHeight(), 1, seatHeight());
    }

    @Override
    public List<PatternLine> sparLines() {
        return skins == Skins.TOP ? List.of() : List.of(seat());
    }

    /** The spar's station on the bottom, where its web stands. */
    private PatternLine seat() {
        return line(CUT, 0, 0, seatHeight(), 1, seatHeight());
    }

    private double seatHeight() {
        return (1 - SectionShape.SPAR_STATION) / facet(0);
    }

    @Override
    public double seatAhead(double width) {
        return besideWeb(thickness, width);
    }

    /** From the middle of the web to the middle of what lies against it, m. */
    static double besideWeb(double board, double width) {
        return 0.5 * (board + width);
    }

    private double slits() {
        if (skins == Skins.BOTTOM) {
            return 0;
        }
        double sum = 0;
        int last = rootX.length - 2;
        for (int i = 0; i < hinges.size(); i++) {
            Hinge hinge = hinges.get(i);
            double up = hingeHeight(hinge);
            if (hinge.slitAtStart()) {
                sum += run(last, hinge.from(), up, hinge.from(), 1);
            }
            if (hinge.slitAtEnd()) {
                sum += run(last, hinge.to(), up, hinge.to(), 1);
            }
        }
        return sum;
    }

    /** Every edge along the span, as it lies on the board. */
    List<PatternLine> edges() {
        List<PatternLine> edges = new ArrayList<>(rootX.length);
        for (int k = 0; k < rootX.length; k++) {
            edges.add(new PatternLine(SCORE, rootX[k], rootY[k], tipX[k], tipY[k]));
        }
        return edges;
    }

    private double edge(int k) {
        return Outline.distance(rootX[k], rootY[k], tipX[k], tipY[k]);
    }

    /** Whether edge k is one of the two folds of the nose. */
    private boolean atNose(int k) {
        return skins == Skins.BOTH && (k == nose || k == nose + 1);
    }

    private double hingeLength() {
        if (skins == Skins.BOTTOM) {
            return 0;
        }
        double sum = 0;
        for (int i = 0; i < hinges.size(); i++) {
            Hinge hinge = hinges.get(i);
            double up = hingeHeight(hinge);
            sum += run(rootX.length - 2, hinge.from(), up, hinge.to(), up);
        }
        return sum;
    }

    @Override
    public double length() {
        return length;
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double pairWidth() {
        boolean tapered = Math.abs(rootChord - tipChord) > 0.01 * rootChord || Math.abs(shift) > 0.01 * rootChord;
        return tapered ? Math.min(2 * width, outline.pairWidth()) : 2 * width;
    }

    @Override
    public double area() {
        return area;
    }

    @Override
    public double cut() {
        return outline.perimeter() + slits();
    }

    @Override
    public double scored() {
        double sum = 0;
        for (int k = 1; k < rootX.length - 1; k++) {
            sum += atNose(k) ? 0 : edge(k);
        }
        return sum;
    }

    @Override
    public double bevelled() {
        double trailing = skins == Skins.BOTTOM ? 0 : edge(rootX.length - 1);
        return 2 * folded() + trailing;
    }

    @Override
    public double folded() {
        return (skins == Skins.BOTH ? edge(nose) + edge(nose + 1) : 0) + hingeLength();
    }

    @Override
    public double taped() {
        return hingeLength();
    }

    @Override
    public int folds() {
        return rootX.length - 2 + (skins == Skins.BOTTOM ? 0 : hinges.size());
    }

    /** True length of the leading edge, m. */
    public double leadingEdge() {
        return Outline.distance(0, 0, breadth, shift);
    }

    @Override
    public int bevels() {
        return (skins == Skins.BOTH ? 4 : 0) + (skins == Skins.BOTTOM ? 0 : 1 + 2 * hinges.size());
    }

    @Override
    public Outline outline() {
        return outline;
    }

    @Override
    public List<PatternLine> lines() {
        List<PatternLine> lines = outline.cuts();
        for (int k = 1; k < rootX.length - 1; k++) {
            PatternLine fold = new PatternLine(atNose(k) ? FOLD : SCORE, rootX[k], rootY[k], tipX[k], tipY[k]);
            lines.add(fold);
            if (atNose(k)) {
                HingeGroove.add(lines, fold, thickness, -thickness, BEVEL);
            }
        }
        if (skins == Skins.BOTTOM) {
            return lines;
        }
        int last = rootX.length - 1;
        lines.add(new PatternLine(BEVEL, rootX[last], rootY[last], tipX[last], tipY[last]));
        for (Hinge hinge : hinges) {
            PatternLine fold = hingeLine(FOLD, hinge);
            lines.add(fold);
            lines.add(hingeLine(TAPE, hinge));
            HingeGroove.add(lines, fold, thickness, BEVEL);
            double up = hingeHeight(hinge);
            if (hinge.slitAtStart()) {
                lines.add(line(CUT, last - 1, hinge.from(), up, hinge.from(), 1));
            }
            if (hinge.slitAtEnd()) {
                lines.add(line(CUT, last - 1, hinge.to(), up, hinge.to(), 1));
            }
        }
        return lines;
    }
}
