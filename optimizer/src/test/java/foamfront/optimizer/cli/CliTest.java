package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import foamfront.optimizer.explore.Dropper;
import foamfront.optimizer.search.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CliTest {
    @TempDir
    private Path folder = Path.of("");

    private String study = "";
    private String out = "";

    @BeforeEach
    void writeTheStudy() throws IOException {
        study = Files.writeString(folder.resolve("dropper.yaml"), Dropper.YAML).toString();
        out = folder.resolve("results").toString();
    }

    /** A run keeps the row of one pack, from which its designs make two again. */
    @Test
    void packsInParallelComeBackFromTheRun() throws IOException {
        Files.writeString(Path.of(study), Dropper.YAML + "batteries: [2 x 3S 1300]\n");
        Run.of("explore", study, "--out", out);
        String file =
                folder.resolve("results/seed-dropper/001/designs/001.yaml").toString();
        Run direct = Run.of("appraise", file);
        assertThat(Files.readString(Path.of(file))).contains("battery: 2 x 3S 1300");
        assertThat(direct.err()).isEmpty();
        assertThat(direct.out()).contains("endurance");
    }

    @Test
    void exploringPrintsAVerdictATableAndWhereTheFilesAre() throws IOException {
        Run run = Run.of("explore", study, "--out", out);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out().lines().findFirst())
                .hasValueSatisfying(
                        line -> assertThat(line).contains("none beats another", "payload", "best compromise"));
        assertThat(run.out()).contains("least room to spare", "front.md", "propeller", "lithium", "local rules");
        Path first = folder.resolve("results/seed-dropper/001");
        for (String name :
                List.of("run.json", "study.yaml", "front.csv", "front.json", "front.md", "designs/001.yaml")) {
            assertThat(first.resolve(name)).isNotEmptyFile();
        }
        JsonNode record = new ObjectMapper().readTree(Files.readString(first.resolve("run.json")));
        assertThat(record.at("/settings/seed").asInt()).isEqualTo(3);
        assertThat(record.at("/counts/evaluations").asInt()).isEqualTo(1500);
        assertThat(record.at("/study_sha256").asText()).hasSize(64);

        String before = Files.readString(first.resolve("front.csv"));
        assertThat(Run.of("explore", study, "--out", out, "--threads", "1").code())
                .isZero();
        assertThat(Files.readString(folder.resolve("results/seed-dropper/002/front.csv")))
                .isEqualTo(before);
        assertThat(Files.readString(first.resolve("front.csv"))).isEqualTo(before);
    }

    @Test
    void aRowOfARunAppraisesToTheFrontsFigures() throws IOException {
        Run.of("explore", study, "--out", out, "--quiet");
        Run text = Run.of("appraise", "seed-dropper#1", "--out", out);
        assertThat(text.code()).isZero();
        assertThat(text.out()).contains("every limit holds", "Balance point", "to spare", "Shopping list", "C_L");
        assertThat(text.out())
                .contains(
                        "in four builds of five", "Moments of inertia", "Sheets of", "A landing on the nose", "% expo");
        Run run = Run.of("appraise", out + "/seed-dropper/001#1", "--json");
        JsonNode json = new ObjectMapper().readTree(run.out());
        JsonNode front = new ObjectMapper()
                .readTree(Files.readString(folder.resolve("results/seed-dropper/001/front.json")))
                .at("/rows/0");
        // The design file carries nine digits; the figures agree to six.
        double endurance = front.at("/measures/endurance/value").asDouble();
        assertThat(json.at("/measures/endurance/value").asDouble())
                .isCloseTo(endurance, org.assertj.core.api.Assertions.within(1e-6 * endurance));
        assertThat(json.at("/mass/centre_of_gravity")).hasSize(3);
        assertThat(json.at("/mass/total").asDouble())
                .isEqualTo(json.at("/measures/flying_weight/value").asDouble());
        assertThat(json.at("/limits/0/margin").isNumber()).isTrue();
        for (String key : List.of("lift_curve_slope", "span_efficiency", "neutral_point")) {
            assertThat(json.at("/lifting_surfaces/" + key).isNumber()).isTrue();
            assertThat(json.at("/lifting_surfaces/each/0/" + key).isNumber()).isTrue();
        }
        assertThat(json.at("/aeroplane/neutral_point").isNumber()).isTrue();
        assertThat(Run.of("appraise", "seed-dropper#9999", "--out", out).code()).isEqualTo(Exit.USER_INPUT);
        assertThat(Run.of("appraise", "other#1", "--out", out).code()).isEqualTo(Exit.USER_INPUT);
    }

    @Test
    void nothingFeasibleIsExitThreeWithTheLimits() throws IOException {
        Path hopeless =
                Files.writeString(folder.resolve("h.yaml"), Dropper.YAML + "must: {stall speed: at most 2 m/s}\n");
        Run run = Run.of("explore", hopeless.toString(), "--out", out);
        assertThat(run.code()).isEqualTo(Exit.NOTHING_FEASIBLE);
        assertThat(run.err()).contains("none met every limit", "stall speed", "at most 2.0 m/s");
    }

    @Test
    void aBadStudyIsExitTwoWithLineAndAdviceAndNoStackTrace() throws IOException {
        Path bad = Files.writeString(
                folder.resolve("bad.yaml"), "study: bad\nvary: {wingspan: 1 m to 2 m}\naim: {most: [paylod]}\n");
        for (String command : List.of("explore", "check")) {
            Run run = Run.of(command, bad.toString());
            assertThat(run.code()).isEqualTo(Exit.USER_INPUT);
            assertThat(run.err())
                    .contains("bad.yaml:2", "wingspan", "bad.yaml:3", "Did you mean 'payload'?")
                    .doesNotContain("Exception", "\tat ");
        }
    }

    @Test
    void misuseIsExitTwoAndPointsToHelp() {
        for (String[] args : List.of(
                new String[] {},
                new String[] {"explore"},
                new String[] {"frobnicate"},
                new String[] {"explore", study, "--threads", "0"},
                new String[] {"explore", study, "--evaluations", "many"},
                new String[] {"explore", study, "--evaluations", "0"},
                new String[] {"explore", folder.resolve("no.yaml").toString()},
                new String[] {"appraise", folder.resolve("no.yaml").toString()},
                new String[] {"check", folder.resolve("no.yaml").toString()},
                new String[] {"parts", "--type", "anvils"})) {
            Run run = Run.of(args);
            assertThat(run.code()).as(String.join(" ", args)).isEqualTo(Exit.USER_INPUT);
            assertThat(run.err()).isNotBlank().doesNotContain("Exception", "\tat ");
            assertThat(run.out()).isEmpty();
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsExitFour() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        Run run = Run.of("explore", study, "--out", file.toString());
        assertThat(run.code()).isEqualTo(Exit.CANNOT_WRITE);
        assertThat(run.err()).contains("cannot write here").doesNotContain("Exception");
        assertThat(run.err().lines()).hasSize(1);
    }

    @Test
    void checkSaysWhatWillBeSearchedAndEveryRuleTaken() throws IOException {
        Run run = Run.of("check", study);
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("designs in", "What is searched", "900 mm to 1500 mm", "Rules taken", "Limits");
        Run.of("explore", study, "--out", out, "--quiet");
        Run design = Run.of("check", out + "/seed-dropper/001/designs/001.yaml");
        assertThat(design.code()).isZero();
        assertThat(design.out()).contains("can be read: seed dropper 1");
    }

    @Test
    void partsAreListedAndFiltered() {
        assertThat(Run.of("parts").out()).contains("motors", "propellers", "batteries", "speed constant [rpm/V]");
        Run some = Run.of("parts", "--type", "battery", "3S");
        assertThat(some.out()).contains("3S 2200").doesNotContain("4S", "motors");
    }

    @Test
    void versionAndHelpAreFineAndColourOnlyWhereWanted() {
        assertThat(Run.of("--version").out()).isEqualTo("foamfront " + Main.VERSION + System.lineSeparator());
        assertThat(Run.of("--help").code()).isZero();
        assertThat(Run.of("explore", "--help").out())
                .contains("--seed", "--threads", "--out")
                .doesNotContain("\u001b[");
        assertThat(Run.of(true, "--help").out()).contains("\u001b[");
        assertThat(Console.wantsColour(true, null)).isTrue();
        assertThat(Console.wantsColour(true, "")).isTrue();
        assertThat(Console.wantsColour(true, "1")).isFalse();
        assertThat(Console.wantsColour(false, null)).isFalse();
    }

    @Test
    void theVersionIsThePoms() throws IOException {
        assertThat(Files.readString(Path.of("pom.xml"))).contains("<version>" + Main.VERSION + "</version>");
    }

    @Test
    void progressIsOneLineWithTheTimeLeft() {
        assertThat(ProgressLine.words(new Progress(5000, 20000, 42, 0.5, 0.25), 0, 3, 1e9))
                .isEqualTo(
                        "5,000 of 20,000 designs tried, 25 % can fly, 42 best trade-offs, hypervolume 0.50, 9 s left");
        assertThat(ProgressLine.duration(300)).isEqualTo("5 min");
        assertThat(ProgressLine.duration(7200)).isEqualTo("2.0 h");
    }

    @Test
    void roomIsABarWithWords() {
        assertThat(Text.room(0.25)).isEqualTo("#####..... 25 % to spare");
        assertThat(Text.room(-0.1)).isEqualTo("xx misses by 10 %");
        assertThat(Text.room(0)).isEqualTo(".......... met exactly");
    }
}
