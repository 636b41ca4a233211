package foamfront.optimizer.search;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Infeasible designs that are worth a place beside feasible ones: no feasible design is as good in every objective, so the way
 * to a better front may lead past them, along a limit from its other side. Sorted without dominance in objectives and violation
 * together, the least violation first within a tier.
 *
 * <p>The idea: Ray, Singh, Isaacs, Smith, Infeasibility driven evolutionary algorithm for constrained optimization, in
 * Mezura-Montes (ed.), Constraint-handling in evolutionary optimization, Springer 2009 (from memory). Leaving out what feasible
 * designs dominate is a judgement, measured.
 */
final class Promising {
    private final FastSort sort = new FastSort();
    private final LexicographicOrder order = new LexicographicOrder();
    private int[] tiers = new int[0];
    /** Place in the front of what beat the last candidate: the likeliest to beat the next. */
    private int strongest;

    /**
     * The most promising first.
     *
     * @param candidates infeasible ones
     * @param front feasible ones that no other dominates
     * @param most how many at most
     */
    int[] choose(int[] candidates, int[] front, double[][] objectives, double[] violation, int most) {
        strongest = 0;
        int[] promising = Arrays.stream(candidates)
                .filter(i -> objectives[i].length > 0 && isBeyond(objectives[i], front, objectives))
                .toArray();
        double[][] sides = new double[violation.length][];
        for (int member : promising) {
            int count = objectives[member].length;
            sides[member] = Arrays.copyOf(objectives[member], count + 1);
            sides[member][count] = violation[member];
        }
        tiers = new int[violation.length];
        sort.rank(promising, promising.length, sides, tiers);
        double[][] keys = new double[violation.length][];
        for (int member : promising) {
            keys[member] = new double[] {tiers[member], violation[member]};
        }
        order.sort(promising, promising.length, keys);
        return IntStream.of(promising)
                .filter(member -> tiers[member] != FastSort.COPY)
                .limit(most)
                .toArray();
    }

    /** Of one that was chosen last: 0 where no other infeasible one is as good in objectives and violation. */
    int tier(int member) {
        return tiers[member];
    }

    private boolean isBeyond(double[] candidate, int[] front, double[][] objectives) {
        for (int k = 0; k < front.length; k++) {
            int place = (strongest + k) % front.length;
            if (isBeaten(candidate, objectives[front[place]])) {
                strongest = place;
                return false;
            }
        }
        return true;
    }

    private static boolean isBeaten(double[] candidate, double[] other) {
        int i = candidate.length - 1;
        while (i >= 0 && other[i] <= candidate[i]) {
            i--;
        }
        return i < 0;
    }
}
