package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.explore.Dropper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
        Run colonless = explore(Dropper.YAML, "--prefer", "payload at least 200 g");
        assertThat(colonless.code()).isEqualTo(Exit.USER_INPUT);
        assertThat(colonless.err()).contains("no colon", "\"endurance: at least 12 min\"");
    }

    @Test
    void aRunStoppedAndResumedGoesOnInTheRegionItBeganWith() throws IOException {
        assertThat(explore(Dropper.YAML, "--evaluations", "6000", "--prefer", REGION)
                        .code())
                .isZero();
        String alone = Files.readString(run.resolve("front.csv"));
        assertThat(Files.readString(run.resolve("run.json"))).contains("\"prefer\" : \"" + REGION + "\"");
        Path cut = folder.resolve("seed-dropper/002");
        assertThat(explore(Dropper.YAML, "--evaluations", "6000", "--prefer", REGION, "--time", "1 s")
                        .err())
                .satisfiesAnyOf(
                        err -> assertThat(err).contains("explore --resume " + cut),
                        err -> assertThat(err).doesNotContain("time is up"));
        assertThat(Run.of("explore", "--resume", cut.toString(), "--time", "1 h")
                        .code())
                .isZero();
        assertThat(cut.resolve("front.csv")).hasContent(alone);
    }

    /** Whatever the report was narrowed to on the way, the search is that of the run's own region. */
    @Test
    void anotherRegionOnResumingNarrowsTheReportAlone() throws IOException {
        assertThat(explore(Dropper.YAML, "--evaluations", "6000").code()).isZero();
        String alone = Files.readString(run.resolve("front.csv"));
        Path cut = folder.resolve("seed-dropper/002");
        explore(Dropper.YAML, "--evaluations", "6000", "--time", "1 s");
        assertThat(Run.of("explore", "--resume", cut.toString(), "--time", "1 h", "--prefer", REGION)
                        .code())
                .isZero();
        assertThat(payloads(cut)).isNotEmpty().allMatch(grams -> grams >= GRAMS);
        assertThat(Files.readString(cut.resolve("run.json")))
                .contains("\"report_narrowed_to\" : \"" + REGION + "\"")
                .doesNotContain("\"prefer\"");
        assertThat(Run.of("explore", "--resume", cut.toString(), "--time", "1 h")
                        .code())
                .isZero();
        assertThat(cut.resolve("front.csv")).hasContent(alone);
    }

    /** A layout outside the region was found all the same, and must not be told as one that meets no limits. */
    @Test
    void aLayoutOutsideTheRegionIsNotSaidToMeetNoLimits() throws IOException {
        String unmet = "No design that meets every limit was found";
        assertThat(explore(Dropper.YAML.replace("[conventional, T]", "[conventional, T, V]"), "--evaluations", "6000")
                        .code())
                .isZero();
        String page = Files.readString(run.resolve("front.md"));
        assertThat(layouts(page)).isEqualTo(3);
        assertThat(page).doesNotContain(unmet);

        double shortest = longest().stream().min(Double::compare).orElseThrow();
        String region = "endurance: at least " + (shortest + 0.2) + " min";
        assertThat(Run.of("explore", "--resume", run.toString(), "--prefer", region)
                        .code())
                .isZero();
        String narrowed = Files.readString(run.resolve("front.md"));
        assertThat(layouts(narrowed)).isEqualTo(2);
        assertThat(narrowed).doesNotContain(unmet);
    }

    private static long layouts(String page) {
        return page.lines().filter(line -> line.startsWith("### ")).count();
    }

    /** The longest endurance of each layout, min. */
    private Collection<Double> longest() throws IOException {
        Map<String, Double> longest = new TreeMap<>();
        for (String line : Files.readAllLines(run.resolve("layouts.csv"))) {
            String[] quoted = line.split("\"", -1);
            if (quoted.length > 2) {
                longest.merge(quoted[1], Double.valueOf(quoted[2].split(",", -1)[3]), Math::max);
            }
        }
        return longest.values();
    }
}
