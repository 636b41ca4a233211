package foamfront.model.aero;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * The monoplane equation Σ Aₙ sin nθ (n μ + sin θ) = μ α sin θ with μ = a₀ c / 4b and y = (b / 2) cos θ, collocated over
 * the whole span; Γ = 2 b V Σ Aₙ sin nθ. H. Glauert, Elements of Aerofoil and Airscrew Theory, chapter XI (from memory).
 * The oracle for straight wings.
 */
final class FourierLiftingLine {
    private static final int TERMS = 150;

    private final double aspectRatio;
    private final double[] a;

    /**
     * @param chord over mean chord, of 2y/b
     * @param incidence rad, of 2y/b
     */
    FourierLiftingLine(double aspectRatio, double slope, DoubleUnaryOperator chord, DoubleUnaryOperator incidence) {
        this(TERMS, aspectRatio, slope, chord, incidence);
    }

    FourierLiftingLine(
            int terms, double aspectRatio, double slope, DoubleUnaryOperator chord, DoubleUnaryOperator incidence) {
        this.aspectRatio = aspectRatio;
        double[][] matrix = new double[terms][terms];
        double[] right = new double[terms];
        for (int j = 0; j < terms; j++) {
            double theta = Math.PI * (j + 1) / (terms + 1);
            double eta = Math.cos(theta);
            double mu = slope * chord.applyAsDouble(eta) / (4 * aspectRatio);
            for (int n = 1; n <= terms; n++) {
                matrix[j][n - 1] = Math.sin(n * theta) * (n * mu + Math.sin(theta));
            }
            right[j] = mu * incidence.applyAsDouble(eta) * Math.sin(theta);
        }
        a = new LUDecomposition(new Array2DRowRealMatrix(matrix, false))
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
    }

    /** A straight tapered wing with section slope 2π. */
    static FourierLiftingLine tapered(double aspectRatio, double taper, DoubleUnaryOperator incidence) {
        return new FourierLiftingLine(aspectRatio, 2 * Math.PI, taperedChord(taper), incidence);
    }

    static DoubleUnaryOperator taperedChord(double taper) {
        return eta -> 2 / (1 + taper) * (1 - (1 - taper) * Math.abs(eta));
    }

    double lift() {
        return Math.PI * aspectRatio * a[0];
    }

    double inducedDrag() {
        double sum = 0;
        for (int n = 1; n <= a.length; n++) {
            sum += n * a[n - 1] * a[n - 1];
        }
        return Math.PI * aspectRatio * sum;
    }

    /** τ of 1/a = 1/a₀ + (1 + τ) / (π A) with a₀ = 2π and α = 1. */
    double tau() {
        return Math.PI * aspectRatio * (1 / lift() - 0.5 / Math.PI) - 1;
    }

    double delta() {
        return inducedDrag() * Math.PI * aspectRatio / (lift() * lift()) - 1;
    }

    /** Rolling moment coefficient of lift that grows towards positive y, positive when that side rises. */
    double roll() {
        return 0.25 * Math.PI * aspectRatio * a[1];
    }

    /** Γ / (b V) at 2y/b. */
    double circulation(double eta) {
        double theta = Math.acos(eta);
        double sum = 0;
        for (int n = 1; n <= a.length; n++) {
            sum += a[n - 1] * Math.sin(n * theta);
        }
        return 2 * sum;
    }
}
