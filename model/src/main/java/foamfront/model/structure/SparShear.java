package foamfront.model.structure;

import foamfront.model.parts.Spar;

/**
 * Shear of a stock spar's section. Greatest over mean stress, V Q / (I t) at the neutral axis (D. J. Jourawski's
 * formula, in any text on strength of materials; derived):
 *
 * <pre>strip 3/2,   tube 4/3 (D² + D d + d²) / (D² + d²): a rod 4/3, a thin tube 2</pre>
 *
 * Strength along the grain or between the fibres, from the design stress in bending: 0.03 of it in a pultruded
 * composite (41 of 1370 MPa, one supplier's figures), 0.15 in wood or bamboo, told by a density below 1000 kg/m³
 * (basswood 6.8 of 32.6 MPa, balsa 2.1 of 14.9; shear from the Wood Handbook, from memory).
 */
final class SparShear {
    private static final double COMPOSITE = 0.03;
    private static final double WOOD = 0.15;
    private static final double DENSEST_WOOD = 1000; // kg/m³

    private SparShear() {}

    /** Greatest over mean shear stress. */
    static double peak(Spar spar) {
        if (spar.shape() == Spar.Shape.STRIP) {
            return 1.5;
        }
        double outer = spar.height();
        double bore = spar.bore();
        return 4.0 / 3 * (1 + outer * bore / (outer * outer + bore * bore));
    }

    /** Shear force that the spar bears, N. */
    static double bears(Spar spar) {
        double stress = (spar.density() < DENSEST_WOOD ? WOOD : COMPOSITE) * spar.strength();
        return stress * spar.linearMass() / spar.density() / peak(spar);
    }
}
