package foamfront.model.section;

import static foamfront.model.units.Require.positive;

import foamfront.model.design.WingSection;
import foamfront.model.design.WingSection.CurvedPlate;
import foamfront.model.design.WingSection.FoldedFlatBottom;
import foamfront.model.design.WingSection.FoldedSymmetrical;
import foamfront.model.design.WingSection.SteppedPlate;
import foamfront.model.units.SmoothStep;

/**
 * Lift, moment and drag of one section at any Reynolds number inside its range. Angles are measured from the reference line
 * of {@link SectionShape}. Every method is table look-up and arithmetic; the caller takes the logarithm of Re once.
 *
 * <p>Zero-lift angle and moment: of a plate {@link ThinAerofoil} of its mean line, of which measured sections keep 0.95 and 0.87;
 * of a flat-bottomed fold the frictionless flow about its polygon ({@link FlatBottomFlow}), of which they keep 0.92 and 0.88
 * (measured over theoretical values of two cambered sections, NACA R-824 (1945), <i>from memory</i>).
 *
 * <p>Blunt trailing edge of height h: Δc_d = 0.135 (h/c)^(4/3) / c_d,fore^(1/3), S. F. Hoerner, Fluid-Dynamic Drag (1965),
 * ch. 3, <i>from memory</i>; c_d,fore is the section's least drag without it.
 */
public final class SectionPolar {
    /** Where the tables of every family begin. */
    public static final double LEAST_REYNOLDS = ReynoldsTable.LOWEST;

    /** Of thin-aerofoil theory. */
    static final double ZERO_LIFT_KEPT = 0.95;

    static final double MOMENT_KEPT = 0.87;

    /** Of frictionless flow about the whole section. */
    static final double ZERO_LIFT_KEPT_OF_FLOW = 0.92;

    static final double MOMENT_KEPT_OF_FLOW = 0.88;

    /** Base drag of two dimensions behind a body of some drag; Hoerner ch. 3, <i>from memory</i>. */
    public static final double BLUNT_EDGE = 0.135;

    /** Rearward step, on its height: within 0.15 to 0.25, Hoerner ch. 5, <i>from memory</i>. */
    private static final double STEP_DRAG = 0.2;
    /** The bucket of a flat-bottomed section stays centred no higher than this share of its maximum lift (<i>judgement</i>). */
    private static final double HIGHEST_DESIGN_SHARE = 0.6;
    /** The ideal lift of a bent plate is its design lift up to here; more camber only lifts more (<i>judgement</i>). */
    private static final double HIGHEST_BENT_DESIGN = 0.6;
    /** Past the stall the rise is held at this distance, so that no caller meets an overflow (<i>judgement</i>). */
    private static final double FURTHEST = 1.25;

    /** Normal force of a plate at 90 degrees to the stream; Hoerner ch. 3, <i>from memory</i>. */
    private static final double PLATE_ACROSS = 1.98;

    /** Past the stall the lift has gone over to that of a stalled plate within this, rad (10 degrees, <i>judgement</i>). */
    private static final double STALLING = Math.PI / 18;

    /**
     * How a family is scaled to this section.
     *
     * @param lift on the family's maximum lift
     * @param bubbleLoss share of it lost while the bubble is open
     * @param camberLift added to maximum and minimum lift
     * @param negative minimum lift over maximum lift, camber apart
     * @param designLift at which drag is least
     * @param drag on the family's least drag
     * @param addedDrag whatever the lift and the Reynolds number
     * @param edge flat trailing edge, fraction of chord
     */
    private record Scale(
            double lift,
            double bubbleLoss,
            double camberLift,
            double negative,
            double designLift,
            double drag,
            double addedDrag,
            double edge) {}

    private final SectionFamily family;
    private final Scale scale;
    private final double blunt;
    private final double zeroLiftAngle;
    private final double moment;
    private final double dragUncertainty;
    private final double liftUncertainty;

    private SectionPolar(
            SectionFamily family,
            Scale scale,
            double zeroLiftAngle,
            double moment,
            double dragUncertainty,
            double liftUncertainty) {
        this.family = family;
        this.scale = scale;
        this.blunt = BLUNT_EDGE * scale.edge * StrictMath.cbrt(scale.edge / scale.drag);
        // Adding zero turns the −0 of a section without camber into 0, which prints as such.
        this.zeroLiftAngle = zeroLiftAngle + 0.0;
        this.moment = moment + 0.0;
        this.dragUncertainty = dragUncertainty;
        this.liftUncertainty = liftUncertainty;
    }

