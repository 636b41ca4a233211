package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.explore.Dropper;
import foamfront.optimizer.runs.CheckpointFiles;
import foamfront.optimizer.runs.Disk;
import foamfront.optimizer.runs.RunFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResumeTest {
    private static final int KILLS = 10;
    private static final String EVALUATIONS = "12000";

    /** Of the processes that go on one after another: none of them may show in what they write. */
    private static final List<List<String>> MACHINES = List.of(
            List.of("-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=Pacific/Apia"),
            List.of("-Duser.language=ar", "-Duser.country=EG", "-Duser.extensions=u-nu-arab"),
            List.of("-Duser.language=de", "-Duser.country=DE", "-Dfile.encoding=ISO-8859-1"),
            List.of("-XX:TieredStopAtLevel=1"));

    @TempDir
    private Path folder = Path.of("");

    private Path study = Path.of("");
    private Path run = Path.of("");

    @BeforeEach
    void writeStudy() throws IOException {
        study = Files.writeString(folder.resolve("s.yaml"), Dropper.YAML);
        run = folder.resolve("seed-dropper/001");
    }

    /** Each process on another count of threads and in another country, and by turns on the other Java where one is named. */
    @Test
    void aRunKilledAgainAndAgainEndsAsOneLeftAlone() throws Exception {
        Path alone = Files.createDirectory(folder.resolve("alone"));
        assertThat(explore(EVALUATIONS, alone).code()).isZero();
        SplittableRandom random = new SplittableRandom(5);
        String here = System.getProperty("java.home");
        String other = System.getProperty("foamfront.otherJava", "");
        Child child = Child.exploring(folder, study, EVALUATIONS);
        Child.waitFor(run.resolve("checkpoint/00000001.txt"));
        for (int kill = 0; kill < KILLS; kill++) {
            child.endsWithin(random.nextInt(kill < KILLS / 2 ? 300 : 1500));
            child.kill();
            child = Child.start(
                    Path.of(other.isEmpty() || kill % 2 == 0 ? here : other),
                    folder,
                    Files.createTempFile(folder, "out", ".txt"),
                    MACHINES.get(kill % MACHINES.size()),
                    "explore",
                    "--resume",
                    run.toString(),
                    "--threads",
                    Integer.toString(1 + random.nextInt(8)));
        }
        assertThat(child.end()).as(child.err()).isZero();
        assertThat(RunFiles.of(run)).isEqualTo(RunFiles.of(alone.resolve("seed-dropper/001")));
    }

    @Test
    void aRunCutShortByTimeGoesOnToTheEnd() throws Exception {
        Path alone = Files.createDirectory(folder.resolve("alone"));
        assertThat(explore("6000", alone).code()).isZero();
        Run cut = Run.of(
                "explore",
                study.toString(),
                "--evaluations",
                "6000",
                "--time",
                "1 s",
                "--stall",
                "0",
                "--out",
                folder.toString());
        assertThat(cut.err())
                .satisfiesAnyOf(
                        err -> assertThat(err).contains("cannot be repeated exactly", "explore --resume " + run),
                        err -> assertThat(err).doesNotContain("time is up"));
        assertThat(Run.of("explore", "--resume", "seed-dropper", "--out", folder.toString())
                        .code())
                .isZero();
        assertThat(RunFiles.of(run)).isEqualTo(RunFiles.of(alone.resolve("seed-dropper/001")));
        Run again = Run.of("explore", "--resume", run.toString());
        assertThat(again.code()).isZero();
        assertThat(RunFiles.of(run)).isEqualTo(RunFiles.of(alone.resolve("seed-dropper/001")));
    }

    /** Whatever the clock showed when a checkpoint was written, the one of the highest number is the newest. */
    @Test
    void aClockSetBackBetweenCheckpointsChangesNothing() throws Exception {
        assertThat(explore("1500", folder).code()).isZero();
        Map<String, String> whole = RunFiles.of(run);
        FileTime day = FileTime.from(1_000_000_000, TimeUnit.SECONDS);
        try (Stream<Path> files = Files.list(run.resolve("checkpoint"))) {
            List<Path> kept = files.filter(file -> file.toString().endsWith(".txt"))
                    .sorted()
                    .toList();
            assertThat(kept).hasSize(2);
            Files.setLastModifiedTime(kept.get(0), FileTime.from(3_000_000_000L, TimeUnit.SECONDS));
            Files.setLastModifiedTime(kept.get(1), day);
        }
        Files.setLastModifiedTime(run.resolve("study.yaml"), day);
        Files.delete(run.resolve("front.csv"));
        Run resumed = Run.of("explore", "--resume", run.toString(), "--quiet");
        assertThat(resumed.code()).isZero();
        assertThat(resumed.err()).isEmpty();
        assertThat(RunFiles.of(run)).isEqualTo(whole);
    }

    @Test
    void whatChangedSinceIsNamedAndNothingGoesOn() throws Exception {
        assertThat(explore("1500", folder).code()).isZero();
        refused("seed (3 then, 9 now)", "--seed", "9");
        refused("evaluations (1500 then, 600 now)", "--evaluations", "600");

        Path copy = run.resolve("study.yaml");
        Files.writeString(copy, Dropper.YAML + "\n# a thought\n");
        refused("the study");
        Files.writeString(copy, Dropper.YAML);

        Path other = Files.writeString(folder.resolve("other.yaml"), Dropper.YAML + "\n# another\n");
        refused("the study", other.toString());

        Path motors = run.resolve("catalogue/motors.csv");
        String rows = Files.readString(motors);
        Files.writeString(motors, rows.replaceFirst("(?m)(\\n[^\\n#]*?,)(\\d)", "$19"));
        refused("the catalogue");
        Files.writeString(motors, rows);

        CheckpointFiles files = RunFolder.open(new Disk(), run).checkpoints();
        CheckpointFiles.Loaded loaded = Objects.requireNonNull(files.newest());
        files.write(loaded.facts().replace("foamfront: 0", "foamfront: 9"), loaded.state());
        refused("version of foamfront (9");
        files.write(
                loaded.facts(),
                loaded.state().replaceAll("(?m)^(\\+\\d+ \\+1 \\+[012] \\S+ \\S+) \\S+ ", "$1 4000000000000001 "));
        refused("the computation");
        files.write(loaded.facts(), loaded.state());

        Path newest;
        try (Stream<Path> kept = Files.list(run.resolve("checkpoint"))) {
            newest = kept.filter(file -> file.toString().endsWith(".txt"))
                    .max(Comparator.naturalOrder())
                    .orElseThrow();
        }
        String whole = Files.readString(newest);
        Files.writeString(newest, whole.replaceFirst("checkpoint \\d+", "checkpoint 1"));
        refused("\"foamfront checkpoint 1\"");
        Files.writeString(newest, whole);
        assertThat(Run.of("explore", "--resume", run.toString()).code()).isZero();
    }

    private void refused(String what, String... more) throws IOException {
        Map<String, String> before = RunFiles.of(run);
        String[] args = Stream.concat(Stream.of("explore", "--resume", run.toString()), Stream.of(more))
                .toArray(String[]::new);
        Run refused = Run.of(args);
        assertThat(refused.err()).contains("cannot go on", what);
        assertThat(refused.code()).isEqualTo(Exit.USER_INPUT);
        assertThat(RunFiles.of(run)).isEqualTo(before);
    }

    @Test
    void oneProcessAtATimeAndADeadOneHoldsNothing() throws Exception {
        Child child = Child.exploring(folder, study, "100000000");
        Child.waitFor(run.resolve("checkpoint/00000001.txt"));
        Run second = Run.of("explore", "--resume", run.toString());
        assertThat(second.code()).isEqualTo(Exit.USER_INPUT);
        assertThat(second.err()).contains("another process works in");
        child.kill();
        Run third = Run.of("explore", "--resume", run.toString(), "--time", "1 s");
        assertThat(third.err()).contains("The time is up").doesNotContain("another process");
    }

    @Test
    void aRunWithoutCheckpointIsNotGoneOnWith() throws IOException {
        assertThat(Run.of("explore", "--resume", folder.resolve("none").toString())
                        .code())
                .isEqualTo(Exit.USER_INPUT);
        assertThat(explore("1500", folder).code()).isZero();
        try (Stream<Path> files = Files.list(run.resolve("checkpoint"))) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Run refused = Run.of("explore", "--resume", run.toString());
        assertThat(refused.err()).contains("no whole checkpoint");
        assertThat(refused.code()).isEqualTo(Exit.USER_INPUT);
    }

    private Run explore(String evaluations, Path out) {
        return Run.of("explore", study.toString(), "--evaluations", evaluations, "--out", out.toString());
    }
}
