package foamfront.optimizer.runs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foamfront.optimizer.front.HostileNames;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunFolderTest {
    @TempDir
    private Path results = Path.of("");

    @Test
    void runsOfAStudyAreNumberedAndNeverShared() {
        assertThat(RunFolder.create(new Disk(), results, "Dyke Runner").path())
                .isEqualTo(results.resolve("dyke-runner/001"));
        assertThat(RunFolder.create(new Disk(), results, "dyke runner").path())
                .isEqualTo(results.resolve("dyke-runner/002"));
    }

    @Test
    void runsStartedTogetherGetDifferentFolders() throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(8);
        try {
            Callable<Path> start =
                    () -> RunFolder.create(new Disk(), results, "s").path();
            Set<Path> folders = new HashSet<>();
            for (Future<Path> folder : pool.invokeAll(java.util.Collections.nCopies(40, start))) {
                folders.add(folder.get());
            }
            assertThat(folders).hasSize(40);
        } finally {
            pool.shutdownNow();
        }
    }

    @Test
    void aWrittenFileHoldsTheTextAndNoPartStaysBehind() throws IOException {
        RunFolder run = RunFolder.create(new Disk(), results, "s");
        run.write("front.md", "ä\n");
        run.write("designs", "001.yaml", "design: x\n");
        assertThat(Files.readString(run.path().resolve("front.md"))).isEqualTo("ä\n");
        try (Stream<Path> files = Files.walk(run.path())) {
            assertThat(files.map(Path::getFileName).map(Path::toString)).noneMatch(name -> name.endsWith(".part"));
        }
    }

    @Test
    void whatAnEarlierEndOfTheRunLeftIsReplaced() throws IOException {
        RunFolder run = RunFolder.create(new Disk(), results, "s");
        run.replaceAll("designs", Map.of("001.yaml", "a", "002.yaml", "b", "003.yaml", "c"));
        run.replaceAll("designs", Map.of("001.yaml", "d"));
        assertThat(new Disk().names(run.path().resolve("designs"))).containsExactly("001.yaml");
        assertThat(run.path().resolve("designs/001.yaml")).hasContent("d");
        run.write("limits.md", "none");
        run.remove("limits.md");
        run.remove("limits.md");
        assertThat(run.path().resolve("limits.md")).doesNotExist();
    }

    @Test
    void nothingIsWrittenOutsideTheRun() {
        RunFolder run = RunFolder.create(new Disk(), results, "s");
        for (String name : List.of("../x", "a/b", "/etc/x", "..")) {
            assertThatThrownBy(() -> run.write(name, "")).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> run.write("designs", name, "")).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void everyHostileNameBecomesAPlainFolder() throws IOException {
        for (String name : HostileNames.all()) {
            assertThat(SafeName.of(name)).matches(SafeName::isSafe);
            Path run = RunFolder.create(new Disk(), results, name).path().toRealPath();
            assertThat(run).startsWith(results.toRealPath());
            assertThat(results.toRealPath().relativize(run).getNameCount()).isEqualTo(2);
        }
    }

    @Test
    void deviceNamesAreNoFileNames() {
        assertThat(SafeName.isSafe("con")).isFalse();
        assertThat(SafeName.of("CON")).isEqualTo("con-");
        assertThat(SafeName.of("Crème brûlée")).isEqualTo("creme-brulee");
        assertThat(SafeName.of("x".repeat(200))).hasSizeLessThanOrEqualTo(64);
    }

    @Test
    void aFileInTheWayIsToldInOneLine() throws IOException {
        Path file = Files.createFile(results.resolve("file"));
        assertThatThrownBy(() -> RunFolder.create(new Disk(), file, "s"))
                .isInstanceOf(CannotWrite.class)
                .hasMessageContaining("cannot write here")
                .satisfies(thrown ->
                        assertThat(String.valueOf(thrown.getMessage()).lines()).hasSize(1));
    }

    @Test
    void ofARunThatNeverBeganNothingStays() {
        RunFolder run = RunFolder.create(new Disk(), results, "s");
        RunLock lock = Objects.requireNonNull(RunLock.of(run));
        run.write("study.yaml", "x");
        run.writeAll("catalogue", Map.of("boards.csv", "y"));
        lock.close();
        run.discard();
        assertThat(run.path()).doesNotExist();
        assertThat(RunFolder.create(new Disk(), results, "s").path()).isEqualTo(run.path());
    }
}
