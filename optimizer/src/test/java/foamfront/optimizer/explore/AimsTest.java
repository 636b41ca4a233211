package foamfront.optimizer.explore;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.front.Costs;
import foamfront.optimizer.front.Row;
import foamfront.optimizer.search.Listener;
import foamfront.optimizer.search.Progress;
import foamfront.optimizer.study.Aim;
import foamfront.optimizer.study.StudyReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Any measures can be aimed at, two to six of them. */
class AimsTest {
    private static final int EVALUATIONS = 1500;

    @ParameterizedTest(name = "{0} aims")
    @CsvSource(
            delimiter = '|',
            value = {
                "2 | {most: [endurance], least: [build time]}",
                "4 | {most: [payload, glide ratio], least: [stall speed, build cost]}",
                "6 | {most: [payload, endurance, climb rate, top speed], least: [build cost, flying weight]}"
            })
    void aFrontOfSoManyAimsIsNonDominatedFeasibleAndTheSameOnAnyThreads(int count, String aims) {
        Task task = task(aims);
        assertThat(task.study().aims()).hasSize(count);
        List<Progress> history = new ArrayList<>();
        Found found = explore(task, 1, history::add);
        List<Row> rows = found.front().rows();
        assertThat(rows).hasSizeGreaterThan(3);
        assertThat(rows).allSatisfy(row -> assertThat(row.limits()).allMatch(check -> check.holds()));
        for (Row row : rows) {
            assertThat(rows).noneMatch(other -> beats(task.study().aims(), other, row));
        }
        for (int k = 1; k < history.size(); k++) {
            assertThat(history.get(k).hypervolume())
                    .isGreaterThanOrEqualTo(history.get(k - 1).hypervolume());
        }
        assertThat(history.get(history.size() - 1).hypervolume()).isPositive();
        assertThat(explore(task, 3, progress -> {}).front().rows()).isEqualTo(rows);
    }

    @Test
    void anAimThatNothingOfferedCanHaveIsNamed() {
        Found found = explore(task("{most: [payload], least: [elevator on the step]}"), 2, progress -> {});
        assertThat(found.front().size()).isZero();
        assertThat(Explanation.lacking(found)).contains("aimed at: elevator on the step.");
        assertThat(Explanation.lacking(explore(task("{most: [payload, endurance]}"), 2, progress -> {})))
                .isEmpty();
    }

    private static boolean beats(List<Aim> aims, Row a, Row b) {
        boolean better = false;
        for (Aim aim : aims) {
            double difference = Costs.of(aim, a.measures()) - Costs.of(aim, b.measures());
            if (difference > 0) {
                return false;
            }
            better |= difference < 0;
        }
        return better;
    }

    private static Found explore(Task task, int threads, Listener listener) {
        return Exploration.run(task, List.of(), EVALUATIONS, 3, threads, listener, () -> false);
    }

    private static Task task(String aims) {
        String yaml = Dropper.YAML.replaceFirst("aim: .*", "aim: " + aims);
        byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
        return Task.of(StudyReader.read("aims.yaml", bytes, CatalogueReader.standard()), Shipped.WORKSHOP);
    }
}
