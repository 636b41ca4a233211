package foamfront.optimizer.search;

import java.util.Arrays;

/**
 * Non-dominated sorting on plain arrays: vectors in lexicographic order are put one by one into the first front that does not
 * dominate them; with two numbers the front is found by bisection.
 *
 * <p>Zhang, Tian, Cheng, Jin, An efficient approach to nondominated sorting for evolutionary multiobjective optimization, IEEE
 * Transactions on Evolutionary Computation 19(2) (2015) 201-213 (from memory). Scratch arrays are kept between calls: one
 * object serves one thread.
 */
final class FastSort {
    /** The rank of a vector that repeats an earlier one. */
    static final int COPY = Integer.MAX_VALUE;

    private final LexicographicOrder order = new LexicographicOrder();
    private int[] sorted = new int[0];
    private int[] previous = new int[0];
    private int[] last = new int[0];

    /**
     * Ranks vectors: 0 for the non-dominated, 1 for those that only they dominate, and so on; {@link #COPY} for repeats.
     *
     * @param members indices into {@code vectors}; the first {@code n} are ranked
     * @param ranks receives the rank at each member's index
     * @return number of fronts
     */
    int rank(int[] members, int n, double[][] vectors, int[] ranks) {
        if (n == 0) {
            return 0;
        }
        grow(vectors.length);
        System.arraycopy(members, 0, sorted, 0, n);
        order.sort(sorted, n, vectors);
        int fronts = 0;
        int kept = -1;
        for (int k = 0; k < n; k++) {
            int member = sorted[k];
            double[] vector = vectors[member];
            if (kept >= 0 && LexicographicOrder.compare(vectors[kept], vector) == 0) {
                ranks[member] = COPY;
                continue;
            }
            kept = member;
            int front = front(vectors, vector, fronts);
            ranks[member] = front;
            previous[member] = front < fronts ? last[front] : -1;
            last[front] = member;
            fronts = Math.max(fronts, front + 1);
        }
        return fronts;
    }

    /** In one number every vector has a front of its own. */
    private int front(double[][] vectors, double[] vector, int fronts) {
        return switch (vector.length) {
            case 1 -> fronts;
            case 2 -> bisect(vectors, vector[1], fronts);
            default -> scan(vectors, vector, fronts);
        };
    }

    /** The last member of each front has its lowest second objective, and these rise from front to front. */
    private int bisect(double[][] vectors, double second, int fronts) {
        int low = 0;
        int high = fronts;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (vectors[last[middle]][1] <= second) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private int scan(double[][] vectors, double[] vector, int fronts) {
        int front = 0;
        while (front < fronts && dominatedBy(vectors, vector, last[front])) {
            front++;
        }
        return front;
    }

    /** Later members first: they are the nearest in the order and the likeliest to dominate. */
    private boolean dominatedBy(double[][] vectors, double[] vector, int newest) {
        for (int member = newest; member >= 0; member = previous[member]) {
            double[] other = vectors[member];
            int i = vector.length - 1;
            while (i > 0 && other[i] <= vector[i]) {
                i--;
            }
            if (i == 0) {
                return true;
            }
        }
        return false;
    }

    private void grow(int size) {
        if (sorted.length < size) {
            sorted = new int[size];
            previous = new int[size];
            last = Arrays.copyOf(last, size);
        }
    }
}
