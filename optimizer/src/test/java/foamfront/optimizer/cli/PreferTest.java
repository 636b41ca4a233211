package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.explore.Dropper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A region of interest: in the study, on a command, and on a run that is finished. */
class PreferTest {
    private static final int GRAMS = 100;
    private static final String REGION = "payload: at least " + GRAMS + " g";

    @TempDir
    private Path folder = Path.of("");

    private Path run = Path.of("");

    @BeforeEach
    void nameTheRun() {
        run = folder.resolve("seed-dropper/001");
    }

    private Run explore(String text, String... more) throws IOException {
        Path study = Files.writeString(folder.resolve("s.yaml"), text);
        List<String> args = new ArrayList<>(List.of("explore", study.toString(), "--out", folder.toString()));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    private static List<Double> payloads(Path run) throws IOException {
        List<String> lines = Files.readAllLines(run.resolve("front.csv"));
        int column = List.of(lines.get(0).split(",", -1)).indexOf("payload [g]");
        return lines.stream()
                .skip(1)
                .map(line ->
                        Double.valueOf(line.replaceAll("\"[^\"]*\"", "text").split(",", -1)[column]))
                .toList();
    }

    @Test
    void aFinishedRunIsNarrowedAndWidenedAgainWithoutOneMoreDesign() throws IOException {
        assertThat(explore(Dropper.YAML).code()).isZero();
        String whole = Files.readString(run.resolve("front.csv"));
        assertThat(payloads(run)).anyMatch(grams -> grams < GRAMS).anyMatch(grams -> grams >= GRAMS);

        Run narrowed = Run.of("explore", "--resume", run.toString(), "--prefer", REGION);
        assertThat(narrowed.code()).as(narrowed.err()).isZero();
        assertThat(narrowed.out()).contains("lie in the region preferred (payload at least 100 g)");
        assertThat(payloads(run)).isNotEmpty().allMatch(grams -> grams >= GRAMS);
        assertThat(Files.readString(run.resolve("run.json"))).contains("\"evaluations\" : 1500");
        assertThat(Files.readString(run.resolve("front.md"))).contains("region preferred");

        assertThat(Run.of("explore", "--resume", run.toString()).code()).isZero();
        assertThat(run.resolve("front.csv")).hasContent(whole);
    }

    @Test
    void theStudysRegionAndTheCommandsAreTheSame() throws IOException {
        assertThat(explore(Dropper.YAML + "prefer: {" + REGION + "}\n").code()).isZero();
        String ofStudy = Files.readString(run.resolve("front.csv"));
        assertThat(explore(Dropper.YAML, "--prefer", REGION).code()).isZero();
        assertThat(folder.resolve("seed-dropper/002/front.csv")).hasContent(ofStudy);
        assertThat(payloads(run)).isNotEmpty().allMatch(grams -> grams >= GRAMS);
    }

    @Test
    void aRegionThatHoldsNothingLeavesTheFrontWholeAndSaysSo() throws IOException {
        Run run = explore(Dropper.YAML, "--prefer", "build cost: at most 1 USD");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("No best trade-off lies in the region preferred");
    }

    @Test
    void onlyWhatIsAimedAtCanBePreferred() throws IOException {
        Run wrong = explore(Dropper.YAML, "--prefer", "stall speed: at most 7 m/s");
        assertThat(wrong.code()).isEqualTo(Exit.USER_INPUT);
        assertThat(wrong.err()).contains("--prefer:1", "stall speed", "not aimed at", "must");
        assertThat(explore(Dropper.YAML + "prefer: {stall speed: at most 7 m/s}\n")
                        .err())
                .contains("prefer.stall speed", "not aimed at");
        assertThat(explore(Dropper.YAML, "--prefer", "payload: 200 g").err()).contains("which way");
        assertThat(explore(Dropper.YAML, "--prefer", "payload at least 200 g").code())
                .isEqualTo(Exit.USER_INPUT);
    }
}
