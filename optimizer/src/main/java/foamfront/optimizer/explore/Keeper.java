package foamfront.optimizer.explore;

import foamfront.optimizer.runs.CheckpointFiles;
import foamfront.optimizer.search.Checkpoints;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the states of a search in its run's folder: at the beginning, at the end, when it is stopped, and after an epoch where
 * at least a fifth of a second has passed and keeping costs no more than a twentieth of the time (judgement). When a state is kept changes
 * nothing in the result.
 */
public final class Keeper implements Checkpoints {
    private static final long SHORTEST = 200_000_000L; // ns
    private static final int SHARE = 20;

    private final CheckpointFiles files;
    private final String facts;
    private final LongSupplier clock;
    private final @Nullable String last;
    private long due = Long.MIN_VALUE;
    private boolean begun;

    /**
     * @param facts of the run
     * @param last the state to go on from, or null
     * @param clock nanoseconds from any beginning
     */
    public Keeper(CheckpointFiles files, RunFacts facts, @Nullable String last, LongSupplier clock) {
        this.files = files;
        this.facts = facts.lines();
        this.last = last;
        this.clock = clock;
    }

    @Override
    public @Nullable String last() {
        return last;
    }

    @Override
    public void offer(Supplier<String> state, boolean must) {
        long start = clock.getAsLong();
        if (!must && begun && start - due < 0) {
            return;
        }
        files.write(facts, state.get());
        long end = clock.getAsLong();
        due = end + Math.max(SHORTEST, SHARE * (end - start));
        begun = true;
    }
}
