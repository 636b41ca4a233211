package foamfront.optimizer.explore;

import foamfront.optimizer.runs.CheckpointFiles;
import foamfront.optimizer.runs.RunFolder;
import foamfront.optimizer.runs.Store;
import foamfront.optimizer.search.Evaluation;
import foamfront.optimizer.search.Listener;
import foamfront.optimizer.search.Outcome;
import foamfront.optimizer.search.Problem;
import foamfront.optimizer.search.Search;
import foamfront.optimizer.search.Settings;
import foamfront.optimizer.search.Variable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;

/** A whole run that takes milliseconds: a search that keeps a state after every epoch, then a front and its designs as files. */
final class LittleRun {
    static final Path PATH = Path.of("results", "little", "001");

    private static final long EVALUATIONS = 2000;
    private static final RunFacts FACTS = new RunFacts("1", "s", "d", "c", "", 7, EVALUATIONS);

    private LittleRun() {}

    /** Begins, or goes on from the newest checkpoint; gives what was passed over. */
    static List<String> run(Store store) {
        AtomicLong ticks = new AtomicLong();
        return run(store, () -> 2_000_000_000L * (ticks.getAndIncrement() / 2));
    }

    /** The same under a clock, ns. */
    static List<String> run(Store store, LongSupplier clock) {
        RunFolder folder = RunFolder.open(store, PATH);
        CheckpointFiles files = folder.checkpoints();
        CheckpointFiles.Loaded loaded = files.newest();
        Keeper keeper = new Keeper(files, FACTS, loaded == null ? null : loaded.state(), clock);
        Outcome outcome =
                Search.run(problem(), new Settings(EVALUATIONS, 7, 1, 20, 50), keeper, Listener.NONE, () -> false);
        StringBuilder front = new StringBuilder();
        outcome.front().forEach(member -> front.append(member.evaluation()).append('\n'));
        folder.write("front.csv", front.toString());
        TreeMap<String, String> designs = new TreeMap<>();
        for (int k = 0; k < 3; k++) {
            designs.put("00" + k + ".yaml", outcome.front().get(k).evaluation() + "\n");
        }
        folder.replaceAll("designs", designs);
        folder.seal();
        return loaded == null ? List.of() : loaded.remarks();
    }

    /** All files that a user reads. */
    static String results(Store store) throws IOException {
        StringBuilder text = new StringBuilder();
        for (String name : List.of("front.csv", "designs/000.yaml", "designs/001.yaml", "designs/002.yaml")) {
            text.append(name).append('\n').append(new String(store.read(PATH.resolve(name)), StandardCharsets.UTF_8));
        }
        return text.toString();
    }

    private static Problem problem() {
        return new Problem(
                List.of(new Variable.Category("kind", 2), new Variable.Real("x"), new Variable.Real("y")),
                List.of(0.01, 0.01),
                () -> values -> Evaluation.feasible(
                        values[1] + values[2] + 0.1 * values[0],
                        1 - Math.sqrt(values[1]) + values[2] - 0.1 * values[0]));
    }
}
