package foamfront.model.section;

import foamfront.model.units.MeasuredTable;

/**
 * What sections of one kind have in common before thickness, camber and edges scale it.
 *
 * <p>Drag above its least value rises with v, the distance in lift from the design lift over the distance at which the section
 * stalls. A rounded nose rises as a v² + b v¹². A plate loses its nose suction instead: a share k₀ + k₁ v² of
 * d² / 2πa₀-ratio, d the distance itself (<i>derived</i>: without suction the resultant stands on the plate, c_d = c_l α).
 *
 * <p>Sources:
 *
 * <ul>
 *   <li>rise a, b and the symmetrical family's least drag: least squares on M. S. Selig, J. J. Guglielmo, A. P. Broeren and
 *       P. Giguère, Summary of Low-Speed Airfoil Data, vol. 1 (1995), App. B, a smooth symmetrical 10.1 % section at Re 61 400
 *       to 305 200, read in a public study's table: RMS 5 %, largest 14 %;
 *   <li>facet penalty: W. Chen and L. P. Bernal, AIAA 2008-316, abstract: drag comparable to a smooth section, taken as 0 to
 *       30 % more, here 15 %;
 *   <li>flat plate: A. Pelletier and T. J. Mueller, J. Aircraft 37(5), 2000, pp. 825-832, wings of aspect ratio 1 and 2 at
 *       Re 140 000, read off their diagrams by a public study: least drag 2.1 times laminar friction, maximum lift 0.75; k₀, k₁
 *       fitted here after taking off C_L² / πA; below that Reynolds number as laminar friction, above it as turbulent,
 *       since scores and square edges trip the flow and nothing measured says that it stays laminar (<i>judgement</i>);
 *   <li>flat-bottomed drag and lift, plate lift: brackets from faceted and smooth sections and F. W. Schmitz, Aerodynamik des
 *       Flugmodells (1942), all <i>from memory</i>; ends below 40 000 and above 300 000 carried on by <i>judgement</i>.
 * </ul>
 */
final class SectionFamily {
    static final SectionFamily PLATE = new SectionFamily(
            Table.PLATE_LIFT,
            ReynoldsTable.friction(2.1 / plateForm(0.02), 140e3),
            Table.PLATE_SLOPE,
            new Rise(0, 0, 0.4 / (2 * Math.PI * 0.95), 0.6 / (2 * Math.PI * 0.95)));
    static final SectionFamily FLAT_BOTTOM =
            new SectionFamily(Table.FLAT_BOTTOM_LIFT, Table.FLAT_BOTTOM_DRAG, Table.FOLDED_SLOPE, Rise.ROUND_NOSE);
    static final SectionFamily SYMMETRICAL = new SectionFamily(
            Table.SYMMETRICAL_LIFT,
            Table.SMOOTH_SYMMETRICAL_DRAG.scaled(Table.FACET_PENALTY),
            Table.FOLDED_SLOPE,
            Rise.ROUND_NOSE);

    /**
     * Coefficients of the drag rise.
     *
     * @param square a
     * @param stall b
     * @param suction k₀ over 2π and the slope ratio
     * @param suctionAtStall k₁ likewise
     */
    record Rise(double square, double stall, double suction, double suctionAtStall) {
        static final Rise ROUND_NOSE = new Rise(0.00956 * Table.FACET_PENALTY, 0.01191 * Table.FACET_PENALTY, 0, 0);
    }

    private static final class Table {
        static final double FACET_PENALTY = 1.15;
        private static final MeasuredTable FOLD = MeasuredTable.read(SectionFamily.class, "flat-bottomed-fold.csv");
        private static final MeasuredTable SMOOTH = MeasuredTable.read(SectionFamily.class, "smooth-symmetrical.csv");
        private static final MeasuredTable FLAT = MeasuredTable.read(SectionFamily.class, "flat-plate.csv");

        static final ReynoldsTable FLAT_BOTTOM_LIFT = ReynoldsTable.through(FOLD.column(0), FOLD.column(1));
        static final ReynoldsTable FLAT_BOTTOM_DRAG = ReynoldsTable.through(FOLD.column(0), FOLD.column(2));
        static final ReynoldsTable SYMMETRICAL_LIFT = ReynoldsTable.through(SMOOTH.column(0), SMOOTH.column(1));
        static final ReynoldsTable SMOOTH_SYMMETRICAL_DRAG = ReynoldsTable.through(SMOOTH.column(0), SMOOTH.column(2));
        static final ReynoldsTable PLATE_LIFT = ReynoldsTable.through(FLAT.column(0), FLAT.column(1));

        /** Measured 0.94 to 1.02 of 2π from Re 100 000 to 300 000 and a dead band at 61 000; below, <i>judgement</i>. */
        static final ReynoldsTable FOLDED_SLOPE = ReynoldsTable.through(
                new double[] {30e3, 60e3, 100e3, 150e3, 200e3, 400e3},
                new double[] {0.80, 0.85, 0.93, 0.96, 0.97, 0.98});
        /** The measured square plate has the whole theoretical slope, the other one more; 5 % off is <i>judgement</i>. */
        static final ReynoldsTable PLATE_SLOPE =
                ReynoldsTable.through(new double[] {30e3, 60e3, 100e3, 400e3}, new double[] {0.90, 0.93, 0.95, 0.96});

        private Table() {}
    }

    /**
     * Least drag over laminar friction of both sides that a measured section ever showed, less a tenth: 1.22 to 1.54 of a smooth
     * 10 % section, 2.1 of a plate (sources as for their tables; <i>derived</i>). A table below it is a misprint.
     */
    static final double FLOOR = 1.1;

    /** 1 up to Re 60 000, where a thick section's bubble stays open, 0 from 150 000 (<i>from memory</i>). */
    static final ReynoldsTable OPEN_BUBBLE =
            ReynoldsTable.through(new double[] {30e3, 60e3, 150e3, 400e3}, new double[] {1, 1, 0, 0});

    final ReynoldsTable maximumLift;
    final ReynoldsTable leastDrag;
    final ReynoldsTable inverseCubeRootOfDrag;
    final ReynoldsTable slope;
    final Rise rise;

    SectionFamily(ReynoldsTable maximumLift, ReynoldsTable leastDrag, ReynoldsTable slope, Rise rise) {
        if (!(leastDrag.overFriction() > FLOOR)) {
            throw new IllegalArgumentException(
                    "a table of least drag falls below " + FLOOR + " times laminar friction, which no section does");
        }
        this.maximumLift = maximumLift;
        this.leastDrag = leastDrag;
        this.inverseCubeRootOfDrag = leastDrag.inverseCubeRoot();
        this.slope = slope;
        this.rise = rise;
    }

    /** Drag over friction of a plate of finite thickness, 1 + 2 t/c + 60 (t/c)⁴: S. F. Hoerner, Fluid-Dynamic Drag (1965). */
    static double plateForm(double thickness) {
        double square = thickness * thickness;
        return 1 + 2 * thickness + 60 * square * square;
    }
}
