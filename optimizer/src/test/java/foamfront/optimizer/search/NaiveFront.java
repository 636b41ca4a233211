package foamfront.optimizer.search;

import java.util.Arrays;

/** The plainest forms of what the search does fast, to compare with. */
final class NaiveFront {
    private NaiveFront() {}

    /** The non-dominated of points in the plane, from left to right. */
    static double[][] of(double[][] points) {
        double[][] sorted = points.clone();
        Arrays.sort(sorted, Arrays::compare);
        double[] lowest = {Double.POSITIVE_INFINITY};
        return Arrays.stream(sorted)
                .filter(point -> {
                    boolean better = point[1] < lowest[0];
                    lowest[0] = Math.min(lowest[0], point[1]);
                    return better;
                })
                .toArray(double[][]::new);
    }

    /** True where a is nowhere worse than b and somewhere better. */
    static boolean dominates(double[] a, double[] b) {
        boolean better = false;
        for (int i = 0; i < a.length; i++) {
            if (a[i] > b[i]) {
                return false;
            }
            better |= a[i] < b[i];
        }
        return better;
    }
}
