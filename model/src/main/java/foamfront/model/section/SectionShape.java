package foamfront.model.section;

import static foamfront.model.units.Require.positive;

import foamfront.model.design.WingSection;
import foamfront.model.design.WingSection.CurvedPlate;
import foamfront.model.design.WingSection.FoldedFlatBottom;
import foamfront.model.design.WingSection.FoldedSymmetrical;
import foamfront.model.design.WingSection.SteppedPlate;

/**
 * The outline a builder gets when board of its own thickness is folded to a section: straight facets above and below the same
 * stations. Lengths are fractions of chord unless stated; x runs aft from the nose. The reference line z = 0 is the flat
 * underside of a flat-bottomed section, the plane of symmetry of a symmetrical one, the underside of a stepped plate, the
 * middle of a flat plate and the chord line of a curved one.
 *
 * <p>Folded tops bend at 7.5 % and 30 % of chord, where they stand at three quarters and all of the thickness (the worked
 * proportions 15, 18 and 60, 24 on 200 mm; <i>judgement</i>), and end one board thick, bevelled from two (<i>common
 * practice</i>). Two boards laid flat on each other are the least thickness (<i>derived</i>).
 */
public final class SectionShape {
    /** Where a folded top bends first. */
    public static final double FIRST_FOLD = 0.075;

    /** How high it stands there, of its thickness. */
    public static final double FIRST_HEIGHT = 0.75;

    /** Where it bends again over the spar, at all of its thickness. */
    public static final double SPAR_STATION = 0.30;

    /** Flat width left at the hand-rounded edge of a single board, of its thickness (<i>judgement</i>). */
    static final double ROUNDED_EDGE = 0.5;

    private static final int ARC_FACETS = 24;
    /** The flow over a rearward step closes about this many step heights behind it (<i>from memory</i>). */
    private static final double REATTACHMENT = 6;

    private final double chord;
    private final double sheetPerChord;
    private final double trailingEdgeThickness;
    private final double[] x;
    private final double[] upper;
    private final double[] lower;

    private SectionShape(
            double chord, double sheetPerChord, double trailingEdge, double[] x, double[] upper, double[] lower) {
        this.chord = chord;
        this.sheetPerChord = sheetPerChord;
        this.trailingEdgeThickness = trailingEdge;
        this.x = x;
        this.upper = upper;
        this.lower = lower;
    }

    /**
     * The outline of a section.
     *
     * @param boardThickness m
     * @param chord m
     */
    public static SectionShape of(WingSection section, double boardThickness, double chord) {
        positive("board thickness", boardThickness, "m");
        positive("chord", chord, "m");
        double board = boardThickness / chord;
        if (section instanceof FoldedFlatBottom folded) {
            return flatBottom(foldedThickness(folded.thickness(), board), board, chord);
        }
        if (section instanceof FoldedSymmetrical folded) {
            return symmetrical(foldedThickness(folded.thickness(), board), board, chord);
        }
        if (section instanceof SteppedPlate stepped) {
            return stepped(stepped.step(), board, chord);
        }
        double camber = section instanceof CurvedPlate curved ? curved.camber() : 0;
        return camber > 0 ? curved(camber, board, chord) : plate(board, chord);
    }

    /** From the lowest to the highest point of a section's outline, m, without the outline. */
    public static double height(WingSection section, double boardThickness, double chord) {
        if (section instanceof FoldedFlatBottom folded) {
            return foldedThickness(folded.thickness(), boardThickness / chord) * chord;
        }
        if (section instanceof FoldedSymmetrical folded) {
            return foldedThickness(folded.thickness(), boardThickness / chord) * chord;
        }
        if (section instanceof SteppedPlate) {
            return 2 * boardThickness;
        }
        return boardThickness + (section instanceof CurvedPlate curved ? curved.camber() * chord : 0);
    }

    /** What two boards laid on each other leave of a wished thickness, fraction of chord. */
    static double foldedThickness(double wished, double board) {
        return Math.max(wished, 2 * board);
    }

