package foamfront.model.fabrication;

import static foamfront.model.fabrication.PatternLine.Kind.BEVEL;
import static foamfront.model.fabrication.PatternLine.Kind.CUT;
import static foamfront.model.fabrication.PatternLine.Kind.FOLD;
import static foamfront.model.fabrication.PatternLine.Kind.TAPE;

import foamfront.model.section.SectionShape;
import java.util.ArrayList;
import java.util.List;

/**
 * A whole delta in one piece, span along the grain, nose up, with the fins that are folded up at its tips. Fins hang on their
 * lower paper over a V of 90° cut from above, each wall 45° or one thickness off the fold, so that lengths on the lower paper are
 * outside lengths (derived: a bevelled fold of bend θ opens 2 t tan θ/2). Elevons hang as on any {@link Plate}.
 *
 * @param rootChord m
 * @param tipChord m
 * @param shift of the tip's leading edge aft of the root's, m
 * @param breadth from the middle to the fold, m
 * @param finHeight of each fin over the lower paper, m; 0 without folded fins
 * @param finRoot chord of a fin at the fold, m, at most the tip's
 * @param finTip chord at its top, m; its trailing edge runs on straight from the tip's
 * @param thickness of the board, m
 * @param hinges elevons of a half, on fractions of {@code breadth}
 */
public record DeltaSheet(
        double rootChord,
        double tipChord,
        double shift,
        double breadth,
        double finHeight,
        double finRoot,
        double finTip,
        double thickness,
        List<Hinge> hinges)
        implements Spanned {
    /** Edges shorter than this are no edge, m. */
    private static final double NO_EDGE = 1e-9;

    public DeltaSheet {
        hinges = List.copyOf(hinges);
    }

    @Override
    public double length() {
        return 2 * (breadth + finHeight);
    }

    @Override
    public double width() {
        return Math.max(rootChord, shift + tipChord) - Math.min(0, shift);
    }

    /** Free ahead of wing and fin within the piece's rectangle, from {@code out} off the middle outwards, m. */
    double clearAhead(double out) {
        double wing = shift * Math.min(1, out / breadth) - Math.min(0, shift);
        double fin = shift + tipChord - Math.max(finRoot, finTip) - Math.min(0, shift);
        return Math.max(0, finHeight > 0 && out < breadth + finHeight ? Math.min(wing, fin) : wing);
    }

    /** Free behind them, m. */
    double clearBehind(double out) {
        double sweep = shift + tipChord - rootChord;
        return sweep < 0 ? -sweep * Math.min(1, out / breadth) : 0;
    }

    /** Both halves of the wing, m². */
    double wingArea() {
        return (rootChord + tipChord) * breadth;
    }

    /** Both fins, m². */
    double finArea() {
        return (finRoot + finTip) * finHeight;
    }

    @Override
    public double area() {
        return wingArea() + finArea();
    }

    /** Leading edges of wing and fins, m. */
    double leadingEdges() {
        double fins = finHeight > 0 ? Outline.distance(0, 0, finHeight, finRoot - finTip) : 0;
        return 2 * (slope(0) + fins);
    }

    private double slope(double fraction) {
        return Outline.distance(0, fraction * rootChord, breadth, shift + fraction * tipChord);
    }

    @Override
    public double sparLine() {
        return 2 * slope(SectionShape.SPAR_STATION);
    }

    @Override
    public List<PatternLine> sparLines() {
        double f = SectionShape.SPAR_STATION;
        return List.of(across(CUT, 1, 0, f, 1, f), across(CUT, -1, 0, f, 1, f));
    }

    @Override
    public double seatAhead(double width) {
        return 0;
    }

    private double chord(double station) {
        return rootChord + station * (tipChord - rootChord);
    }

    @Override
    public double cut() {
        double slits = 0;
        for (Hinge hinge : hinges) {
            slits += hinge.slitAtStart() ? hinge.chordFraction() * chord(hinge.from()) : 0;
            slits += hinge.slitAtEnd() ? hinge.chordFraction() * chord(hinge.to()) : 0;
        }
        return outline().perimeter() + 2 * slits;
    }

    @Override
    public double bevelled() {
        return 2 * folded();
    }

    @Override
    public double folded() {
        double sum = finHeight > 0 ? finRoot : 0;
        for (Hinge hinge : hinges) {
            sum += slope(1 - hinge.chordFraction()) * (hinge.to() - hinge.from());
        }
        return 2 * sum;
    }

    @Override
    public double taped() {
        return folded();
    }

    @Override
    public int folds() {
        return 2 * (hinges.size() + (finHeight > 0 ? 1 : 0));
    }

    @Override
    public int bevels() {
        return 2 * folds();
    }

    @Override
    public Outline outline() {
        List<double[]> half = new ArrayList<>(6);
        half.add(new double[] {breadth, shift});
        if (finHeight > 0) {
            if (tipChord - finRoot > NO_EDGE) {
                half.add(new double[] {breadth, shift + tipChord - finRoot});
            }
            half.add(new double[] {breadth + finHeight, shift + tipChord - finTip});
            half.add(new double[] {breadth + finHeight, shift + tipChord});
        }
        half.add(new double[] {breadth, shift + tipChord});
        int n = half.size();
        double[] x = new double[2 * n + 2];
        double[] y = new double[2 * n + 2];
        put(x, y, 0, 0, 0);
        put(x, y, n + 1, 0, rootChord);
        for (int i = 0; i < n; i++) {
            put(x, y, i + 1, half.get(i)[0], half.get(i)[1]);
            put(x, y, 2 * n + 1 - i, -half.get(i)[0], half.get(i)[1]);
        }
        return new Outline(x, y);
    }

    private void put(double[] x, double[] y, int i, double out, double aft) {
        x[i] = x(out);
        y[i] = y(aft);
    }

    private double x(double out) {
        return out + breadth + finHeight;
    }

    private double y(double aft) {
        return Math.max(rootChord, shift + tipChord) - aft;
    }

    @Override
    public List<PatternLine> lines() {
        List<PatternLine> lines = outline().cuts();
        for (int side = 1; side >= -1; side -= 2) {
            if (finHeight > 0) {
                PatternLine fold = new PatternLine(
                        FOLD, x(side * breadth), y(shift + tipChord - finRoot), x(side * breadth), y(shift + tipChord));
                lines.add(fold);
                lines.add(new PatternLine(TAPE, fold.x1(), fold.y1(), fold.x2(), fold.y2()));
                HingeGroove.add(lines, fold, thickness, -thickness, BEVEL);
            }
            for (Hinge hinge : hinges) {
                elevon(lines, side, hinge);
            }
        }
        return lines;
    }

    private void elevon(List<PatternLine> lines, int side, Hinge hinge) {
        double f = 1 - hinge.chordFraction();
        PatternLine fold = across(FOLD, side, hinge.from(), f, hinge.to(), f);
        lines.add(fold);
        lines.add(across(TAPE, side, hinge.from(), f, hinge.to(), f));
        HingeGroove.add(lines, fold, thickness, BEVEL);
        if (hinge.slitAtStart()) {
            lines.add(across(CUT, side, hinge.from(), f, hinge.from(), 1));
        }
        if (hinge.slitAtEnd()) {
            lines.add(across(CUT, side, hinge.to(), f, hinge.to(), 1));
        }
    }

    private PatternLine across(PatternLine.Kind kind, int side, double s1, double f1, double s2, double f2) {
        return new PatternLine(
                kind,
                x(side * s1 * breadth),
                y(s1 * shift + f1 * chord(s1)),
                x(side * s2 * breadth),
                y(s2 * shift + f2 * chord(s2)));
    }
}
