package foamfront.optimizer.study;

/**
 * How long and from where to search.
 *
 * @param evaluations designs to try
 * @param seed of every random stream
 * @param population designs kept from one generation to the next
 * @param time after which the search stops, s; infinite for never
 * @param stall the search stops where the front grew by less than this share over its last fifth; 0 for never
 * @param costStep difference in cost that counts, the side of the archive's boxes; NaN for that of the currency
 */
public record SearchSettings(long evaluations, long seed, int population, double time, double stall, double costStep) {
    /** A search that goes on until its budget is spent. */
    public SearchSettings(long evaluations, long seed, int population) {
        this(evaluations, seed, population, Double.POSITIVE_INFINITY, 0, Double.NaN);
    }
}
