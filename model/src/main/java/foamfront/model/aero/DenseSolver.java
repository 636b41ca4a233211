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
        int k = 0;
        while (k + FOUR < n) {
            eliminate(a, n, stride, k, FOUR);
            updateBehindFour(a, stride, k);
            updateBelowFour(a, n, stride, k);
            k += FOUR;
        }
        eliminate(a, n, stride, k, n - k);
        updateBehind(a, n, stride, k);
        substituteBack(a, n, stride);
    }

    /** Eliminates within up to four columns; whole rows change places, but what stands behind the columns is not yet touched. */
    private static void eliminate(double[] a, int n, int stride, int k, int columns) {
        for (int c = k; c < k + columns; c++) {
            exchange(a, c * stride, pivot(a, n, stride, c) * stride, k, stride);
            eliminateOne(a, n, stride, c, k + columns - 1 - c);
        }
    }

    /** One column, and its effect on the next {@code behind}: written out, since loops of three turns cost more than they do. */
    private static void eliminateOne(double[] a, int n, int stride, int c, int behind) {
        int top = c * stride + c;
        double inverse = 1 / a[top];
        double u1 = behind > 0 ? a[top + 1] : 0;
        double u2 = behind > 1 ? a[top + 2] : 0;
        double u3 = behind > 2 ? a[top + 3] : 0;
        for (int at = top + stride; at < n * stride; at += stride) {
            double factor = a[at] * inverse;
            a[at] = factor;
            if (behind > 0) {
                a[at + 1] -= factor * u1;
            }
            if (behind > 1) {
                a[at + 2] -= factor * u2;
            }
            if (behind > 2) {
                a[at + 3] -= factor * u3;
            }
        }
    }

    /** The rest of the four pivot rows. */
    private static void updateBehindFour(double[] a, int stride, int k) {
        int first = k * stride;
        int second = first + stride;
        int third = second + stride;
        int fourth = third + stride;
        double two = a[second + k];
        double three = a[third + k];
        double threeTwo = a[third + k + 1];
        double four = a[fourth + k];
        double fourTwo = a[fourth + k + 1];
        double fourThree = a[fourth + k + 2];
        for (int j = k + FOUR; j < stride; j++) {
            double u0 = a[first + j];
            double u1 = a[second + j] - two * u0;
            double u2 = a[third + j] - three * u0 - threeTwo * u1;
            a[second + j] = u1;
            a[third + j] = u2;
            a[fourth + j] = a[fourth + j] - four * u0 - fourTwo * u1 - fourThree * u2;
        }
    }

    /** All rows below by the four pivot rows in one pass, in the order of operations of one after the other. */
    private static void updateBelowFour(double[] a, int n, int stride, int k) {
        int first = k * stride;
        int second = first + stride;
        int third = second + stride;
        int fourth = third + stride;
        for (int i = k + FOUR; i < n; i++) {
            int row = i * stride;
            double f0 = a[row + k];
            double f1 = a[row + k + 1];
            double f2 = a[row + k + 2];
            double f3 = a[row + k + 3];
            for (int j = k + FOUR; j < stride; j++) {
                a[row + j] =
                        a[row + j] - f0 * a[first + j] - f1 * a[second + j] - f2 * a[third + j] - f3 * a[fourth + j];
            }
        }
    }

    /** Right-hand sides of the last, at most four, rows. */
    private static void updateBehind(double[] a, int n, int stride, int k) {
        for (int i = k + 1; i < n; i++) {
            for (int c = k; c < i; c++) {
                double factor = a[i * stride + c];
                for (int j = n; j < stride; j++) {
                    a[i * stride + j] -= factor * a[c * stride + j];
                }
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
