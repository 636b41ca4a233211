package foamfront.optimizer.cli;

import foamfront.model.mission.Bound;
import foamfront.model.units.Dimension;
import foamfront.optimizer.explore.Explanation;
import foamfront.optimizer.explore.Exploration;
import foamfront.optimizer.explore.Found;
import foamfront.optimizer.explore.Keeper;
import foamfront.optimizer.explore.Relaxation;
import foamfront.optimizer.explore.RunFacts;
import foamfront.optimizer.explore.RunWriter;
import foamfront.optimizer.explore.Task;
import foamfront.optimizer.faults.Fault;
import foamfront.optimizer.faults.StudyException;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.runs.CheckpointFiles;
import foamfront.optimizer.runs.Disk;
import foamfront.optimizer.runs.OtherFormat;
import foamfront.optimizer.runs.RunFolder;
import foamfront.optimizer.runs.RunLock;
import foamfront.optimizer.runs.RunRecord;
import foamfront.optimizer.search.ChangedProblem;
import foamfront.optimizer.study.SearchSettings;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.StudyKeys;
import foamfront.optimizer.study.StudyReader;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code explore STUDY}: the main job. */
@Command(
        name = "explore",
        description = "Searches what a study leaves open and writes the best trade-offs to a run folder.",
        mixinStandardHelpOptions = true,
        version = "foamfront " + Main.VERSION)
final class ExploreCommand implements Callable<Integer> {

    /** Between the bounds of a region in one line. */
    private static final String BOUNDS = "; ";

    private final Console console;

    @Parameters(
            paramLabel = "STUDY",
            arity = "0..1",
            description = "the study file; with --resume not needed, if given it must be the run's own")
    private @Nullable Path file;

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

    @Option(
            names = "--resume",
            paramLabel = "RUN",
            description =
                    "go on with a stopped or killed run (its folder, or its name under --out); the result is that of a run"
                            + " never stopped")
    private @Nullable String resume;

    @Option(
            names = "--time",
            paramLabel = "TIME",
            description =
                    "stop after this time, for example 10min (default: the study's); such a run cannot be repeated exactly")
    private @Nullable String time;

    @Option(
            names = "--stall",
            paramLabel = "PERCENT",
            description =
                    "stop where the hypervolume of the trade-offs grew by less than this over the last fifth of the search,"
                            + " for example 0.5%%; 0 for never (default: the study's)")
    private @Nullable String stall;

    @Option(
            names = "--prefer",
            paramLabel = "REGION",
            description =
                    "region of the trade-off to look at and to report, for example \"endurance: at least 12 min\", in place of"
                            + " the study's; with --resume it narrows the report, and the search goes on in the region it began with")
    private List<String> prefer = List.of();

    @Mixin
    private OwnTables tables = new OwnTables();

    /** What {@code --time} says, s; null where it says nothing. */
    private @Nullable Double timeLimit;

    /** What {@code --stall} says; null where it says nothing. */
    private @Nullable Double tolerance;

    ExploreCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Arguments.within("--threads", threads, 1, 1024);
        if (evaluations != null) {
            Arguments.within("--evaluations", evaluations, 1, StudyKeys.MOST_EVALUATIONS);
        }
        timeLimit = time == null ? null : Arguments.quantity("--time", time, Dimension.TIME, 1);
        tolerance = stall == null ? null : Arguments.quantity("--stall", stall, Dimension.NUMBER, 0);
        if (resume != null && file == null && tables.read() != null) {
            throw new InputException(
                    "foamfront: a run goes on with its own tables, not with those of --catalogue.",
                    "Leave --catalogue out, or explore anew.");
        }
        if (resume != null) {
            return resumed(Arguments.folder(resume, results));
        }
        if (file == null) {
            throw new InputException(
                    "foamfront: explore needs a study.", "Name one, or a run to go on with: --resume RUN.");
        }
        Asked asked = Asked.of(file, tables.beside(file));
        if (!prefer.isEmpty()) {
            asked = asked.preferring(bounds(asked, region()));
        }
        Task task = asked.task();
        RunFolder folder = RunFolder.create(new Disk(), results, asked.asRead().name());
        RunLock lock = locked(folder);
        boolean begun = false;
        try {
            RunWriter writer = new RunWriter(folder, task);
            String catalogue = writer.writeInputs(asked.text(), asked.asRead(), asked.texts(), asked.catalogue());
            begun = true;
            SearchSettings search = task.study().search();
            return explore(
                    asked,
                    folder,
                    facts(
                            asked,
                            catalogue,
                            region(),
                            seed == null ? search.seed() : seed,
                            evaluations == null ? search.evaluations() : evaluations),
                    null);
        } finally {
            lock.close();
            if (!begun) {
                folder.discard();
            }
        }
    }

    /** The region asked for on the command line, in one line. */
    private String region() {
        return prefer.stream()
                .flatMap(String::lines)
                .map(String::strip)
                .map(ExploreCommand::withColon)
                .collect(Collectors.joining(BOUNDS));
    }

    private static String withColon(String bound) {
        if (bound.indexOf(':') < 0) {
            throw new StudyException(List.of(new Fault(
                    "--prefer",
                    0,
                    0,
                    "",
                    "'" + bound + "' has no colon after its measure",
                    "Write --prefer \"endurance: at least 12 min\".")));
        }
        return bound;
    }

    private static List<Bound> bounds(Asked asked, String region) {
        return StudyReader.prefer(
                "--prefer",
                region.replace(BOUNDS, "\n"),
                asked.asRead().aims(),
                asked.catalogue().currency());
    }

    private static RunLock locked(RunFolder folder) {
        RunLock lock = RunLock.of(folder);
        if (lock == null) {
            throw new InputException(
                    "foamfront: another process works in " + folder.path() + ".",
                    "Wait until it ends, or stop it; then --resume goes on.");
        }
        return lock;
    }

    private static RunFacts facts(Asked asked, String catalogue, String region, long seed, long evaluations) {
        return new RunFacts(
                Main.VERSION,
                asked.task().study().digest(),
                asked.designsDigest(),
                catalogue,
                region,
                seed,
                evaluations);
    }

    private int resumed(Path run) {
        RunFolder folder = RunFolder.open(new Disk(), run);
        RunLock lock = locked(folder);
        try {
            CheckpointFiles.Loaded loaded = folder.checkpoints().newest();
            if (loaded == null) {
                throw new InputException(
                        "foamfront: " + run + " holds no whole checkpoint to go on from.",
                        "Explore its study anew: foamfront explore " + run.resolve("study.yaml") + ".");
            }
            loaded.remarks().forEach(console.err()::println);
            Asked asked = file == null ? Asked.in(run) : Asked.of(file, tables.beside(file));
            String region = RunFacts.region(loaded.facts());
            if (!region.isEmpty()) {
                asked = asked.preferring(bounds(asked, region));
            }
            if (!prefer.isEmpty()) {
                asked = asked.reporting(bounds(asked, region()));
            }
            String catalogue = new RunWriter(folder, asked.task()).catalogueDigest(asked.asRead(), asked.catalogue());
            RunFacts facts = facts(
                    asked,
                    catalogue,
                    region,
                    seed == null ? RunFacts.number(loaded.facts(), "seed") : seed,
                    evaluations == null ? RunFacts.number(loaded.facts(), "evaluations") : evaluations);
            List<String> changes = facts.changes(loaded.facts());
            if (!changes.isEmpty()) {
                throw changed(run, String.join(", ", changes));
            }
            return explore(asked, folder, facts, loaded.state());
        } catch (ChangedProblem e) {
            throw changed(run, "the computation (" + e.getMessage() + ")");
        } catch (OtherFormat e) {
            throw new InputException(
                    "foamfront: " + run + " cannot go on: " + e.getMessage() + ".",
                    "Go on with the version of foamfront that began it, or explore its study anew: foamfront explore "
                            + run.resolve("study.yaml") + ".");
        } finally {
            lock.close();
        }
    }

    private static InputException changed(Path run, String what) {
        return new InputException(
                "foamfront: " + run + " cannot go on; changed since it began: " + what + ".",
                "Undo the change, or explore anew.");
    }

    private int explore(Asked asked, RunFolder folder, RunFacts facts, @Nullable String state) {
        Task task = asked.task();
        Study study = task.study();
        double limit = timeLimit == null ? study.search().time() : timeLimit;
        long clock = System.currentTimeMillis() / 1000;
        long start = System.nanoTime();
        Keeper keeper = new Keeper(folder.checkpoints(), facts, state, System::nanoTime);
        try (StopSignal signal = new StopSignal()) {
            ExploreReport said = new ExploreReport(console);
            ProgressLine progress = new ProgressLine(console, quiet, limit, state != null);
            BooleanSupplier stop = () -> signal.getAsBoolean() || (System.nanoTime() - start) * 1e-9 > limit;
            Found found = Exploration.run(
                    task,
                    asked.starts(),
                    facts.evaluations(),
                    facts.seed(),
                    threads,
                    tolerance == null ? study.search().stall() : tolerance,
                    keeper,
                    progress,
                    stop);
            progress.end();
            if (found.stopped()) {
                said.howToGoOn(found, folder.path(), signal.getAsBoolean());
            }
            new RunWriter(folder, task).writeResults(found);
            RunRecord record = new RunRecord(
                    Main.VERSION,
                    Runtime.version().toString(),
                    study.name(),
                    study.digest(),
                    facts.catalogue(),
                    facts.region(),
                    region().equals(facts.region()) ? "" : region(),
                    facts.seed(),
                    facts.evaluations(),
                    threads,
                    found.evaluations(),
                    found.feasible(),
                    found.faultCount(),
                    found.front().size(),
                    found.hypervolume(),
                    found.stopped(),
                    found.stalled(),
                    clock,
                    (System.nanoTime() - start) * 1e-9);
            folder.write("run.json", record.json());
            Show show = Show.of(study);
            folder.remove("limits.md");
            String lacking = found.front().isEmpty() ? Explanation.lacking(found) : "";
            if (!lacking.isEmpty()) {
                console.err().println(lacking);
            } else if (found.front().isEmpty() && !found.stopped()) {
                relax(asked, found, facts.seed(), show, stop, folder);
            }
            folder.seal();
            return said.result(study, found, show, folder.path());
        }
    }

    /** Says which limits rule everything out. */
    private void relax(Asked asked, Found found, long random, Show show, BooleanSupplier stop, RunFolder folder) {
        if (!quiet) {
            console.err().println("None meets every limit; looking for those that rule everything out ...");
        }
        String words = Relaxation.of(asked.task().study(), asked.catalogue().workshop(), found, random, threads, stop)
                .words(show);
        if (!words.isEmpty()) {
            folder.write("limits.md", words + "\n");
            console.err().println(words);
        }
    }
}
