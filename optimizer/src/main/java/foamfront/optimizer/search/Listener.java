package foamfront.optimizer.search;

/** Told at the end of every epoch, on the thread that called {@link Search#run}. */
@FunctionalInterface
public interface Listener {
    /** Hears nothing. */
    Listener NONE = progress -> {};

    void progress(Progress progress);
}
