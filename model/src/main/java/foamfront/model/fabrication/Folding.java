package foamfront.model.fabrication;

/**
 * Arithmetic of folds in a board of thickness t bent through θ. All lengths in metres, angles in radians; derived from plane
 * geometry (one paper keeps its length, the other side opens or closes).
 */
public final class Folding {
    /** A strip stands on edge inside a fold from this height on, otherwise it is laid flat, m. */
    static final double ON_EDGE = 0.010;

    /** Width of a strip laid flat, m (15 to 35 mm, common practice). */
    static final double FLAT_STRIP = 0.030;

    private Folding() {}

    /** Width of the V removed at the inner face of a bevelled fold: 2 t tan(θ/2); the outer paper is the hinge. */
    public static double bevelWidth(double thickness, double bend) {
        return 2 * thickness * StrictMath.tan(0.5 * bend);
    }

    /** Paper for a doubled fold of 180° with a square nose: 2 t (a round nose takes up to π t). */
    public static double doubledAllowance(double thickness) {
        return 2 * thickness;
    }

    /** Kerf that closes at each score of an arc: t p/R. */
    public static double closingKerf(double thickness, double radius, double pitch) {
        return thickness * pitch / radius;
    }

    /**
     * Least outside width of a facet between two bends whose foam must go somewhere: each takes t tan(θ/2) of the inner
     * face, half the V of a bevel (derived).
     */
    public static double leastFacet(double thickness, double bend, double next) {
        return 0.5 * (bevelWidth(thickness, bend) + bevelWidth(thickness, next));
    }

    /** Height inside a folded section for its spar: outside thickness less both boards; negative where none fits. */
    public static double insideHeight(double chord, double thicknessRatio, double board) {
        return thicknessRatio * chord - 2 * board;
    }
}
