package foamfront.model.structure;

/**
 * The joint of a wing that folds at its centre line: strips of tape across the lower skins are the hinge, root ribs butt
 * above it, rubber bands over hooks on top keep it open. Shear goes into the body, on which both halves lie.
 *
 * <p>Lift opens the lower side: the tape bears q c over the root chord c, with its lever the mean height of the fold
 * (enclosed area over chord; judgement, the crest stands higher), and the upper skin's two papers press, 2 t_f c σ. A
 * strip of tape passes q = 3 kN/m: 0.10 MPa of paper on foam (0.05 to 0.2 MPa, from memory) over the 30 mm of lap
 * beyond which no more is carried (O. Volkersen, Luftfahrtforschung 15 (1938) 41-47, from memory), less than the 4.7 kN/m
 * that its film bears (a tape maker's page). Weight in landing opens the upper side, held by two pairs of crossed bands
 * of 40 N (30 to 50 N, common practice).
 *
 * <p>The tape stretches by q / (E t) over 10 mm (judgement) and lets the halves turn.
 */
final class FoldJoint {
    static final double TAPE_BEARS = 3000; // N/m
    private static final double BANDS_BEAR = 2 * 40; // N
    private static final double STRETCHED = 0.010; // m

    private FoldJoint() {}

    /**
     * Strength over load, the lesser of both ways.
     *
     * @param up moment that lifts the tips, N m
     * @param down moment that lets them hang, N m
     * @param strength stress at which the compressed paper fails, Pa
     */
    static double reserve(double up, double down, WingBeam beam, double rootChord, double strength) {
        double lever = beam.meanHeight(rootChord);
        double papers = 2 * beam.board().face() * strength;
        double lifted = StructureMargins.reserve(Math.min(TAPE_BEARS, papers) * rootChord * lever, up);
        return Math.min(lifted, StructureMargins.reserve(BANDS_BEAR * lever, down));
    }

    /** How far each half turns about the crest under a lifting moment, rad. */
    static double turn(double up, WingBeam beam, double rootChord) {
        double lever = beam.meanHeight(rootChord);
        return up / (rootChord * lever * Sandwich.FILM) * STRETCHED / lever;
    }
}
