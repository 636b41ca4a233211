package foamfront.optimizer.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * Ctrl-C or a polite kill: the command is told to stop, and the process waits for it to write what it has. The exit code is then
 * the signal's own, 130 or 143.
 */
final class StopSignal implements BooleanSupplier, AutoCloseable {
    /** Longer than the slowest disk takes for a run folder, s. */
    private static final int PATIENCE = 60;

    private final CountDownLatch done = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stop, "stop");
    private volatile boolean asked;

    StopSignal() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    private void stop() {
        asked = true;
        try {
            if (!done.await(PATIENCE, TimeUnit.SECONDS)) {
                return; // it hangs: let the process end
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public boolean getAsBoolean() {
        return asked;
    }

    /** Everything is written. */
    @Override
    public void close() {
        done.countDown();
        if (!asked) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException ending) {
                return; // the signal came just now
            }
        }
    }
}
