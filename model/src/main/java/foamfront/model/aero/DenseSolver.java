package foamfront.model.aero;

/**
 * Gaussian elimination with partial pivoting on rows of one array, several right-hand sides at once. G. H. Golub and
 * C. F. Van Loan, Matrix Computations, 1996, section 3.4 (from memory).
 */
final class DenseSolver {
    private static final int FOUR = 4;

    private DenseSolver() {}

    /**
     * Solves in place. Row i starts at {@code i * stride}: n coefficients, then the right-hand sides, which the solutions
     * replace.
     */
    static void solve(double[] a, int n, int stride) {
        for (int k = 0; k + 1 < n; k += 2) {
            eliminateTwo(a, n, stride, k);
        }
        substituteBack(a, n, stride);
    }

    /** Two columns in one pass over the rows below, in the order of operations of one after the other. */
    private static void eliminateTwo(double[] a, int n, int stride, int k) {
        exchange(a, k * stride, pivot(a, n, stride, k) * stride, k, stride);
        int first = k * stride;
        double inverse = 1 / a[first + k];
        for (int i = k + 1; i < n; i++) {
            int row = i * stride;
            a[row + k] *= inverse;
            a[row + k + 1] -= a[row + k] * a[first + k + 1];
        }
        int second = first + stride;
        exchange(a, second, pivot(a, n, stride, k + 1) * stride, k, stride);
        double factor = a[second + k];
        for (int j = k + 2; j < stride; j++) {
            a[second + j] -= factor * a[first + j];
        }
        inverse = 1 / a[second + k + 1];
        for (int i = k + 2; i < n; i++) {
            int row = i * stride;
            double one = a[row + k];
            double other = a[row + k + 1] * inverse;
            for (int j = k + 2; j < stride; j++) {
                a[row + j] = a[row + j] - one * a[first + j] - other * a[second + j];
            }
        }
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
        int b = n;
        while (b + FOUR <= stride) {
            substituteFour(a, n, stride, b);
            b += FOUR;
        }
        while (b < stride) {
            substituteOne(a, n, stride, b);
            b++;
        }
    }

    /** Four columns side by side: each sum waits for its own last term only, which makes this half again as fast. */
    private static void substituteFour(double[] a, int n, int stride, int b) {
        for (int i = n - 1; i >= 0; i--) {
            int row = i * stride;
            double s0 = a[row + b];
            double s1 = a[row + b + 1];
            double s2 = a[row + b + 2];
            double s3 = a[row + b + 3];
            for (int j = i + 1; j < n; j++) {
                double factor = a[row + j];
                int at = j * stride + b;
                s0 -= factor * a[at];
                s1 -= factor * a[at + 1];
                s2 -= factor * a[at + 2];
                s3 -= factor * a[at + 3];
            }
            double inverse = 1 / a[row + i];
            a[row + b] = s0 * inverse;
            a[row + b + 1] = s1 * inverse;
            a[row + b + 2] = s2 * inverse;
            a[row + b + 3] = s3 * inverse;
        }
    }

    private static void substituteOne(double[] a, int n, int stride, int b) {
        for (int i = n - 1; i >= 0; i--) {
            int row = i * stride;
            double sum = a[row + b];
            for (int j = i + 1; j < n; j++) {
                sum -= a[row + j] * a[j * stride + b];
            }
            a[row + b] = sum * (1 / a[row + i]);
        }
    }
}
