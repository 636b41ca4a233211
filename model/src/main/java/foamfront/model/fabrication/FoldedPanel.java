package foamfront.model.fabrication;

import static foamfront.model.fabrication.PatternLine.Kind.BEVEL;
import static foamfront.model.fabrication.PatternLine.Kind.CUT;
import static foamfront.model.fabrication.PatternLine.Kind.FOLD;
import static foamfront.model.fabrication.PatternLine.Kind.SCORE;
import static foamfront.model.fabrication.PatternLine.Kind.TAPE;

import foamfront.model.section.SectionShape;
import java.util.List;

/**
 * A straight-edged piece of a folded wing laid flat: the pattern over its {@link DevelopedFacets}. Facet bends are scored, the
 * nose is two bevelled folds, the top is bevelled to the trailing edge ({@link TrailingBevel}). Controls are cut in the last top facet; the bottom ends
 * at their hinge.
 *
 * <p>The trailing edge is one board high on the mean chord, so that sections stay similar; on a panel of taper 0.6 its ends are
 * then a quarter of a board off, which changes no length by 0.3 mm.
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

    private final Skins skins;
    private final double thickness;
    private final List<Hinge> hinges;
    private final DevelopedFacets facets;
    /** Index of the edge at the nose of the bottom, −1 in a top skin. */
    private final int nose;
    /** Index of the last edge: the trailing edge of a top. */
    private final int last;

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
        this(
                section,
                skins,
                facets(section, skins, rootChord, tipChord, shift, breadth, thickness, mitre),
                thickness,
                hinges);
    }

    /** Over facets that are developed already. */
    FoldedPanel(FoldedSection section, Skins skins, DevelopedFacets facets, double thickness, List<Hinge> hinges) {
        this.skins = skins;
        this.facets = facets;
        this.thickness = thickness;
        this.hinges = hinges;
        nose = nose(section, skins);
        last = facets.edges() - 1;
        outline = trace();
        length = outline.length();
        width = outline.width();
        area = outline.area();
    }

    private static int nose(FoldedSection section, Skins skins) {
        return skins == Skins.TOP ? -1 : section.bottomCorners() - 1;
    }

    /** The facets of such a piece. */
    static DevelopedFacets facets(
            FoldedSection section,
            Skins skins,
            double rootChord,
            double tipChord,
            double shift,
            double breadth,
            double thickness,
            Mitre mitre) {
        return new DevelopedFacets(
                section.ending(2 * thickness / (rootChord + tipChord)),
                skins == Skins.TOP ? section.bottomCorners() : 0,
                skins == Skins.BOTTOM ? section.bottomCorners() : section.corners(),
                nose(section, skins),
                rootChord,
                tipChord,
                shift,
                breadth,
                thickness,
                mitre);
    }

    /** Round the edges: along the first edge, up the tip, back along the last, down the root; notched for the controls. */
    private Outline trace() {
        int n = last + 1;
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
            x[at] = facets.rootX(0);
            y[at++] = facets.rootY(0);
        }
        for (int i = 0; i < notches; i++) {
            Hinge hinge = hinges.get(i);
            double up = hinge.chordFraction() / facets.covered(0);
            double[] stations = {hinge.from(), hinge.from(), hinge.to(), hinge.to()};
            double[] heights = {0, up, up, 0};
            int from = hinge.slitAtStart() ? 0 : 1;
            int to = hinge.slitAtEnd() ? 4 : 3;
            for (int j = from; j < to; j++) {
                x[at] = facets.x(0, stations[j], heights[j]);
                y[at++] = facets.y(0, stations[j], heights[j]);
            }
        }
        for (int k = tipGone ? 1 : 0; k < n; k++) {
            x[at] = facets.tipX(k);
            y[at++] = facets.tipY(k);
        }
        for (int k = n - 1; k > 0; k--) {
            x[at] = facets.rootX(k);
            y[at++] = facets.rootY(k);
        }
        return new Outline(x, y);
    }

    /** A control's hinge on the last top facet. */
    private PatternLine hingeLine(PatternLine.Kind kind, Hinge hinge) {
        double up = hingeHeight(hinge);
        return facets.line(kind, last - 1, hinge.from(), up, hinge.to(), up);
    }

    /** Where a hinge lies between the edges of the last top facet. */
    private double hingeHeight(Hinge hinge) {
        return 1 - hinge.chordFraction() / facets.covered(last - 1);
    }

    @Override
    public double sparLine() {
        return skins == Skins.TOP ? 0 : facets.run(0, 0, seatHeight(), 1, seatHeight());
    }

    @Override
    public List<PatternLine> sparLines() {
        return skins == Skins.TOP ? List.of() : List.of(seat());
    }

    /** The spar's station on the bottom, where its web stands. */
    private PatternLine seat() {
        return facets.line(CUT, 0, 0, seatHeight(), 1, seatHeight());
    }

    private double seatHeight() {
        return (1 - SectionShape.SPAR_STATION) / facets.covered(0);
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
        for (int i = 0; i < hinges.size(); i++) {
            Hinge hinge = hinges.get(i);
            double up = hingeHeight(hinge);
            if (hinge.slitAtStart()) {
                sum += facets.run(last - 1, hinge.from(), up, hinge.from(), 1);
            }
            if (hinge.slitAtEnd()) {
                sum += facets.run(last - 1, hinge.to(), up, hinge.to(), 1);
            }
        }
        return sum;
    }

    /** Every edge along the span, as it lies on the board. */
    List<PatternLine> edges() {
        return facets.lines();
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
            sum += facets.run(last - 1, hinge.from(), up, hinge.to(), up);
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
        return facets.tapered() ? Math.min(2 * width, outline.pairWidth()) : 2 * width;
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
        for (int k = 1; k < last; k++) {
            sum += atNose(k) ? 0 : facets.edge(k);
        }
        return sum;
    }

    @Override
    public double bevelled() {
        return 2 * folded() + (skins == Skins.BOTTOM ? 0 : trailingBevel().length());
    }

    private TrailingBevel trailingBevel() {
        return new TrailingBevel(facets, hinges, thickness);
    }

    @Override
    public double folded() {
        return (skins == Skins.BOTH ? facets.edge(nose) + facets.edge(nose + 1) : 0) + hingeLength();
    }

    @Override
    public double taped() {
        return hingeLength();
    }

    @Override
    public int folds() {
        return last - 1 + (skins == Skins.BOTTOM ? 0 : hinges.size());
    }

    /** True length of the leading edge, m. */
    public double leadingEdge() {
        return facets.leadingEdge();
    }

    @Override
    public int bevels() {
        return (skins == Skins.BOTH ? 4 : 0)
                + (skins == Skins.BOTTOM ? 0 : trailingBevel().count() + 2 * hinges.size());
    }

    @Override
    public Outline outline() {
        return outline;
    }

    @Override
    public List<PatternLine> lines() {
        List<PatternLine> lines = outline.cuts();
        for (int k = 1; k < last; k++) {
            PatternLine fold = facets.line(atNose(k) ? FOLD : SCORE, k);
            lines.add(fold);
            if (atNose(k)) {
                HingeGroove.add(lines, fold, thickness, -thickness, BEVEL);
            }
        }
        if (skins == Skins.BOTTOM) {
            return lines;
        }
        trailingBevel().add(lines);
        for (Hinge hinge : hinges) {
            PatternLine fold = hingeLine(FOLD, hinge);
            lines.add(fold);
            lines.add(hingeLine(TAPE, hinge));
            HingeGroove.add(lines, fold, thickness, BEVEL);
            double up = hingeHeight(hinge);
            if (hinge.slitAtStart()) {
                lines.add(facets.line(CUT, last - 1, hinge.from(), up, hinge.from(), 1));
            }
            if (hinge.slitAtEnd()) {
                lines.add(facets.line(CUT, last - 1, hinge.to(), up, hinge.to(), 1));
            }
        }
        return lines;
    }
}
