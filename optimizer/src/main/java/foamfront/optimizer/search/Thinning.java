package foamfront.optimizer.search;

import java.util.Arrays;

/**
 * Thins a front one design at a time, always the most crowded, and tells how much room the remaining ones have.
 *
 * <p>Two objectives: crowding distance (Deb, Pratap, Agarwal, Meyarivan, IEEE Transactions on Evolutionary Computation 6(2)
 * (2002) 182-197, section III.B), renewed after each removal. Three and more, where crowding misleads: the product of the
 * distances to as many nearest neighbours as there are objectives (Kukkonen and Deb, A fast and effective method for pruning
 * of non-dominated solutions in many-objective problems, PPSN IX, 2006; from memory).
 */
final class Thinning {
    private final LexicographicOrder order = new LexicographicOrder();
    private double[] room = new double[0];
    private double[] low = new double[0];
    private double[] scale = new double[0];

    /**
     * Moves the members to keep to the front of the array.
     *
     * @param members indices into {@code vectors}, the first {@code n} of them the front; distinct vectors
     * @param keep how many stay; n or more keeps all
     * @return the room of each kept member at its own index into {@code vectors}, valid until the next call
     */
    double[] thin(int[] members, int n, double[][] vectors, int keep) {
        if (room.length < vectors.length) {
            room = new double[vectors.length];
        }
        if (n > 0) {
            measure(members, n, vectors);
            if (vectors[members[0]].length <= 2) {
                byCrowding(members, n, vectors, keep);
            } else {
                byNeighbours(members, n, vectors, keep);
            }
        }
        return room;
    }

    private void measure(int[] members, int n, double[][] vectors) {
        int objectives = vectors[members[0]].length;
        low = new double[objectives];
        scale = new double[objectives];
        for (int i = 0; i < objectives; i++) {
            double highest = Double.NEGATIVE_INFINITY;
            low[i] = Double.POSITIVE_INFINITY;
            for (int k = 0; k < n; k++) {
                low[i] = Math.min(low[i], vectors[members[k]][i]);
                highest = Math.max(highest, vectors[members[k]][i]);
            }
            scale[i] = highest > low[i] ? 1 / (highest - low[i]) : 0;
        }
    }

    private void byCrowding(int[] members, int n, double[][] vectors, int keep) {
        order.sort(members, n, vectors);
        int[] before = new int[n];
        int[] after = new int[n];
        double[] gap = new double[n];
        for (int k = 0; k < n; k++) {
            before[k] = k - 1;
            after[k] = k + 1;
        }
        for (int k = 0; k < n; k++) {
            gap[k] = gap(members, n, vectors, before[k], after[k]);
        }
        int[] alive = new int[n];
        Arrays.setAll(alive, k -> k);
        int left = n;
        while (left > Math.max(0, keep)) {
            int most = 0;
            for (int k = 1; k < left; k++) {
                if (gap[alive[k]] < gap[alive[most]]) {
                    most = k;
                }
            }
            int gone = alive[most];
            System.arraycopy(alive, most + 1, alive, most, --left - most);
            int p = before[gone];
            int q = after[gone];
            if (p >= 0) {
                after[p] = q;
                gap[p] = gap(members, n, vectors, before[p], q);
            }
            if (q < n) {
                before[q] = p;
                gap[q] = gap(members, n, vectors, p, after[q]);
            }
        }
        int[] kept = new int[left];
        for (int k = 0; k < left; k++) {
            kept[k] = members[alive[k]];
            room[kept[k]] = gap[alive[k]];
        }
        System.arraycopy(kept, 0, members, 0, left);
    }

    private double gap(int[] members, int n, double[][] vectors, int p, int q) {
        if (p < 0 || q >= n) {
            return Double.POSITIVE_INFINITY;
        }
        double[] a = vectors[members[p]];
        double[] b = vectors[members[q]];
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += Math.abs(b[i] - a[i]) * scale[i];
        }
        return sum;
    }

    private void byNeighbours(int[] members, int n, double[][] vectors, int keep) {
        Neighbours neighbours = new Neighbours(scaled(members, n, vectors));
        for (int best : extremes(members, n, vectors)) {
            neighbours.protect(best);
        }
        for (int left = n; left > Math.max(0, keep); left--) {
            neighbours.removeMostCrowded();
        }
        int left = 0;
        for (int k = 0; k < n; k++) {
            if (neighbours.isAlive(k)) {
                room[members[k]] = neighbours.room(k);
                members[left++] = members[k];
            }
        }
    }

    private double[][] scaled(int[] members, int n, double[][] vectors) {
        double[][] points = new double[n][low.length];
        for (int k = 0; k < n; k++) {
            for (int i = 0; i < low.length; i++) {
                points[k][i] = (vectors[members[k]][i] - low[i]) * scale[i];
            }
        }
        return points;
    }

    /** The member best in each objective; among equals the first in lexicographic order of the rest. */
    private static int[] extremes(int[] members, int n, double[][] vectors) {
        int[] best = new int[vectors[members[0]].length];
        for (int i = 0; i < best.length; i++) {
            for (int k = 1; k < n; k++) {
                double[] challenger = vectors[members[k]];
                double[] holder = vectors[members[best[i]]];
                if (challenger[i] < holder[i]
                        || (challenger[i] == holder[i] && LexicographicOrder.compare(challenger, holder) < 0)) {
                    best[i] = k;
                }
            }
        }
        return best;
    }
}
