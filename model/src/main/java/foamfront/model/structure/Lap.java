package foamfront.model.structure;

/**
 * A lap of two sheets that pull. Shear crowds towards its ends (O. Volkersen, Luftfahrtforschung 15 (1938) 41-47, from memory):
 *
 * <pre>peak / mean = (ω l / 2) coth(ω l / 2),   ω² = (G / t) (1 / E₁ t₁ + 1 / E₂ t₂)</pre>
 *
 * so that a lap bears no more than 2 / ω of it even at the peak. The bond of paper to foam is known as a mean
 * ({@link GlueBead#BOND}) of laps an inch long (judgement); others follow from it at the same peak. What shears between a strip of tape
 * and a board is the board's core.
 */
final class Lap {
    /** Lap on which the bond is known, m. */
    private static final double KNOWN = 0.025;

    /** Tensile strength of tape, N/m (a tape maker's page). */
    private static final double FILM_BEARS = 4700;

    private Lap() {}

    /**
     * ω, 1/m.
     *
     * @param shear modulus of what lies between, Pa
     * @param thickness of it, m
     * @param one Young's modulus times thickness of one sheet, N/m
     * @param other of the other
     */
    static double omega(double shear, double thickness, double one, double other) {
        return Math.sqrt(shear / thickness * (1 / one + 1 / other));
    }

    /** Greatest over mean shear stress. */
    static double peak(double omega, double length) {
        double half = 0.5 * omega * length;
        return half / StrictMath.tanh(half);
    }

    /** Pull that a lap bears, N/m of its width. */
    static double bears(double omega, double length) {
        return GlueBead.BOND * length * peak(omega, KNOWN) / peak(omega, length);
    }

    /** Pull that a strip of tape across a joint bears, N/m, glued over {@code lap} on either side. */
    static double tape(Sandwich board, double lap) {
        double omega =
                omega(board.coreShearModulus(), board.core(), Sandwich.FILM, 2 * board.face() * board.faceModulus());
        return Math.min(FILM_BEARS, bears(omega, lap));
    }
}
