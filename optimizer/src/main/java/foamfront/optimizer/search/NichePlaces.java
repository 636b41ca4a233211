package foamfront.optimizer.search;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Places among the survivors that are kept for niches, so that a kind of design that is slow to ripen does not die out.
 *
 * <p>A sixth of the survivors in all, two or more to a niche, taking turns from generation to generation where there are many
 * niches. Not in the first third of the budget, where they cost more than they bring, and not in the last fifth, where the best is
 * refined (both measured).
 */
final class NichePlaces {
    /** One survivor in this many holds a place. */
    private static final int SHARE = 6;

    private static final int PER_NICHE = 2;

    private static final double FROM = 1.0 / 3;
    private static final double UNTIL = 0.8;

    private final int niches;
    private final int turns;
    private final int perNiche;
    private final LexicographicOrder order = new LexicographicOrder();
    private final Thinning thinning = new Thinning();

    private boolean open;
    private long generation;

    NichePlaces(int niches, int survivors) {
        this.niches = niches;
        this.turns = Math.max(1, Math.min(niches, survivors / SHARE / PER_NICHE));
        this.perNiche = Math.max(1, survivors / SHARE / turns);
    }

    /**
     * Set before each generation.
     *
     * @param spent share of the budget
     */
    void prepare(long generation, double spent) {
        this.generation = generation;
        this.open = niches > 1 && spent >= FROM && spent < UNTIL;
    }

    int perNiche() {
        return perNiche;
    }

    boolean areMany() {
        return niches > 1;
    }

    boolean areOpen() {
        return open;
    }

    /** The niches whose turn it is. */
    int[] turn() {
        int[] result = new int[turns];
        for (int k = 0; k < turns; k++) {
            result[k] = (int) ((generation * turns + k) % niches);
        }
        return result;
    }

    /**
     * The members that hold reserved places: of each niche whose turn it is, those of the lowest rank among all, where the niche
     * comes nearest to the joint front (its own front may run on far behind it), and of equal rank the most spread.
     *
     * @param niche of each member, negative for none
     * @param ranks of the feasible among all
     */
    int[] choose(int[] niche, int[] ranks, double[][] objectives, double[] violation) {
        double[][] keys =
                Arrays.stream(violation).mapToObj(v -> new double[] {v}).toArray(double[][]::new);
        int[] result = new int[turns * perNiche];
        int count = 0;
        for (int wanted : turn()) {
            int[] members = IntStream.range(0, niche.length)
                    .filter(i -> niche[i] == wanted)
                    .toArray();
            int end = count + Math.min(perNiche, members.length);
            count = chooseFeasible(members, ranks, objectives, violation, result, count, end);
            int[] infeasible =
                    Arrays.stream(members).filter(i -> violation[i] > 0).toArray();
            order.sort(infeasible, infeasible.length, keys);
            for (int k = 0; k < infeasible.length && count < end; k++) {
                result[count++] = infeasible[k];
            }
        }
        return Arrays.copyOf(result, count);
    }

    private int chooseFeasible(
            int[] members, int[] ranks, double[][] objectives, double[] violation, int[] result, int from, int end) {
        int count = from;
        int rank = -1;
        while (count < end) {
            int above = rank;
            rank = Arrays.stream(members)
                    .filter(i -> violation[i] == 0 && ranks[i] > above)
                    .map(i -> ranks[i])
                    .min()
                    .orElse(FastSort.COPY);
            if (rank == FastSort.COPY) {
                return count;
            }
            int now = rank;
            int[] level = Arrays.stream(members)
                    .filter(i -> violation[i] == 0 && ranks[i] == now)
                    .toArray();
            int taken = Math.min(level.length, end - count);
            thinning.thin(level, level.length, objectives, taken);
            System.arraycopy(level, 0, result, count, taken);
            count += taken;
        }
        return count;
    }
}
