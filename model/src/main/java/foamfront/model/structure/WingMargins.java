package foamfront.model.structure;

/**
 * What wings have in hand.
 *
 * @param bending paper or spar, worst section
 * @param shear at the root, or in a plug-in tube
 * @param glue between the boards, worst section
 * @param joint bending of a plug-in tube and its pressure on the sleeve, or a folding wing's hinge and bands
 * @param deflection of the tip at the limit load, of the semispan
 * @param divergence dynamic pressure times lift slope, q_D a, Pa
 * @param flutter dynamic pressure times lift slope, q_F a, Pa
 */
record WingMargins(
        double bending, double shear, double glue, double joint, double deflection, double divergence, double flutter) {
    /** No wing, nothing to break. */
    static final WingMargins UNLOADED = new WingMargins(
            StructureMargins.UNLOADED,
            StructureMargins.UNLOADED,
            StructureMargins.UNLOADED,
            StructureMargins.UNLOADED,
            0,
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY);

    /** Each figure of whichever has least in hand. */
    WingMargins worse(WingMargins other) {
        return new WingMargins(
                Math.min(bending, other.bending),
                Math.min(shear, other.shear),
                Math.min(glue, other.glue),
                Math.min(joint, other.joint),
                Math.max(deflection, other.deflection),
                Math.min(divergence, other.divergence),
                Math.min(flutter, other.flutter));
    }
}
