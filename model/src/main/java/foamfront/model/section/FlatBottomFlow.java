package foamfront.model.section;

import foamfront.model.units.MeasuredTable;

/**
 * Zero-lift angle and moment of a flat-bottomed fold in frictionless flow: thin-aerofoil theory of its mean line, times what a panel
 * method finds over it (flat-bottomed-flow.csv, <i>derived</i>), straight between the thicknesses of that table and held
 * beyond. The blunt nose of such a fold carries its lift further ahead than its mean line does, which takes a seventh off the
 * moment at usual thicknesses.
 */
final class FlatBottomFlow {
    private static final ThinAerofoil FOLD = ThinAerofoil.of(
            new double[] {0, SectionShape.FIRST_FOLD, SectionShape.SPAR_STATION, 1},
            new double[] {0, 0.5 * SectionShape.FIRST_HEIGHT, 0.5, 0});
    private static final ThinAerofoil EDGE =
            ThinAerofoil.of(new double[] {0, SectionShape.SPAR_STATION, 1}, new double[] {0, 0, 0.5});

    private static final MeasuredTable FLOW = MeasuredTable.read(FlatBottomFlow.class, "flat-bottomed-flow.csv");
    private static final double[] FOLD_ANGLE = FLOW.column(1);
    private static final double[] EDGE_ANGLE = FLOW.column(2);
    private static final double[] FOLD_MOMENT = FLOW.column(3);
    private static final double[] EDGE_MOMENT = FLOW.column(4);
    private static final double ROWS_PER_THICKNESS = 1 / FLOW.at(1, 0);

    private FlatBottomFlow() {}

    /**
     * From the flat underside, rad.
     *
     * @param thickness fraction of chord
     * @param board height of the trailing edge, fraction of chord
     */
    static double zeroLiftAngle(double thickness, double board) {
        return at(FOLD_ANGLE, thickness) * thickness * FOLD.zeroLiftAngle()
                + at(EDGE_ANGLE, thickness) * board * EDGE.zeroLiftAngle();
    }

    /** About c/4 at zero lift, nose up positive. */
    static double quarterChordMoment(double thickness, double board) {
        return at(FOLD_MOMENT, thickness) * thickness * FOLD.quarterChordMoment()
                + at(EDGE_MOMENT, thickness) * board * EDGE.quarterChordMoment();
    }

    private static double at(double[] ratios, double thickness) {
        double position = Math.min(ratios.length - 1, thickness * ROWS_PER_THICKNESS);
        int below = Math.min(ratios.length - 2, (int) position);
        return ratios[below] + (position - below) * (ratios[below + 1] - ratios[below]);
    }
}
