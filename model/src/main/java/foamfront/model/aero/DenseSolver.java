package foamfront.model.aero;

/**
 * Gaussian elimination with partial pivoting on rows of one array, several right-hand sides at once. G. H. Golub and
 * C. F. Van Loan, Matrix Computations, 1996, section 3.4 (from memory).
 */
final class DenseSolver {
    private DenseSolver() {}

    /**
     * Solves in place. Row i starts at {@code i * stride}: n coefficients, then the right-hand sides, which the solutions
     * replace.
     */
    static void solve(double[] a, int n, int stride) {
        for (int k = 0; k < n; k++) {
            exchange(a, k * stride, pivot(a, n, stride, k) * stride, k, stride);
            int top = k * stride;
            double inverse = 1 / a[top + k];
            for (int i = k + 1; i < n; i++) {
                int row = i * stride;
                double factor = a[row + k] * inverse;
                for (int j = k + 1; j < stride; j++) {
                    a[row + j] -= factor * a[top + j];
                }
            }
        }
        substituteBack(a, n, stride);
    }

    private static int pivot(double[] a, int n, int stride, int k) {
        int best = k;
        double size = Math.abs(a[k * stride + k]);
        for (int i = k + 1; i < n; i++) {
            double other = Math.abs(a[i * stride + k]);
            if (other > size) {
                size = other;
                best = i;
            }
        }
        return best;
    }

    private static void exchange(double[] a, int one, int other, int from, int stride) {
        if (one != other) {
            for (int j = from; j < stride; j++) {
                double kept = a[one + j];
                a[one + j] = a[other + j];
                a[other + j] = kept;
            }
        }
    }

    private static void substituteBack(double[] a, int n, int stride) {
        for (int i = n - 1; i >= 0; i--) {
            int row = i * stride;
            double inverse = 1 / a[row + i];
            for (int b = n; b < stride; b++) {
                double sum = a[row + b];
                for (int j = i + 1; j < n; j++) {
                    sum -= a[row + j] * a[j * stride + b];
                }
                a[row + b] = sum * inverse;
            }
        }
    }
}
