package foamfront.optimizer.search;

import java.util.function.BooleanSupplier;

/** Where a search begins. */
public final class Search {
    private Search() {}

    /**
     * Searches until the budget is spent, the space is exhausted, or {@code stop} says so.
     *
     * @param listener told at the end of each epoch, on this thread; what it hears does not depend on the threads
     * @param stop asked at the end of each generation, from several threads; after true the front so far is returned
     * @throws IllegalArgumentException for a problem that contradicts itself
     * @throws IllegalStateException if this thread is interrupted, or a worker fails with an error that is no exception of the
     *     evaluator
     */
    public static Outcome run(Problem problem, Settings settings, Listener listener, BooleanSupplier stop) {
        return run(problem, settings, Checkpoints.NONE, listener, stop);
    }

    /**
     * The same, keeping its state on the way. From a kept state, under the same problem and settings but for threads and stall,
     * it comes to the outcome of a search that was never stopped.
     *
     * @throws IllegalArgumentException for a state of another problem
     */
    public static Outcome run(
            Problem problem, Settings settings, Checkpoints checkpoints, Listener listener, BooleanSupplier stop) {
        try (Archipelago archipelago = new Archipelago(problem, settings)) {
            archipelago.run(checkpoints, listener, stop);
            return archipelago.outcome();
        }
    }
}
