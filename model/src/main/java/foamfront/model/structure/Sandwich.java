package foamfront.model.structure;

import foamfront.model.design.Covering;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Board;

/**
 * One foam board as a sandwich strip: faces t_f, core c, d = c + t_f between the faces' middles.
 *
 * <pre>
 * D = E_f t_f d² / 2 + E_f t_f³ / 6 + E_c c³ / 12      bending stiffness per width, N m
 * S = G_c d² / c                                       shear stiffness per width, N/m
 * σ = k (E_f E_c G_c)^{1/3}                            wrinkling stress of a face, k = 0.5 for design
 * </pre>
 *
 * D and S are derived; wrinkling is after Hoff and Mautner, "The buckling of sandwich-type panels", J. Aeronautical
 * Sciences 12 (1945) 285-297 (from memory). Taking E_f for the paper along the grain.
 *
 * <p>Laminated faces: a film of E t = 56 kN/m (oriented polypropylene, 28 µm at 2 GPa, <i>derived</i> from a tape
 * maker's figures) on the outer or on both papers works with them; both papers get half of what one film gives, so that
 * the board stays symmetrical. The paper fails at the same strain as before ({@link WingReserve#faceStrength}); that the
 * film also holds what has failed nobody has measured.
 *
 * @param face thickness of one face, m
 * @param core thickness of the core, m
 * @param faceModulus Pa
 * @param coreModulus Pa
 * @param coreShearModulus Pa
 */
public record Sandwich(double face, double core, double faceModulus, double coreModulus, double coreShearModulus) {
    /** Design value of k; theory has 0.91 for perfect faces. */
    static final double WRINKLING = 0.5;

    /** Young's modulus times thickness of laminating film, N/m. */
    static final double FILM = 2e9 * 28e-6;

    /** A board whose moduli are those of the catalogue times the stiffness factor. */
    public static Sandwich of(Board board, Factors factors) {
        double k = factors.boardStiffness();
        return new Sandwich(
                board.faceThickness(),
                board.thickness() - 2 * board.faceThickness(),
                k * board.faceModulus(),
                k * board.coreModulus(),
                k * board.coreShearModulus());
    }

    /** With film over what the covering laminates; taped edges and bare board are as they were. */
    public Sandwich covered(Covering covering) {
        int films = covering == Covering.BOTH_FACES ? 2 : covering == Covering.ONE_FACE ? 1 : 0;
        return films == 0
                ? this
                : new Sandwich(face, core, faceModulus + 0.5 * films * FILM / face, coreModulus, coreShearModulus);
    }

    /** Distance between the middles of the faces, m. */
    public double depth() {
        return core + face;
    }

    /** Over both faces, m. */
    public double thickness() {
        return core + 2 * face;
    }

    /** D, N m. */
    public double bendingStiffness() {
        double d = depth();
        return faceModulus * face * (0.5 * d * d + face * face / 6) + coreModulus * core * core * core / 12;
    }

    /** S, N/m. */
    public double shearStiffness() {
        double d = depth();
        return coreShearModulus * d * d / core;
    }

    /** Stress of the faces under a bending moment per width (N), Pa: M / (t_f d). */
    public double faceStress(double moment) {
        return moment / (face * depth());
    }

    /** Stress at which a face wrinkles, Pa. */
    public double wrinklingStress() {
        return WRINKLING * StrictMath.cbrt(faceModulus * coreModulus * coreShearModulus);
    }
}
