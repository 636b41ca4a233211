package foamfront.optimizer.front;

/**
 * The best compromise of a front: nearest to the best of every aim and farthest from the worst.
 *
 * <p>TOPSIS: Hwang and Yoon, Multiple Attribute Decision Making, Springer, 1981 (from memory): columns divided by their Euclidean
 * length, equal weights, closeness = d⁻ / (d⁺ + d⁻) to the worst and best corner. Adding a design that nobody would choose can
 * change the order (rank reversal): a hint, no judgement.
 */
final class Compromise {
    private Compromise() {}

    /** Index of the row of greatest closeness; of equals the first. −1 for no rows. */
    static int best(double[][] costs) {
        if (costs.length == 0) {
            return -1;
        }
        double[] weights = new double[costs[0].length];
        java.util.Arrays.fill(weights, 1.0 / weights.length);
        double[] closeness = closeness(costs, weights);
        int best = 0;
        for (int i = 1; i < closeness.length; i++) {
            if (closeness[i] > closeness[best]) {
                best = i;
            }
        }
        return best;
    }

    /** Closeness of each row, 0 to 1; costs are minimised. */
    static double[] closeness(double[][] costs, double[] weights) {
        int rows = costs.length;
        double[] near = new double[rows];
        double[] far = new double[rows];
        for (int k = 0; k < weights.length; k++) {
            double squares = 0;
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (double[] row : costs) {
                squares += row[k] * row[k];
                least = Math.min(least, row[k]);
                most = Math.max(most, row[k]);
            }
            double scale = squares > 0 ? weights[k] / Math.sqrt(squares) : 0;
            for (int i = 0; i < rows; i++) {
                double toBest = scale * (costs[i][k] - least);
                double toWorst = scale * (most - costs[i][k]);
                near[i] += toBest * toBest;
                far[i] += toWorst * toWorst;
            }
        }
        double[] closeness = new double[rows];
        for (int i = 0; i < rows; i++) {
            double sum = Math.sqrt(near[i]) + Math.sqrt(far[i]);
            closeness[i] = sum > 0 ? Math.sqrt(far[i]) / sum : 1;
        }
        return closeness;
    }
}
