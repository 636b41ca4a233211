package foamfront.model.fabrication;

/**
 * Arithmetic of folds in a board of thickness t bent through θ. All lengths in metres, angles in radians; derived from plane
 * geometry (one paper keeps its length, the other side opens or closes).
 */
public final class Folding {
    private Folding() {}

    /** Gap opening at the outer face of an open score: 2 t sin(θ/2); the inner paper is the hinge. */
    public static double openScoreGap(double thickness, double bend) {
        return 2 * thickness * StrictMath.sin(0.5 * bend);
    }

    /** Width of the V removed at the inner face of a bevelled fold: 2 t tan(θ/2); the outer paper is the hinge. */
    public static double bevelWidth(double thickness, double bend) {
        return 2 * thickness * StrictMath.tan(0.5 * bend);
    }

    /** Paper for a doubled fold of 180° with a square nose: 2 t (a round nose takes up to π t). */
    public static double doubledAllowance(double thickness) {
        return 2 * thickness;
    }

    /** How far a facet between scores at {@code pitch} lies off the arc of {@code radius}: R (1 − cos(p/2R)). */
    public static double facetError(double radius, double pitch) {
        return radius * (1 - StrictMath.cos(0.5 * pitch / radius));
    }

    /** Kerf that closes at each score of an arc: t p/R. */
    public static double closingKerf(double thickness, double radius, double pitch) {
        return thickness * pitch / radius;
    }

    /**
     * Least outside width of a facet between two bends whose foam must go somewhere: each takes t tan(θ/2) of the inner face, half
     * the V of a bevel (derived).
     */
    public static double leastFacet(double thickness, double bend, double next) {
        return 0.5 * (bevelWidth(thickness, bend) + bevelWidth(thickness, next));
    }

    /** Height inside a folded section for its spar: outside thickness less both boards; negative where none fits. */
    public static double insideHeight(double chord, double thicknessRatio, double board) {
        return thicknessRatio * chord - 2 * board;
    }

    /**
     * Peak bearing pressure of a tube in a sleeve under a bending moment, Pa: 6 M/(d l²), the pressure falling linearly to
     * its opposite over the engaged length l. Derived.
     */
    public static double sleevePressure(double moment, double diameter, double engaged) {
        return 6 * moment / (diameter * engaged * engaged);
    }
}
