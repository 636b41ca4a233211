package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import foamfront.optimizer.explore.Dropper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where nothing can be written a command says so in one line and ends with exit code 4. */
class FullDiskTest {
    /** Takes no byte, as a full disk. */
    private static final Path FULL = Path.of("/dev/full");

    /** Takes no folder, not even from an administrator. */
    private static final Path NO_FOLDERS = Path.of("/proc");

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(strings = {"parts", "check", "explore"})
    void standardOutputOnAFullDiskIsToldAndExitFour(String command) throws Exception {
        assumeTrue(Files.exists(FULL), "this machine has no " + FULL);
        String study = study();
        List<String> args = switch (command) {
            case "parts" -> List.of("parts");
            case "check" -> List.of("check", study);
            default -> List.of("explore", study, "--quiet", "--out", folder.toString());
        };
        Child child = Child.start(
                Path.of(System.getProperty("java.home")), folder, FULL, List.of(), args.toArray(String[]::new));
        assertThat(child.end()).as(child.err()).isEqualTo(Exit.CANNOT_WRITE);
        assertThat(child.err().strip()).isEqualTo("foamfront: standard output could not be written");
    }

    @Test
    void aPlaceThatTakesNoFolderIsToldInOneLine() throws IOException {
        assumeTrue(Files.exists(NO_FOLDERS.resolve("self")), "this machine has no " + NO_FOLDERS);
        cannotWrite(Run.of(
                "explore",
                study(),
                "--quiet",
                "--evaluations",
                "100",
                "--out",
                NO_FOLDERS.resolve("x").toString()));
    }

    /** A folder of that name stands where a table belongs: told, nothing lost, and once it is gone the run ends as ever. */
    @Test
    void aFolderInATablesPlaceIsToldAndTheRunGoesOnOnceItIsGone() throws IOException {
        String study = study();
        Path run = folder.resolve("seed-dropper/001");
        String[] first = {"explore", study, "--quiet", "--out", folder.toString()};
        assertThat(Run.of(first).code()).isZero();
        var whole = RunFiles.of(run);
        Path table = run.resolve("front.csv");
        Files.delete(table);
        Path inside = Files.createDirectories(table.resolve("mine")).resolve("notes.txt");
        Files.writeString(inside, "keep me");
        cannotWrite(Run.of("explore", "--quiet", "--resume", run.toString()));
        assertThat(inside).hasContent("keep me");
        Files.delete(inside);
        Files.delete(table.resolve("mine"));
        Files.delete(table);
        assertThat(Run.of("explore", "--quiet", "--resume", run.toString()).code())
                .isZero();
        assertThat(RunFiles.of(run)).isEqualTo(whole);
    }

    private String study() throws IOException {
        return Files.writeString(folder.resolve("s.yaml"), Dropper.YAML).toString();
    }

    private static void cannotWrite(Run run) {
        assertThat(run.code()).as(run.err()).isEqualTo(Exit.CANNOT_WRITE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(1).first().asString().contains("cannot write here");
    }
}