    /**
     * The polar of a section folded from board.
     *
     * @param boardThickness m
     * @param chord m
     */
    public static SectionPolar of(WingSection section, double boardThickness, double chord) {
        positive("board thickness", boardThickness, "m");
        positive("chord", chord, "m");
        double board = boardThickness / chord;
        if (section instanceof FoldedFlatBottom folded) {
            return flatBottom(SectionShape.foldedThickness(folded.thickness(), board), board);
        }
        if (section instanceof FoldedSymmetrical folded) {
            return symmetrical(SectionShape.foldedThickness(folded.thickness(), board), board);
        }
        if (section instanceof SteppedPlate stepped) {
            return stepped(stepped.step(), board);
        }
        return plate(section instanceof CurvedPlate curved ? curved.camber() : 0, board);
    }

    private static SectionPolar flatBottom(double thickness, double board) {
        double design = Math.min(0.65, Math.max(0.3, 0.5 / 0.105 * thickness)); // judgement: 0.4 to 0.6 at 9 to 12 %
        Scale scale = new Scale(
                thinLift(thickness), bubbleLoss(thickness), 0, 0.5, design, thicknessDrag(thickness), 0, board);
        double angle = ZERO_LIFT_KEPT_OF_FLOW * FlatBottomFlow.zeroLiftAngle(thickness, board);
        double moment = MOMENT_KEPT_OF_FLOW * FlatBottomFlow.quarterChordMoment(thickness, board);
        return new SectionPolar(SectionFamily.FLAT_BOTTOM, scale, angle, moment, 0.20, 0.12);
    }

    private static SectionPolar symmetrical(double thickness, double board) {
        Scale scale =
                new Scale(thinLift(thickness), bubbleLoss(thickness), 0, 1, 0, thicknessDrag(thickness), 0, board);
        return new SectionPolar(SectionFamily.SYMMETRICAL, scale, 0, 0, 0.20, 0.08);
    }

    private static SectionPolar stepped(double step, double board) {
        double edge = SectionShape.ROUNDED_EDGE * board;
        Scale scale = new Scale(1, 0, 0, 1, 0, SectionFamily.plateForm(2 * board), STEP_DRAG * board, edge);
        ThinAerofoil mean = ThinAerofoil.of(
                new double[] {0, step, SectionShape.reattachment(step, board), 1},
                new double[] {board, board, 0.5 * board, 0.5 * board});
        return new SectionPolar(
                SectionFamily.PLATE,
                scale,
                ZERO_LIFT_KEPT * mean.zeroLiftAngle(),
                MOMENT_KEPT * mean.quarterChordMoment(),
                0.30,
                0.15);
    }

    /** Camber f adds 5.5 f to maximum lift up to 6 % (then 1.0 to 1.1), less beyond; parabola: α₀ = −2f, C_m = −πf. */
    private static SectionPolar plate(double camber, double board) {
        double camberLift = 5.5 * Math.min(camber, 0.06) + 2.5 * Math.min(Math.max(camber - 0.06, 0), 0.04);
        double drag = SectionFamily.plateForm(board) * (1 + 5 * camber); // judgement: 30 % more at 6 %
        double edge = SectionShape.ROUNDED_EDGE * board;
        Scale scale =
                new Scale(1, 0, camberLift, 1, Math.min(4 * Math.PI * camber, HIGHEST_BENT_DESIGN), drag, 0, edge);
        boolean flat = camber == 0;
        return new SectionPolar(
                SectionFamily.PLATE,
                scale,
                ZERO_LIFT_KEPT * -2 * camber,
                MOMENT_KEPT * -Math.PI * camber,
                flat ? 0.20 : 0.25,
                flat ? 0.10 : 0.15);
    }

    /** The tables stand for 9 to 12 %; thinner folds lift less: 4 % a point of thickness (<i>judgement</i>). */
    private static double thinLift(double thickness) {
        return 1 - 4 * Math.max(0, 0.09 - thickness);
    }

    /** Thicker folds stall early while the bubble is open: 5 % a point, up to 65 % (<i>judgement</i>). */
    private static double bubbleLoss(double thickness) {
        return Math.min(0.65, 5 * Math.max(0, thickness - 0.12));
    }

