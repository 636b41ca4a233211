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
 * A trapezium of one board thickness: half of a flat surface, or, when {@code whole}, both halves in one piece. Controls hang on
 * their outer paper over a V relieved for 30° (derived) with tape along the hinge. Scores run along the leading edge at equal
 * parts of the chord, for a plate bent to an arc.
 *
 * <p>A half lies with its trailing edge along the grain, a whole with its span along the grain.
 *
 * @param rootChord m
 * @param tipChord m
 * @param shift of the tip's leading edge aft of the root's, m
 * @param breadth from root to tip, m
 * @param whole whether the other half hangs on at the root
 * @param thickness of the board, m
 * @param scores number of score lines a half
 * @param hinges controls of a half
 */
public record Plate(
        double rootChord,
        double tipChord,
        double shift,
        double breadth,
        boolean whole,
        double thickness,
        int scores,
        List<Hinge> hinges)
        implements Spanned {
    public Plate {
        hinges = List.copyOf(hinges);
    }

    /** A plain trapezium. */
    static Plate of(double rootChord, double tipChord, double breadth, double thickness) {
        return new Plate(rootChord, tipChord, 0, breadth, false, thickness, 0, List.of());
    }

    /** Length of the leading edge, both halves' of a whole, m. */
    public double leadingEdge() {
        return halves() * slope(0);
    }

    private double trailingEdge() {
        return slope(1);
    }

    /** Length from root to tip along a line of constant chord fraction. */
    private double slope(double fraction) {
        return Outline.distance(0, fraction * rootChord, breadth, shift + fraction * tipChord);
    }

    @Override
    public double sparLine() {
        return halves() * slope(SectionShape.SPAR_STATION);
    }

    @Override
    public List<PatternLine> sparLines() {
        List<PatternLine> lines = new ArrayList<>(2);
        for (int side = 1; side >= (whole ? -1 : 1); side -= 2) {
            lines.add(new Frame(side).line(CUT, 0, SectionShape.SPAR_STATION, 1, SectionShape.SPAR_STATION));
        }
        return lines;
    }

    @Override
    public double seatAhead(double width) {
        return 0;
    }

    private double chord(double station) {
        return rootChord + station * (tipChord - rootChord);
    }

    private int halves() {
        return whole ? 2 : 1;
    }

    @Override
    public double length() {
        if (whole) {
            return 2 * breadth;
        }
        double edge = trailingEdge();
        double lean = (shift + tipChord - rootChord) / edge;
        return Math.max(edge, edge - tipChord * lean) - Math.min(0, -rootChord * lean);
    }

    @Override
    public double width() {
        if (whole) {
            return Math.max(rootChord, shift + tipChord) - Math.min(0, shift);
        }
        return Math.max(rootChord, tipChord) * breadth / trailingEdge();
    }

    @Override
    public double pairWidth() {
        if (whole || Math.abs(rootChord - tipChord) < NO_TAPER * rootChord) {
            return 2 * width();
        }
        return Math.min(2 * width(), outline().pairWidth());
    }

    /** Below this relative difference of chords turning one round gains less than a pencil line. */
    private static final double NO_TAPER = 0.01;

    @Override
    public double area() {
        return halves() * 0.5 * (rootChord + tipChord) * breadth;
    }

    @Override
    public double cut() {
        double around = halves() * (slope(0) + trailingEdge() + tipChord) + (whole ? 0 : rootChord);
        double slits = 0;
        for (int i = 0; i < hinges.size(); i++) {
            Hinge hinge = hinges.get(i);
            slits += hinge.slitAtStart() ? hinge.chordFraction() * chord(hinge.from()) : 0;
            slits += hinge.slitAtEnd() ? hinge.chordFraction() * chord(hinge.to()) : 0;
        }
        return around + halves() * slits + parting() * rootChord;
    }

    /**
     * A hinge turns about one straight line: where its halves meet at an angle in the middle of a whole, the control is parted
     * there. Chord fraction of the parting cut, 0 without one.
     */
    private double parting() {
        double parted = 0;
        for (int i = 0; i < hinges.size() && whole; i++) {
            Hinge hinge = hinges.get(i);
            double kink = shift + (1 - hinge.chordFraction()) * (tipChord - rootChord);
            parted = !hinge.slitAtStart() && Math.abs(kink) > NO_KINK * breadth ? hinge.chordFraction() : parted;
        }
        return parted;
    }

    /** A hinge line that leans by less is straight enough to turn. */
    private static final double NO_KINK = 1e-3;

    @Override
    public double scored() {
        double sum = 0;
        for (int i = 1; i <= scores; i++) {
            sum += slope((double) i / (scores + 1));
        }
        return halves() * sum;
    }

    @Override
    public double bevelled() {
        return 2 * folded();
    }

    @Override
    public double folded() {
        double sum = 0;
        for (int i = 0; i < hinges.size(); i++) {
            Hinge hinge = hinges.get(i);
            sum += slope(1 - hinge.chordFraction()) * (hinge.to() - hinge.from());
        }
        return halves() * sum;
    }

    @Override
    public double taped() {
        return folded();
    }

    @Override
    public int folds() {
        return halves() * (hinges.size() + scores);
    }

    @Override
    public int bevels() {
        return 2 * halves() * hinges.size();
    }

    @Override
    public Outline outline() {
        Frame f = new Frame(1);
        if (!whole) {
            return new Outline(
                    new double[] {f.x(0, 1), f.x(1, 1), f.x(1, 0), f.x(0, 0)},
                    new double[] {f.y(0, 1), f.y(1, 1), f.y(1, 0), f.y(0, 0)});
        }
        Frame m = new Frame(-1);
        return new Outline(
                new double[] {f.x(0, 1), f.x(1, 1), f.x(1, 0), f.x(0, 0), m.x(1, 0), m.x(1, 1)},
                new double[] {f.y(0, 1), f.y(1, 1), f.y(1, 0), f.y(0, 0), m.y(1, 0), m.y(1, 1)});
    }

    @Override
    public List<PatternLine> lines() {
        List<PatternLine> lines = outline().cuts();
        for (int side = 1; side >= (whole ? -1 : 1); side -= 2) {
            Frame frame = new Frame(side);
            for (int i = 1; i <= scores; i++) {
                double f = (double) i / (scores + 1);
                lines.add(frame.line(SCORE, 0, f, 1, f));
            }
            for (Hinge hinge : hinges) {
                addHinge(lines, frame, hinge);
            }
        }
        double parted = parting();
        if (parted > 0) {
            lines.add(new Frame(1).line(CUT, 0, 1 - parted, 0, 1));
        }
        return lines;
    }

    private void addHinge(List<PatternLine> lines, Frame frame, Hinge hinge) {
        double f = 1 - hinge.chordFraction();
        PatternLine fold = frame.line(FOLD, hinge.from(), f, hinge.to(), f);
        lines.add(fold);
        lines.add(frame.line(TAPE, hinge.from(), f, hinge.to(), f));
        HingeGroove.add(lines, fold, thickness, BEVEL);
        if (hinge.slitAtStart()) {
            lines.add(frame.line(CUT, hinge.from(), f, hinge.from(), 1));
        }
        if (hinge.slitAtEnd()) {
            lines.add(frame.line(CUT, hinge.to(), f, hinge.to(), 1));
        }
    }

    /** From station and chord fraction to the board. */
    private final class Frame {
        private final int side;
        private final double ux;
        private final double uy;
        private final double low;

        Frame(int side) {
            this.side = side;
            double edge = trailingEdge();
            ux = whole ? 1 : breadth / edge;
            uy = whole ? 0 : (shift + tipChord - rootChord) / edge;
            low = whole ? Math.max(rootChord, shift + tipChord) : rootChord;
        }

        private double aft(double station, double fraction) {
            return station * shift + fraction * chord(station);
        }

        double x(double station, double fraction) {
            double s = side * station * breadth;
            return s * ux + (aft(station, fraction) - rootChord) * uy + (whole ? breadth : 0);
        }

        double y(double station, double fraction) {
            double s = side * station * breadth;
            return s * uy - (aft(station, fraction) - low) * ux;
        }

        PatternLine line(PatternLine.Kind kind, double s1, double f1, double s2, double f2) {
            return new PatternLine(kind, x(s1, f1), y(s1, f1), x(s2, f2), y(s2, f2));
        }
    }
}
