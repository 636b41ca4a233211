package foamfront.optimizer.cli;

import foamfront.model.units.Numbers;
import foamfront.optimizer.search.Listener;
import foamfront.optimizer.search.Progress;
import java.util.Locale;

/** How far a search is: one line rewritten on a terminal, a plain line now and then elsewhere. */
final class ProgressLine implements Listener {
    private static final long TERMINAL_INTERVAL = 200_000_000L; // ns
    private static final long PLAIN_INTERVAL = 10_000_000_000L; // ns

    private final Console console;
    private final boolean quiet;
    private final double time;
    private final boolean resumed;
    private long started = System.nanoTime();
    private long last = started;
    private long from;
    private int width;

    /**
     * @param time limit of the search, s
     * @param resumed whether earlier designs were tried at an unknown pace
     */
    ProgressLine(Console console, boolean quiet, double time, boolean resumed) {
        this.resumed = resumed;
        this.time = time;
        this.console = console;
        this.quiet = quiet;
    }

    @Override
    public void progress(Progress progress) {
        long now = System.nanoTime();
        if (quiet || now - last < (console.terminal() ? TERMINAL_INTERVAL : PLAIN_INTERVAL)) {
            return;
        }
        last = now;
        if (resumed && from == 0) {
            from = progress.evaluations();
            started = now;
            return;
        }
        double seconds = (now - started) * 1e-9;
        String line = words(progress, from, seconds, time - seconds);
        if (console.terminal()) {
            console.err().print("\r" + line + " ".repeat(Math.max(0, width - line.length())));
            console.err().flush();
            width = line.length();
        } else {
            console.err().println(line);
        }
    }

    /** Clears the line. */
    void end() {
        if (width > 0) {
            console.err().print("\r" + " ".repeat(width) + "\r");
            console.err().flush();
        }
    }

    /**
     * @param from evaluations at the beginning of {@code seconds}
     * @param limit seconds until a time limit, infinite for none
     */
    static String words(Progress progress, long from, double seconds, double limit) {
        double left = progress.evaluations() > from
                ? seconds / (progress.evaluations() - from) * (progress.total() - progress.evaluations())
                : 0;
        return String.format(
                Locale.ROOT,
                "%,d of %,d designs tried, %s %% can fly, %,d best trade-offs, hypervolume %s, %s left",
                progress.evaluations(),
                progress.total(),
                Numbers.fixed(100 * progress.feasible(), 0),
                progress.front(),
                Numbers.fixed(progress.hypervolume(), 2),
                duration(Math.min(left, limit)));
    }

    /** Rounded as people say it. */
    static String duration(double seconds) {
        if (seconds < 90) {
            return Numbers.fixed(Math.max(1, seconds), 0) + " s";
        }
        if (seconds < 5400) {
            return Numbers.fixed(seconds / 60, 0) + " min";
        }
        return Numbers.fixed(seconds / 3600, 1) + " h";
    }
}
