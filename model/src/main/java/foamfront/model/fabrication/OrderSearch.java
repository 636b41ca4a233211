package foamfront.model.fabrication;

import java.util.Arrays;

/**
 * Passes of a {@link RectanglePacker} in several orders. The quick search tries both rules in the four sorted orders and stops at
 * the bound. The thorough one goes on from each sorted order by exchanging two rectangles or moving one, keeping what is not
 * worse. Its moves come from a linear congruential sequence (D. E. Knuth, The Art of Computer Programming 2, multiplier
 * 6364136223846793005, from memory) started at a given seed: part of the heuristic, no source of chance.
 */
final class OrderSearch {
    private static final long MULTIPLIER = 6364136223846793005L;
    private static final long INCREMENT = 1442695040888963407L;

    private final RectanglePacker packer;
    private int[] order = new int[64];
    private int[] best = new int[64];
    private RectanglePacker.Rule bestRule = RectanglePacker.Rule.FLUSH;
    private double bestScore;
    private long state;

    OrderSearch(RectanglePacker packer) {
        this.packer = packer;
    }

    /** Best score of the sorted orders; stops once it is at most {@code enough}. The packer holds the last pass tried. */
    double quick(double enough) {
        int n = packer.size();
        if (order.length < n) {
            order = new int[2 * n];
            best = new int[2 * n];
        }
        bestScore = Double.POSITIVE_INFINITY;
        for (int which = 0; which < PackingOrders.COUNT; which++) {
            PackingOrders.fill(order, packer, which);
            boolean all = enough == Double.NEGATIVE_INFINITY;
            if (attempt(RectanglePacker.Rule.FLUSH, all) <= enough
                    || attempt(RectanglePacker.Rule.WIDEST, all) <= enough) {
                return bestScore;
            }
        }
        return bestScore;
    }

    /** Passes that cannot save a whole bin are given up unless the best of {@code all} is wanted. */
    private double attempt(RectanglePacker.Rule rule, boolean all) {
        int most = all || bestScore > MANY ? Integer.MAX_VALUE : (int) Math.ceil(bestScore - Skyline.FLUSH) - 1;
        if (packer.strip()) {
            most = Integer.MAX_VALUE;
        }
        if (packer.pack(order, rule, most)) {
            keep(rule);
        }
        return bestScore;
    }

    /** More bins than any parts list needs. */
    private static final double MANY = 1e6;

    private void keep(RectanglePacker.Rule rule) {
        double score = packer.score();
        if (score < bestScore) {
            bestScore = score;
            bestRule = rule;
            System.arraycopy(order, 0, best, 0, packer.size());
        }
    }

    /** Best score of about {@code tries} passes; leaves that packing in the packer. */
    double thorough(long seed, int tries) {
        quick(Double.NEGATIVE_INFINITY);
        state = seed;
        int each = tries / PackingOrders.COUNT;
        for (int which = 0; which < PackingOrders.COUNT && packer.size() > 1; which++) {
            PackingOrders.fill(order, packer, which);
            descend(each);
        }
        packer.pack(best, bestRule);
        return bestScore;
    }

    private void descend(int tries) {
        int n = packer.size();
        packer.pack(order, RectanglePacker.Rule.FLUSH);
        double current = packer.score();
        int[] kept = Arrays.copyOf(order, n);
        for (int k = 0; k < tries; k++) {
            System.arraycopy(kept, 0, order, 0, n);
            move(n);
            packer.pack(order, RectanglePacker.Rule.FLUSH);
            if (packer.score() <= current) {
                current = packer.score();
                System.arraycopy(order, 0, kept, 0, n);
                keep(RectanglePacker.Rule.FLUSH);
            }
        }
    }

    private void move(int n) {
        int i = next(n);
        int j = next(n);
        int moved = order[i];
        if (next(2) == 0) {
            order[i] = order[j];
        } else if (i < j) {
            System.arraycopy(order, i + 1, order, i, j - i);
        } else {
            System.arraycopy(order, j, order, j + 1, i - j);
        }
        order[j] = moved;
    }

    private int next(int bound) {
        state = state * MULTIPLIER + INCREMENT;
        return (int) ((state >>> 33) % bound);
    }
}
