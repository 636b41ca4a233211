package foamfront.optimizer.cli;

import foamfront.model.design.Design;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.explore.Explanation;
import foamfront.optimizer.explore.Exploration;
import foamfront.optimizer.explore.Found;
import foamfront.optimizer.explore.RunWriter;
import foamfront.optimizer.explore.Task;
import foamfront.optimizer.front.Front;
import foamfront.optimizer.front.FrontPage;
import foamfront.optimizer.front.Plot;
import foamfront.optimizer.front.Sentences;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.genome.Kept;
import foamfront.optimizer.runs.RunFolder;
import foamfront.optimizer.runs.RunRecord;
import foamfront.optimizer.study.DesignReader;
import foamfront.optimizer.study.KeepFrom;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.StudyReader;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code explore STUDY}: the main job. */
@Command(
        name = "explore",
        description = "Searches what a study leaves open and writes the best trade-offs to a run folder.",
        mixinStandardHelpOptions = true,
        version = "foamfront " + Main.VERSION)
final class ExploreCommand implements Callable<Integer> {
    /** Rows on the terminal; the files have all. */
    private static final int ROWS = 12;

    private final Console console;

    @Parameters(paramLabel = "STUDY", description = "the study file")
    private Path file = Path.of("");

    @Option(names = "--seed", paramLabel = "N", description = "seed of all random numbers (default: the study's)")
    private @Nullable Long seed;

    @Option(names = "--threads", paramLabel = "N", description = "workers (default: all cores); the result is the same")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(names = "--evaluations", paramLabel = "N", description = "designs to try (default: the study's)")
    private @Nullable Long evaluations;

    @Option(names = "--out", paramLabel = "FOLDER", description = "where runs are kept (default: results)")
    private Path results = Path.of("results");

    @Option(names = "--quiet", description = "no progress")
    private boolean quiet;

    ExploreCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Arguments.within("--threads", threads, 1, 1024);
        if (evaluations != null) {
            Arguments.within("--evaluations", evaluations, 1, 100_000_000_000L);
        }
        Catalogue catalogue = CatalogueReader.beside(file);
        Study asRead = StudyReader.read(file, catalogue);
        Task task = Task.of(kept(asRead, catalogue), catalogue.workshop());
        RunFolder folder = RunFolder.create(results, asRead.name());
        try {
            return explore(task, asRead, catalogue, folder);
        } finally {
            folder.discardIfEmpty();
        }
    }

    private int explore(Task task, Study asRead, Catalogue catalogue, RunFolder folder) {
        Study study = task.study();
        RunWriter writer = new RunWriter(folder, task);
        String catalogueDigest = writer.writeInputs(Arguments.text(file), asRead, catalogue);
        long budget = evaluations == null ? study.search().evaluations() : evaluations;
        long random = seed == null ? study.search().seed() : seed;
        long clock = System.currentTimeMillis() / 1000;
        long start = System.nanoTime();
        try (StopSignal signal = new StopSignal()) {
            ProgressLine progress = new ProgressLine(console, quiet);
            Found found = Exploration.run(task, starts(study, catalogue), budget, random, threads, progress, signal);
            progress.end();
            writer.writeResults(found);
            RunRecord record = new RunRecord(
                    Main.VERSION,
                    Runtime.version().toString(),
                    study.name(),
                    study.digest(),
                    catalogueDigest,
                    random,
                    budget,
                    threads,
                    found.evaluations(),
                    found.feasible(),
                    found.faultCount(),
                    found.front().size(),
                    found.share(),
                    found.stopped(),
                    clock,
                    (System.nanoTime() - start) * 1e-9);
            folder.write("run.json", record.json());
            folder.seal();
            return report(found, Show.of(study.showIn()), folder.path());
        }
    }

    /** The study with what it keeps from another design. */
    private Study kept(Study study, Catalogue catalogue) {
        KeepFrom keep = study.keepFrom();
        return keep == null
                ? study
                : Kept.apply(
                        study,
                        DesignReader.read(file.resolveSibling(keep.design()), catalogue)
                                .design(),
                        keep.parts());
    }

    /** The design the search starts from, if the study names one. */
    private List<Design> starts(Study study, Catalogue catalogue) {
        String from = study.startFrom();
        return from == null
                ? List.of()
                : List.of(
                        DesignReader.read(file.resolveSibling(from), catalogue).design());
    }

    private int report(Found found, Show show, Path folder) {
        if (found.front().isEmpty()) {
            console.err().println(Explanation.sentence(found));
            console.err().println();
            console.err().print(Explanation.table(found, show).text());
            console.err().println();
            console.err().println("The designs that came nearest are in " + folder.resolve("designs") + ".");
            return found.faultCount() > 0 ? faults(found, folder) : Exit.NOTHING_FEASIBLE;
        }
        Front front = found.front();
        if (found.stopped()) {
            console.err().println("Stopped after " + found.evaluations() + " designs; this is the front so far.");
        }
        console.out().println(Sentences.verdict(front, show, 1));
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
                                ? "All " + front.size() + " rows, more measures and every design are in:"
                                : "Files:");
        for (String name : List.of("front.md", "front.csv", "front.json", "designs")) {
            console.out().println("  " + folder.resolve(name));
        }
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
