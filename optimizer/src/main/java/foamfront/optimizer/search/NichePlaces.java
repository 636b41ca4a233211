package foamfront.optimizer.search;

/**
 * Places among the survivors that are kept for niches, so that a kind of design that is slow to ripen does not die out.
 *
 * <p>A quarter of the survivors in all, for at most an eighth of the population in niches at a time, taking turns from
 * generation to generation. Not in the first third of the budget, where it costs more than it brings (measured).
 */
final class NichePlaces {
    private final int niches;
    private final int turns;
    private final int perNiche;
    private final FastSort sort = new FastSort();
    private final Thinning thinning = new Thinning();

    private boolean active;
    private long generation;

    NichePlaces(int niches, int survivors) {
        this.niches = niches;
        this.turns = Math.max(1, Math.min(niches, survivors / 8));
        this.perNiche = Math.max(1, survivors / 4 / turns);
    }

    /** Set before each generation. */
    void prepare(long generation, boolean afterFirstThird) {
        this.generation = generation;
        this.active = afterFirstThird && niches > 1;
    }

    int perNiche() {
        return perNiche;
    }

    boolean isActive() {
        return active;
    }

    /** The niches whose turn it is. */
    int[] turn() {
        int[] result = new int[turns];
        for (int k = 0; k < turns; k++) {
            result[k] = (int) ((generation * turns + k) % niches);
        }
        return result;
    }

    /** The members that hold reserved places: of each niche whose turn it is, the best and most spread. */
    int[] choose(int[] niche, double[][] objectives, double[] violation) {
        int[] result = new int[turns * perNiche];
        int count = 0;
        for (int wanted : turn()) {
            count = chooseFrom(wanted, niche, objectives, violation, result, count);
        }
        return java.util.Arrays.copyOf(result, count);
    }

    private int chooseFrom(
            int wanted, int[] niche, double[][] objectives, double[] violation, int[] result, int count) {
        int[] members = new int[niche.length];
        int size = 0;
        int leastViolating = -1;
        for (int i = 0; i < niche.length; i++) {
            if (niche[i] == wanted && violation[i] == 0) {
                members[size++] = i;
            } else if (niche[i] == wanted && (leastViolating < 0 || violation[i] < violation[leastViolating])) {
                leastViolating = i;
            }
        }
        if (size == 0) {
            if (leastViolating >= 0) {
                result[count++] = leastViolating;
            }
            return count;
        }
        int[] ranks = new int[niche.length];
        sort.rank(members, size, objectives, ranks);
        int best = 0;
        for (int k = 0; k < size; k++) {
            if (ranks[members[k]] == 0) {
                members[best++] = members[k];
            }
        }
        thinning.thin(members, best, objectives, perNiche);
        int taken = Math.min(best, perNiche);
        System.arraycopy(members, 0, result, count, taken);
        return count + taken;
    }
}
