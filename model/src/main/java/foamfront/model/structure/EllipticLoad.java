package foamfront.model.structure;

/**
 * Shear and bending moment of an elliptically loaded, massless half wing, as fractions of their root values. With
 * η = 2y/b, W the weight, n the load factor (derived by integrating the ellipse):
 *
 * <pre>
 * V / V₀ = (2/π) [acos η − η √(1 − η²)],                         V₀ = n W / 2
 * M / M₀ = (3/2) [√(1 − η²) − η acos η − (1 − η²)^{3/2} / 3],    M₀ = n W b / (3π)
 * </pre>
 */
public final class EllipticLoad {
    private EllipticLoad() {}

    /** V / V₀ at η. */
    public static double shear(double eta) {
        return 2 / Math.PI * (StrictMath.acos(eta) - eta * Math.sqrt(1 - eta * eta));
    }

    /** M / M₀ at η. */
    public static double moment(double eta) {
        double root = Math.sqrt(1 - eta * eta);
        return 1.5 * (root - eta * StrictMath.acos(eta) - root * root * root / 3);
    }
}