    /** Thinner folds drag 5 % a point less, thicker ones 6 % a point more (<i>judgement</i>). */
    private static double thicknessDrag(double thickness) {
        return 1 - 5 * Math.max(0, 0.09 - thickness) + 6 * Math.max(0, thickness - 0.12);
    }

    /** From the reference line, rad; negative with positive camber. */
    public double zeroLiftAngle() {
        return zeroLiftAngle;
    }

    /** About c/4, nose up positive. */
    public double momentCoefficient() {
        return moment;
    }

    /** Lift-curve slope over 2π. */
    public double slopeRatio(double logReynolds) {
        return family.slope.at(logReynolds);
    }

    public double maximumLift(double logReynolds) {
        return plainMaximumLift(logReynolds) + scale.camberLift;
    }

    public double minimumLift(double logReynolds) {
        return scale.camberLift - scale.negative * plainMaximumLift(logReynolds);
    }

    private double plainMaximumLift(double logReynolds) {
        double place = ReynoldsTable.place(logReynolds);
        int below = ReynoldsTable.below(place);
        return plainMaximumLift(below, place - below);
    }

    private double plainMaximumLift(int below, double part) {
        double attached = scale.lift * family.maximumLift.between(below, part);
        return scale.bubbleLoss == 0
                ? attached
                : attached * (1 - scale.bubbleLoss * SectionFamily.OPEN_BUBBLE.between(below, part));
    }

    /** Profile drag at a lift coefficient between the two stalls. */
    public double drag(double lift, double logReynolds) {
        // The busiest method of an appraisal: the place in the tables is found once, and comparisons stand for
        // Math.min, whose
        // care for signed zeros took a fifth of the time (FlightBenchmark).
        double place = ReynoldsTable.place(logReynolds);
        int below = ReynoldsTable.below(place);
        double part = place - below;
        double plain = plainMaximumLift(below, part);
        double maximum = plain + scale.camberLift;
        double highest = HIGHEST_DESIGN_SHARE * maximum;
        double design = scale.designLift < highest ? scale.designLift : highest;
        double distance = lift - design;
        double room = (distance >= 0 ? maximum : scale.camberLift - scale.negative * plain) - design;
        double share = distance / room;
        double v = share > FURTHEST ? FURTHEST : share;
        double square = v * v;
        double fourth = square * square;
        SectionFamily.Rise rise = family.rise;
        return scale.drag * family.leastDrag.between(below, part)
                + scale.addedDrag
                + blunt * family.inverseCubeRootOfDrag.between(below, part)
                + square * (rise.square() + rise.stall() * square * fourth * fourth)
                + distance * distance * (rise.suction() + rise.suctionAtStall() * square);
    }

    /**
     * Lift coefficient at an incidence (rad) from the reference line, for looking at: straight to the stall, then over to a stalled
     * plate's 1.98 sin α cos α (S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. 3, <i>from memory</i>). Flight stops at the stall.
     */
    public double lift(double incidence, double logReynolds) {
        double slope = 2 * Math.PI * slopeRatio(logReynolds);
        double straight = slope * (incidence - zeroLiftAngle);
        double end = straight >= 0 ? maximumLift(logReynolds) : minimumLift(logReynolds);
        double past = Math.abs(straight - end) * Math.signum(straight / end - 1) / slope;
        double gone = SmoothStep.at(past / STALLING);
        double plate = PLATE_ACROSS * StrictMath.sin(incidence) * StrictMath.cos(incidence);
        return past <= 0 ? straight : end + gone * (plate - end);
    }

    /** Lift coefficient over that of the stall on its side, positive or negative: 1 where the section stalls. */
    public double liftShare(double lift, double logReynolds) {
        return lift / (lift >= 0 ? maximumLift(logReynolds) : minimumLift(logReynolds));
    }

    /** Whether the tables reach this Reynolds number; outside they are held at their ends. */
    public boolean inside(double logReynolds) {
        return ReynoldsTable.inside(logReynolds);
    }

    /** Half-width of the band about the drag that holds the truth four times in five, relative. */
    public double dragUncertainty() {
        return dragUncertainty;
    }

    /** Half-width of the band about the maximum lift that holds the truth four times in five, relative. */
    public double liftUncertainty() {
        return liftUncertainty;
    }
}
