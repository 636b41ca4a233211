package foamfront.model.structure;

import foamfront.model.fabrication.Folding;

/**
 * Shear stress of the glue that ties a wing's boards to each other, per newton of the boards' shear V.
 *
 * <p>In a fold the web and the outline are two closed cells. With walls of one thickness and neither cell turning, the web
 * passes of V / h, h between the skins' middles, at most 0.714 over a flat bottom and 0.867 between skins alike, the limits of
 * a thin section; at 12 % 0.57 and 0.64 (statics of thin walls, V Q / I and Bredt's closed cells; derived, WebGlueTest does it
 * again). The rest goes round by the nose's fold and the trailing edge, where at most 0.34 V / h passes a bead that
 * lies flat. The web stands on edge in one bead above and one below; a strip laid flat, where there is no room for one on edge,
 * lies in both.
 *
 * <p>A stepped plate's upper board is glued by three beads: q = V Q / I, Q = 2 t_f s c e with e from the common centroid (derived).
 * One-board plates have no glue along the span. Nor is a stock spar's glue sheared: it bends as a beam of its own.
 */
final class WebGlue {
    private static final double FLAT_BOTTOM = 0.714;
    private static final double ALIKE = 0.867;
    private static final double STEP_BEADS = 3;

    private WebGlue() {}

    /** In a fold, 1/m². */
    static double fold(boolean symmetrical, double rise, double web, double thickness, double bead) {
        double width =
                web >= Folding.ON_EDGE ? GlueBead.underEdge(bead, thickness) : GlueBead.flat(bead, Folding.FLAT_STRIP);
        return (symmetrical ? ALIKE : FLAT_BOTTOM) / (rise * width);
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
