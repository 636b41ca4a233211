package foamfront.optimizer.search;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Keeps the state of a search, so that a stopped or killed one can go on as if nothing had happened. */
public interface Checkpoints {
    /** Keeps nothing. */
    Checkpoints NONE = new Checkpoints() {
        @Override
        public @Nullable String last() {
            return null;
        }

        @Override
        public void offer(Supplier<String> state, boolean must) {}
    };

    /** The state to go on from; null for a new search. */
    @Nullable
    String last();

    /**
     * Asked at the start, after every epoch and when the search stops, on the thread that called {@link Search#run}. Whether a
     * state is kept changes nothing that comes after.
     *
     * @param state made when asked for
     * @param must whether a state has to be kept now
     */
    void offer(Supplier<String> state, boolean must);
}
