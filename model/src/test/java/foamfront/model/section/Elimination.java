package foamfront.model.section;

/** Gauss's elimination with row exchange, several right-hand sides behind the matrix. */
final class Elimination {
    private Elimination() {}

    /** Each solution of the rows, which are used up. */
    static double[][] solve(double[][] rows) {
        int n = rows.length;
        int sides = rows[0].length - n;
        for (int k = 0; k < n; k++) {
            int pivot = k;
            for (int i = k + 1; i < n; i++) {
                pivot = Math.abs(rows[i][k]) > Math.abs(rows[pivot][k]) ? i : pivot;
            }
            double[] row = rows[pivot];
            rows[pivot] = rows[k];
            rows[k] = row;
            for (int i = k + 1; i < n; i++) {
                double factor = rows[i][k] / row[k];
                for (int j = k; j < n + sides; j++) {
                    rows[i][j] -= factor * row[j];
                }
            }
        }
        double[][] solutions = new double[sides][n];
        for (int s = 0; s < sides; s++) {
            for (int i = n - 1; i >= 0; i--) {
                double sum = rows[i][n + s];
                for (int j = i + 1; j < n; j++) {
                    sum -= rows[i][j] * solutions[s][j];
                }
                solutions[s][i] = sum / rows[i][i];
            }
        }
        return solutions;
    }
}
