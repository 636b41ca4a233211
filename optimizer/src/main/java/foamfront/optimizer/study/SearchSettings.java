package foamfront.optimizer.study;

/**
 * How long and from where to search.
 *
 * @param evaluations designs to try
 * @param seed of every random stream
 * @param population designs kept from one generation to the next
 */
public record SearchSettings(long evaluations, long seed, int population) {}
