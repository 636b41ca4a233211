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
    private final long started = System.nanoTime();
    private long last = started;
    private int width;

    ProgressLine(Console console, boolean quiet) {
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
        String line = words(progress, (now - started) * 1e-9);
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

    static String words(Progress progress, double seconds) {
        double left = progress.evaluations() > 0
                ? seconds / progress.evaluations() * (progress.total() - progress.evaluations())
                : 0;
        return String.format(
                Locale.ROOT,
                "%,d of %,d designs tried, %s %% can be built and flown, %,d best trade-offs, %s left",
                progress.evaluations(),
                progress.total(),
                Numbers.fixed(100 * progress.feasible(), 0),
                progress.front(),
                duration(left));
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
