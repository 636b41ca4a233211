package foamfront.optimizer.explore;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.appraisal.Appraisal;
import foamfront.model.appraisal.Appraiser;
import foamfront.model.appraisal.MeasureValues;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.model.units.Numbers;
import foamfront.optimizer.front.Row;
import foamfront.optimizer.search.Listener;
import foamfront.optimizer.study.DesignReader;
import foamfront.optimizer.study.DesignWriter;
import foamfront.optimizer.study.Digest;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.StudyReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every study and design of the repository, run at a small budget on five threads: the same bytes as before, or somebody has
 * changed what is computed and says so ({@code ./test --accept-validation} rewrites the table). Frozen figures are no evidence
 * of truth.
 */
class FrozenFrontsTest {
    private static final int BUDGET = 6000;
    private static final int THREADS = 5;
    private static final Path TABLE =
            Path.of("src", "test", "resources", "foamfront", "optimizer", "explore", "frozen.csv");
    private static final String HEAD = "# Our own earlier output, no evidence of truth: fronts at " + BUDGET
            + " designs tried, and designs appraised. Rewritten by ./test --accept-validation\n"
            + "file,tried,feasible,rows,digest\n";

    @Test
    void everyStudyAndDesignGivesTheSameBytesAsBefore() throws IOException {
        StringBuilder table = new StringBuilder(HEAD);
        for (Path file : files()) {
            String name = Shipped.FOLDER.relativize(file).toString().replace('\\', '/');
            String start = Files.readString(file).lines().findFirst().orElse("");
            table.append(name).append(start.startsWith("design:") ? design(file) : study(file, THREADS));
        }
        if (Boolean.getBoolean("foamfront.acceptValidation")) {
            Files.writeString(TABLE, table);
        }
        assertThat(table.toString())
                .as("figures have changed: read why, then run ./test --accept-validation")
                .isEqualTo(Files.readString(TABLE));
    }

    @Test
    void everyRoleOfTheClubIsAmongThem() throws IOException {
        assertThat(files())
                .map(file -> file.getFileName().toString())
                .containsAll(Shipped.NAMES.stream().map(name -> name + ".yaml").toList());
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> tree = Files.walk(Shipped.FOLDER)) {
            return tree.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"lapwing-camera", "dyke-glider", "marsh-dart", "gravel-pit-amphibian", "fete-biplane"})
    void oneThreadGivesTheSameBytesAsFive(String name) throws IOException {
        Path file = Shipped.FOLDER.resolve(name + ".yaml");
        assertThat(study(file, 1)).isEqualTo(study(file, THREADS));
    }

    private static String study(Path file, int threads) throws IOException {
        Study study = StudyReader.read(file);
        Task task = Task.of(Shipped.kept(study, file), Shipped.WORKSHOP);
        Found found =
                Exploration.run(task, List.of(), BUDGET, study.search().seed(), threads, Listener.NONE, () -> false);
        assertThat(found.faultCount()).as(study.name()).isZero();
        List<Row> rows = found.front().isEmpty() ? found.nearest() : found.numbered();
        StringBuilder text = new StringBuilder();
        rows.forEach(row -> text.append(DesignWriter.write(row.design())).append(figures(row.measures())));
        return "," + found.evaluations() + "," + found.feasible() + ","
                + found.front().size() + "," + Digest.of(text.toString()) + "\n";
    }

    private static String design(Path file) {
        Study nothing = StudyReader.read(Shipped.FOLDER.resolve("school-trainer.yaml"));
        Appraisal appraisal = new Appraiser(List.of())
                .appraise(
                        DesignReader.read(file, Shipped.CATALOGUE).design(),
                        nothing.mission(Shipped.WORKSHOP),
                        Factors.NOMINAL);
        return ",1,,," + Digest.of(figures(appraisal.measures())) + "\n";
    }

    private static String figures(MeasureValues values) {
        StringBuilder text = new StringBuilder();
        for (Measure measure : Measure.values()) {
            double value = values.of(measure);
            text.append(measure.words())
                    .append(' ')
                    .append(Double.isNaN(value) ? "-" : Numbers.exact(value))
                    .append('\n');
        }
        return text.toString();
    }
}
