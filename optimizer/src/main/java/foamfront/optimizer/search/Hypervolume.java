package foamfront.optimizer.search;

import java.util.Arrays;
import java.util.Comparator;

/**
 * The volume that a front dominates up to a reference point, exact, all objectives minimised.
 *
 * <p>Two objectives: a sum of rectangles. Three: slices along the last objective over a staircase (Fonseca, Paquete,
 * López-Ibáñez, An improved dimension-sweep algorithm for the hypervolume indicator, IEEE CEC 2006, idea). More: each point's
 * exclusive volume by recursion on the set cut to it (While, Bradstreet, Barone, A fast way of calculating exact hypervolumes,
 * IEEE Transactions on Evolutionary Computation 16(1) (2012) 86-95). Both from memory.
 */
final class Hypervolume {
    private Hypervolume() {}

    static double of(double[][] points, double[] reference) {
        double[][] inside = Arrays.stream(points)
                .filter(point -> isInside(point, reference))
                .toArray(double[][]::new);
        return volume(inside, inside.length, reference, reference.length);
    }

    private static boolean isInside(double[] point, double[] reference) {
        for (int i = 0; i < reference.length; i++) {
            if (!(point[i] < reference[i])) {
                return false;
            }
        }
        return true;
    }

    /** Of the first {@code n} points in their first {@code dimensions} objectives. */
    private static double volume(double[][] points, int n, double[] reference, int dimensions) {
        if (n == 0) {
            return 0;
        }
        double[][] sorted = Arrays.copyOf(points, n);
        Arrays.sort(sorted, Comparator.comparingDouble((double[] point) -> point[dimensions - 1]));
        return switch (dimensions) {
            case 1 -> reference[0] - sorted[0][0];
            case 2 -> area(sorted, reference);
            case 3 -> slices(sorted, reference);
            default -> exclusive(sorted, reference, dimensions);
        };
    }

    private static double area(double[][] sorted, double[] reference) {
        double sum = 0;
        double left = reference[0];
        for (double[] point : sorted) {
            if (point[0] < left) {
                sum += (left - point[0]) * (reference[1] - point[1]);
                left = point[0];
            }
        }
        return sum;
    }

    private static double slices(double[][] sorted, double[] reference) {
        Staircase stairs = new Staircase(sorted.length, reference[0], reference[1]);
        double sum = 0;
        double level = sorted[0][2];
        for (double[] point : sorted) {
            sum += stairs.area() * (point[2] - level);
            level = point[2];
            stairs.add(point[0], point[1]);
        }
        return sum + stairs.area() * (reference[2] - level);
    }

    /** Worst in the last objective first, so that the limited sets are small in it. */
    private static double exclusive(double[][] sorted, double[] reference, int dimensions) {
        double sum = 0;
        int last = dimensions - 1;
        for (int k = 0; k < sorted.length; k++) {
            double[] point = sorted[k];
            double[][] cut = new double[k][];
            int size = 0;
            for (int j = 0; j < k; j++) {
                size = addNondominated(cut, size, worst(sorted[j], point, last), last);
            }
            double box = 1;
            for (int i = 0; i < last; i++) {
                box *= reference[i] - point[i];
            }
            sum += (reference[last] - point[last]) * (box - volume(cut, size, reference, last));
        }
        return sum;
    }

    private static double[] worst(double[] a, double[] b, int dimensions) {
        double[] result = new double[dimensions];
        for (int i = 0; i < dimensions; i++) {
            result[i] = Math.max(a[i], b[i]);
        }
        return result;
    }

    private static int addNondominated(double[][] set, int size, double[] added, int dimensions) {
        int kept = 0;
        for (int k = 0; k < size; k++) {
            if (covers(set[k], added, dimensions)) {
                return size;
            }
        }
        for (int k = 0; k < size; k++) {
            if (!covers(added, set[k], dimensions)) {
                set[kept++] = set[k];
            }
        }
        set[kept++] = added;
        return kept;
    }

    private static boolean covers(double[] a, double[] b, int dimensions) {
        for (int i = 0; i < dimensions; i++) {
            if (a[i] > b[i]) {
                return false;
            }
        }
        return true;
    }
}
