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

    /** Passes after which a descent starts anew: short ones met the bound oftener than long ones (measured). */
    private static final int DESCENT = 1000;

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

    /**
     * Best score of about {@code tries} passes, and as many across the sheet where these leave more than there must be; leaves that
     * packing in the packer.
     */
    double thorough(long seed, int tries) {
        quick(Double.NEGATIVE_INFINITY);
        state = seed;
        int each = tries / PackingOrders.COUNT;
        for (int which = 0; which < PackingOrders.COUNT && packer.size() > 1; which++) {
            descend(which, each);
        }
        packer.pack(best, bestRule);
        if (bestScore > packer.goal() + Skyline.FLUSH) {
            across(seed, tries);
        }
        return bestScore;
    }

    /**
     * Fills the sheets from the side. A strip is asked whether the rectangles, heaped as high as its bound from its left edge, stay
     * within its width: that length tells neighbouring orders apart far oftener than the height of a low strip does (measured:
     * 29 rectangles on a strip of 60 by 30 come out without waste from each of twelve seeds in 92 to 13 500 passes; upright from
     * half of them in 64 000).
     */
    private void across(long seed, int tries) {
        RectanglePacker side = packer.across();
        OrderSearch search = new OrderSearch(side);
        double enough = (packer.strip() ? packer.breadth() : packer.goal()) + Skyline.FLUSH;
        double reached = search.restarted(seed, tries, enough);
        if (packer.strip() ? reached <= enough : reached < bestScore) {
            packer.takeAcross(side);
            bestScore = packer.score();
        }
    }

    /** Best score of short descents one after the other, over when it is at most {@code enough}. */
    private double restarted(long seed, int tries, double enough) {
        quick(Double.NEGATIVE_INFINITY);
        state = seed;
        int rounds = tries / DESCENT;
        for (int round = 0; round < rounds && bestScore > enough; round++) {
            descend(round % PackingOrders.COUNT, DESCENT);
        }
        packer.pack(best, bestRule);
        return bestScore;
    }

    private void descend(int which, int tries) {
        int n = packer.size();
        PackingOrders.fill(order, packer, which);
        packer.pack(order, RectanglePacker.Rule.FLUSH);
        double current = packer.score();
        int[] kept = Arrays.copyOf(order, n);
        double enough = packer.strip() ? packer.goal() + Skyline.FLUSH : 0;
        for (int k = 0; k < tries && bestScore > enough; k++) {
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
