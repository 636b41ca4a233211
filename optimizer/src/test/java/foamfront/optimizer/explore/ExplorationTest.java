package foamfront.optimizer.explore;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.design.Design;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.front.Costs;
import foamfront.optimizer.front.Front;
import foamfront.optimizer.front.FrontTable;
import foamfront.optimizer.front.Row;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.runs.Disk;
import foamfront.optimizer.runs.RunFolder;
import foamfront.optimizer.search.Evaluation;
import foamfront.optimizer.search.Evaluator;
import foamfront.optimizer.search.Listener;
import foamfront.optimizer.study.DesignReader;
import foamfront.optimizer.study.ShowIn;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.StudyReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExplorationTest {
    private static final int EVALUATIONS = 1500;

    @TempDir
    private Path results = Path.of("");

    private final Catalogue catalogue = CatalogueReader.standard();

    @Test
    void theFrontIsTheSameBytesOnAnyNumberOfThreads() {
        String one = csv(explore(task(Dropper.YAML), EVALUATIONS, 1));
        assertThat(one.lines()).hasSizeGreaterThan(3);
        assertThat(csv(explore(task(Dropper.YAML), EVALUATIONS, 2))).isEqualTo(one);
        assertThat(csv(explore(task(Dropper.YAML), EVALUATIONS, 5))).isEqualTo(one);
    }

    @Test
    void everyRowMeetsEveryLimitAndNoneBeatsAnother() {
        Task task = task(Dropper.YAML);
        Found found = explore(task, EVALUATIONS, 2);
        assertThat(found.front().rows())
                .allSatisfy(row -> assertThat(row.limits()).allMatch(check -> check.holds()));
        assertThat(Front.of(task.study().aims(), found.front().rows()).size())
                .isEqualTo(found.front().size());
        assertThat(found.blockers()).isEmpty();
        assertThat(found.faultCount()).isZero();
    }

    @Test
    void theSearchAndTheFullAppraisalGiveTheSameBits() {
        Task task = task(Dropper.YAML);
        Evaluator evaluator = task.evaluators().get();
        for (Row row : explore(task, EVALUATIONS, 2).front().rows()) {
            Evaluation evaluation = evaluator.evaluate(task.genome().encode(row.design()));
            assertThat(evaluation.isFeasible()).isTrue();
            for (int i = 0; i < evaluation.objectives().length; i++) {
                assertThat(evaluation.objective(i))
                        .isEqualTo(Costs.of(task.study().aims().get(i), row.measures()));
            }
        }
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 200; i++) {
            double[] values = new double[task.genome().variables().size()];
            for (int k = 0; k < values.length; k++) {
                int levels = task.genome().variables().get(k).levels();
                values[k] = levels == 0 ? random.nextDouble() : random.nextInt(levels);
            }
            Row row = task.row().apply(task.genome().decode(values));
            assertThat(evaluator.evaluate(values).isFeasible())
                    .isEqualTo(row.limits().stream().allMatch(check -> check.holds()));
        }
    }

    @Test
    void whatTheRunWritesReadsBack() throws Exception {
        Task task = task(Dropper.YAML);
        Found found = explore(task, EVALUATIONS, 2);
        RunFolder folder = RunFolder.create(new Disk(), results, task.study().name());
        RunWriter writer = new RunWriter(folder, task);
        writer.writeInputs(Dropper.YAML, task.study(), java.util.Map.of(), catalogue);
        writer.writeResults(found);

        Catalogue kept = CatalogueReader.folder(folder.path().resolve("catalogue"));
        assertThat(kept.motors()).isEqualTo(catalogue.motors());
        assertThat(kept.propellers()).isEqualTo(catalogue.propellers());
        assertThat(kept.batteries()).isEqualTo(catalogue.batteries());
        assertThat(kept.boards()).isEqualTo(catalogue.boards());
        assertThat(kept.spars()).isEqualTo(catalogue.spars());
        assertThat(kept.workshop()).isEqualTo(catalogue.workshop());
        Study again = StudyReader.read(folder.path().resolve("study.yaml"));
        assertThat(again.name()).isEqualTo("seed dropper");
        List<Row> rows = found.numbered();
        for (int i = 0; i < rows.size(); i++) {
            Path file =
                    folder.path().resolve("designs").resolve(String.format(java.util.Locale.ROOT, "%03d.yaml", i + 1));
            Design design = DesignReader.read(file, kept).design();
            assertThat(design.name()).isEqualTo("seed dropper " + (i + 1));
            assertThat(design.power()).isEqualTo(rows.get(i).design().power());
            assertThat(task.genome().encode(design))
                    .isEqualTo(task.genome().encode(rows.get(i).design()));
        }
        assertThat(Files.readString(folder.path().resolve("front.md"))).startsWith("# seed dropper\n");
        assertThat(Files.readString(folder.path().resolve("layouts.csv")).lines())
                .hasSizeGreaterThan(2);
    }

    @Test
    void whereNothingIsFeasibleTheBlockingLimitComesFirst() {
        Found found = explore(task(Dropper.YAML + "must: {stall speed: at most 2 m/s}\n"), EVALUATIONS, 2);
        assertThat(found.front().isEmpty()).isTrue();
        assertThat(found.nearest()).isNotEmpty();
        assertThat(found.blockers().get(0).bound().measure().words()).isEqualTo("stall speed");
        assertThat(Explanation.sentence(found)).contains("none met every limit", "stall speed");
    }

    @Test
    void theSmallestSetOfLimitsThatRulesEverythingOutIsFound() {
        assertThat(ruledOutBy("stall speed: at most 2 m/s")).contains(Set.of("stall speed"));
        assertThat(ruledOutBy("stall speed: at most 2 m/s, climb rate: at least 60 m/s"))
                .containsExactly(Set.of("stall speed", "climb rate"));
    }

    private List<Set<String>> ruledOutBy(String limits) {
        Task task = task(Dropper.YAML + "must: {" + limits + "}\n");
        Found found = explore(task, EVALUATIONS, 2);
        return Relaxation.of(task.study(), catalogue.workshop(), found, 3, 2, () -> false).sets().stream()
                .map(set -> set.stream().map(bound -> bound.measure().words()).collect(Collectors.toSet()))
                .toList();
    }

    @Test
    void aStoppedExplorationGivesTheFrontSoFar() throws Exception {
        AtomicInteger asked = new AtomicInteger();
        Task task = task(Dropper.YAML);
        Found found =
                Exploration.run(task, List.of(), 1_000_000, 3, 2, Listener.NONE, () -> asked.incrementAndGet() > 60);
        assertThat(found.stopped()).isTrue();
        assertThat(found.evaluations()).isBetween(1L, 100_000L);
        RunFolder folder = RunFolder.create(new Disk(), results, task.study().name());
        new RunWriter(folder, task).writeResults(found);
        assertThat(Files.readString(folder.path().resolve("front.md")))
                .startsWith("# seed dropper\n\nThe search was stopped early")
                .contains("cannot be repeated exactly");
    }

    /** Stopped before anything was lifted, the limits that the nearest design misses stand, and no more is claimed of them. */
    @Test
    void aStoppedRelaxationClaimsNoMoreThanItTried() {
        Task task = task(Dropper.YAML + "must: {stall speed: at most 2 m/s, climb rate: at least 60 m/s}\n");
        Found found = explore(task, EVALUATIONS, 2);
        Relaxation stopped = Relaxation.of(task.study(), catalogue.workshop(), found, 3, 2, () -> true);
        assertThat(stopped.tried()).isFalse();
        assertThat(stopped.words(new Show(ShowIn.METRIC, Shipped.CATALOGUE.currency())))
                .startsWith("Stopped before")
                .doesNotContain("No one limit alone");
    }

    @Test
    void aStartIsNeverWorseThanTheDesignGiven() {
        Task task = task(Dropper.YAML);
        Row start = explore(task, EVALUATIONS, 2).front().rows().get(0);
        Found found = Exploration.run(task, List.of(start.design()), 200, 99, 1, Listener.NONE, () -> false);
        Row best = found.front().rows().get(0);
        assertThat(best.measures().of(foamfront.model.mission.Measure.PAYLOAD))
                .isGreaterThanOrEqualTo(start.measures().of(foamfront.model.mission.Measure.PAYLOAD));
    }

    @Test
    void anAimThatSomeLayoutsCannotHaveIsNoFault() {
        String rolling = Dropper.YAML.replace("least: [build cost]", "least: [take-off distance]");
        // Of seeds 1 to 8 all but 4 and 5 find rolling designs in so few evaluations.
        Found found = Exploration.run(task(rolling), List.of(), EVALUATIONS, 3, 2, Listener.NONE, () -> false);
        assertThat(found.faultCount()).isZero();
        assertThat(found.front().rows())
                .isNotEmpty()
                .allMatch(row -> row.measures().of(foamfront.model.mission.Measure.TAKE_OFF_DISTANCE) > 0);
    }

    @Test
    void aBrokenComputationIsCountedWrittenDownAndTheRestStands() throws Exception {
        Task sound = task(Dropper.YAML);
        Task broken = new Task(
                sound.study(),
                sound.genome(),
                () -> {
                    Evaluator evaluator = sound.evaluators().get();
                    return values -> {
                        if (sound.genome().decode(values).wing().planform().span() > 1.45) {
                            throw new IllegalStateException("span too much for the test");
                        }
                        return evaluator.evaluate(values);
                    };
                },
                sound.row(),
                sound.interest());
        Found found = explore(broken, EVALUATIONS, 2);
        assertThat(found.faultCount()).isPositive();
        assertThat(found.front().isEmpty()).isFalse();
        RunFolder folder = RunFolder.create(new Disk(), results, "broken");
        new RunWriter(folder, broken).writeResults(found);
        assertThat(Files.readString(folder.path().resolve("faults/faults.txt")))
                .contains("span too much for the test", "design: ");
    }

    private Task task(String yaml) {
        return Task.of(
                StudyReader.read("s.yaml", yaml.getBytes(StandardCharsets.UTF_8), catalogue), catalogue.workshop());
    }

    static Found explore(Task task, long evaluations, int threads) {
        return Exploration.run(task, List.of(), evaluations, 3, threads, Listener.NONE, () -> false);
    }

    private static String csv(Found found) {
        return FrontTable.of(found.front(), 1, Shipped.CATALOGUE.currency()).csv();
    }
}
