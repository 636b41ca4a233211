package foamfront.optimizer.search;

import foamfront.model.units.Require;

/**
 * How long and how widely to search.
 *
 * @param evaluations the budget; repeats of a known design do not count
 * @param seed of all random numbers
 * @param threads workers; the result does not depend on it
 * @param population survivors per generation, over all islands
 * @param archiveCap most designs in the front before its boxes double
 * @param stall the search ends when the dominated volume grew by less than this share over the last fifth of it; 0 for never
 */
public record Settings(long evaluations, long seed, int threads, int population, int archiveCap, double stall) {
    /** Budgets up to this are searched by two islands, larger ones by four (design decision). */
    private static final long SMALL_BUDGET = 100_000;

    /** Above this a population of 1000 still sees thousands of generations (judgement). */
    private static final long LARGE_BUDGET = 5_000_000;

    /** A population of fewer than this many survivors an island is not split: halves of it lose what is rare (measured). */
    private static final int SPARE_ISLAND = 100;

    /** An island needs a few parents to choose among. */
    private static final int SMALLEST_ISLAND = 8;

    public Settings {
        Require.positive("evaluations", (double) evaluations, "");
        Require.positive("threads", threads, "");
        Require.positive("population", population, "");
        Require.positive("archive cap", archiveCap, "");
    }

    /** A search that goes on until its budget is spent. */
    public Settings(long evaluations, long seed, int threads, int population, int archiveCap) {
        this(evaluations, seed, threads, population, archiveCap, 0);
    }

    /** A population that suits the budget, and an archive of 1000. */
    public Settings(long evaluations, long seed, int threads) {
        this(evaluations, seed, threads, suitablePopulation(evaluations), 1000);
    }

    /** 100 to an island, 250 where there is time for many generations of them: fewer lose kinds too early (measured). */
    private static int suitablePopulation(long evaluations) {
        if (evaluations <= SMALL_BUDGET) {
            return 200;
        }
        return evaluations <= LARGE_BUDGET ? 400 : 1000;
    }

    /** From the budget, never from the threads, so that the result does not depend on the machine. */
    int islands() {
        return Math.max(1, Math.min(evaluations <= SMALL_BUDGET ? 2 : 4, population / SPARE_ISLAND));
    }

    /** Survivors of one island, even because parents come in pairs. */
    int islandPopulation() {
        int share = Math.max(SMALLEST_ISLAND, population / islands());
        return share + share % 2;
    }

    long islandBudget(int island) {
        return evaluations / islands() + (island < evaluations % islands() ? 1 : 0);
    }
}
