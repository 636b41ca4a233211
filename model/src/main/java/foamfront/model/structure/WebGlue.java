package foamfront.model.structure;

/**
 * Shear stress of the glue that ties a wing's boards to each other, per newton of the boards' shear V.
 *
 * <p>In a fold the web and the outline are two closed cells. With walls of one thickness and neither cell turning, the web
 * passes of V / h, h between the skins' middles, 0.713 over a flat bottom and 0.866 between skins alike where the section is
 * thin; at h = 0.12 c 0.57 and 0.64 (statics of thin walls, V Q / I and Bredt's closed cells; derived, and again by WebGlueTest,
 * which the polynomials below meet within 0.15 % up to h = 0.2 c). The rest goes round by the nose's fold and the trailing edge.
 * The web stands on edge in one bead above and one below; a strip laid flat is credited with no more (judgement).
 *
 * <p>A stepped plate's upper board is glued by three beads: q = V Q / I, Q = 2 t_f s c e with e from the common centroid
 * (derived). One-board plates have no glue along the span. Nor is a stock spar's glue sheared: it bends as a beam of its own.
 */
final class WebGlue {
    private static final double STEP_BEADS = 3;

    private WebGlue() {}

    /** In a fold, 1/m². */
    static double fold(boolean symmetrical, double rise, double chord, double thickness, double bead) {
        return share(symmetrical, rise / chord) / (rise * GlueBead.underEdge(bead, thickness));
    }

    /** Of V / h, that passes either end of the web. */
    static double share(boolean symmetrical, double h) {
        return symmetrical ? 0.8663 / (1 + h * (2.8 + 0.83 * h)) : 0.7134 / (1 + h * (2.3 - 2.1 * h));
    }

    /**
     * Between the boards of a stepped plate, 1/m².
     *
     * @param step its depth over the chord's
     * @param modulus Young's, of the paper, times the thickness of both papers, N/m
     * @param stiffness E I of both boards, N m²
     */
    static double step(double step, double chord, double thickness, double modulus, double stiffness, double bead) {
        double moment = modulus * step * chord * thickness / (1 + step);
        return moment / (stiffness * Math.min(step * chord, STEP_BEADS * GlueBead.flat(bead, step * chord)));
    }
}