    private static SectionShape flatBottom(double thickness, double board, double chord) {
        double[] x = {0, FIRST_FOLD, SPAR_STATION, 1};
        double[] upper = {0, FIRST_HEIGHT * thickness, thickness, board};
        return new SectionShape(chord, 1 + length(x, upper), board, x, upper, new double[4]);
    }

    private static SectionShape symmetrical(double thickness, double board, double chord) {
        double half = 0.5 * thickness;
        double[] x = {0, FIRST_FOLD, SPAR_STATION, 1};
        double[] upper = {0, FIRST_HEIGHT * half, half, 0.5 * board};
        double[] lower = {0, -upper[1], -upper[2], -upper[3]};
        return new SectionShape(chord, 2 * length(x, upper), board, x, upper, lower);
    }

    /** The mean line falls from the step to where the flow meets the lower board again. */
    private static SectionShape stepped(double step, double board, double chord) {
        double closed = reattachment(step, board);
        double[] x = {0, step, closed, 1};
        double[] upper = {2 * board, 2 * board, board, board};
        return new SectionShape(chord, 1 + step, ROUNDED_EDGE * board, x, upper, new double[4]);
    }

    /** Where the flow has closed behind a step, at latest half-way to the trailing edge. */
    static double reattachment(double step, double board) {
        return Math.min(0.5 * (1 + step), step + REATTACHMENT * board);
    }

    private static SectionShape plate(double board, double chord) {
        double half = 0.5 * board;
        return new SectionShape(
                chord, 1, ROUNDED_EDGE * board, new double[] {0, 1}, new double[] {half, half}, new double[] {
                    -half, -half
                });
    }

    /** A parabola, which a circular arc of such small camber follows within a hundredth of its height. */
    private static SectionShape curved(double camber, double board, double chord) {
        double[] x = new double[ARC_FACETS + 1];
        double[] upper = new double[ARC_FACETS + 1];
        double[] lower = new double[ARC_FACETS + 1];
        for (int i = 0; i <= ARC_FACETS; i++) {
            x[i] = 0.5 * (1 - StrictMath.cos(Math.PI * i / ARC_FACETS));
            double middle = 4 * camber * x[i] * (1 - x[i]);
            upper[i] = middle + 0.5 * board;
            lower[i] = middle - 0.5 * board;
        }
        x[ARC_FACETS] = 1;
        return new SectionShape(chord, length(x, upper), ROUNDED_EDGE * board, x, upper, lower);
    }

    private static double length(double[] x, double[] z) {
        double sum = 0;
        for (int i = 1; i < x.length; i++) {
            double dx = x[i] - x[i - 1];
            double dz = z[i] - z[i - 1];
            sum += Math.sqrt(dx * dx + dz * dz);
        }
        return sum;
    }

    /** Number of stations shared by both sides. */
    public int stations() {
        return x.length;
    }

    public double x(int station) {
        return x[station];
    }

    public double upper(int station) {
        return upper[station];
    }

    public double lower(int station) {
        return lower[station];
    }

    /** Half-way between both sides. */
    public double meanLine(int station) {
        return 0.5 * (upper[station] + lower[station]);
    }

    /** Greatest height between the sides at one station. */
    public double thickness() {
        double most = 0;
        for (int i = 0; i < x.length; i++) {
            most = Math.max(most, upper[i] - lower[i]);
        }
        return most;
    }

    /** Flat width at the trailing edge. */
    public double trailingEdgeThickness() {
        return trailingEdgeThickness;
    }

    /** Board used around the section, without the turn at the leading edge, m. */
    public double developedLength() {
        return sheetPerChord * chord;
    }

    /** Thin-aerofoil lift and moment of the mean line. */
    public ThinAerofoil thinAerofoil() {
        double[] mean = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            mean[i] = meanLine(i);
        }
        return ThinAerofoil.of(x, mean);
    }
}
