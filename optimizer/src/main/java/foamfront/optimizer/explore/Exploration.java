package foamfront.optimizer.explore;

import foamfront.model.design.Design;
import foamfront.optimizer.search.Checkpoints;
import foamfront.optimizer.search.Listener;
import foamfront.optimizer.search.Search;
import foamfront.optimizer.search.Settings;
import java.util.List;
import java.util.function.BooleanSupplier;

/** Where an exploration begins. */
public final class Exploration {
    /** Most designs in the front before the archive's boxes double. */
    private static final int ARCHIVE = 1000;

    private Exploration() {}

    /**
     * Searches and computes the front in full. The same task, budget and seed give the same result on any number of threads.
     *
     * @param starts designs to begin with
     * @param evaluations budget
     * @param listener told how it goes
     * @param stop asked at the end of each generation; after true the front so far is returned
     */
    public static Found run(
            Task task,
            List<Design> starts,
            long evaluations,
            long seed,
            int threads,
            Listener listener,
            BooleanSupplier stop) {
        return run(task, starts, evaluations, seed, threads, 0, Checkpoints.NONE, listener, stop);
    }

    /**
     * The same, keeping its state on the way and going on from the last one kept.
     *
     * @param stall the search ends where the front grew by less than this share over its last fifth; 0 for never
     */
    public static Found run(
            Task task,
            List<Design> starts,
            long evaluations,
            long seed,
            int threads,
            double stall,
            Checkpoints checkpoints,
            Listener listener,
            BooleanSupplier stop) {
        Settings settings =
                new Settings(evaluations, seed, threads, task.study().search().population(), ARCHIVE, stall);
        return Found.of(task, Search.run(task.problem(starts), settings, checkpoints, listener, stop));
    }
}
