package foamfront.optimizer.cli;

import foamfront.optimizer.explore.Explanation;
import foamfront.optimizer.explore.Found;
import foamfront.optimizer.front.Front;
import foamfront.optimizer.front.FrontPage;
import foamfront.optimizer.front.Plot;
import foamfront.optimizer.front.Sentences;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.study.Study;
import java.nio.file.Path;
import java.util.List;

/** What {@code explore} says of a finished search: results to standard output, why there are none to standard error. */
final class ExploreReport {
    /** Rows on the terminal; the files have all. */
    private static final int ROWS = 12;

    private final Console console;

    ExploreReport(Console console) {
        this.console = console;
    }

    /** Of a search that a signal or its time ended. */
    void howToGoOn(Found found, Path folder, boolean signalled) {
        console.err()
                .println(
                        signalled
                                ? "Stopped after " + found.evaluations() + " designs; this is the front so far."
                                : "The time is up after " + found.evaluations()
                                        + " designs. How many fit into it depends on the machine, so this front cannot be"
                                        + " repeated exactly.");
        console.err().println("To go on: foamfront explore --resume " + folder);
    }

    /** The front, or why there is none; the exit code. */
    int result(Study study, Found found, Show show, Path folder) {
        if (found.front().isEmpty()) {
            console.err().println(Explanation.sentence(found));
            if (found.evaluations() == 0) {
                return Exit.NOTHING_FEASIBLE;
            }
            console.err().println();
            console.err().print(Explanation.table(found, show).text());
            console.err().println();
            console.err().println("The designs that came nearest are in " + folder.resolve("designs") + ".");
            return found.faultCount() > 0 ? faults(found, folder) : Exit.NOTHING_FEASIBLE;
        }
        Front front = found.front();
        if (found.stalled()) {
            console.err()
                    .println("The front stood still after " + found.evaluations()
                            + " designs, so the search ended. To go on all the same: foamfront explore --stall 0 --resume "
                            + folder);
        }
        console.out().println(Sentences.verdict(front, show, 1));
        String region = Explanation.region(study, found, show);
        if (!region.isEmpty()) {
            console.out().println(region);
        }
        String growing = Explanation.growing(found);
        if (!growing.isEmpty()) {
            console.out().println(growing);
        }
        console.out().println();
        String plot = Plot.of(front, show);
        if (!plot.isEmpty()) {
            console.out().println(plot);
        }
        console.out().print(FrontPage.narrow(front, front.spread(ROWS), 1, show).text());
        console.out().println();
        console.out()
                .println(
                        front.size() > ROWS
                                ? "All " + front.size()
                                        + " rows (above: those that stand out, and some spread between them), more measures and"
                                        + " every design are in:"
                                : "Files:");
        for (String name : List.of("front.md", "front.csv", "front.json", "designs")) {
            console.out().println("  " + folder.resolve(name));
        }
        console.out().println("One in full: foamfront appraise '" + folder + "#" + (front.compromise() + 1) + "'");
        console.out().println();
        Sentences.cautions(front).forEach(console.out()::println);
        return found.faultCount() > 0 ? faults(found, folder) : Exit.FINE;
    }

    private int faults(Found found, Path folder) {
        console.err()
                .println("foamfront: a bug of ours broke the computation of " + found.faultCount()
                        + " designs; the others stand. Please report it and attach "
                        + folder.resolve("faults").resolve("faults.txt") + ".");
        return Exit.OUR_BUG;
    }
}
