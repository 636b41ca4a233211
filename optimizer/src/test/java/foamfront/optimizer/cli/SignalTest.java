package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.explore.Dropper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class SignalTest {
    private static final int SIGTERM_EXIT = 143;

    /** Far beyond what a loaded machine needs, s; no check of speed. */
    private static final int PATIENCE = 60;

    @TempDir
    private Path folder = Path.of("");

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aPoliteKillLeavesTheFrontSoFar() throws Exception {
        Path study = Files.writeString(folder.resolve("s.yaml"), Dropper.YAML);
        Path err = folder.resolve("err.txt");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "foamfront.optimizer.cli.Main",
                        "explore",
                        study.toString(),
                        "--evaluations",
                        "1000000000",
                        "--out",
                        folder.toString())
                .redirectError(err.toFile())
                .redirectOutput(folder.resolve("out.txt").toFile())
                .start();
        try {
            waitFor(folder.resolve("seed-dropper/001/catalogue/sha256.txt"));
            Thread.sleep(1500); // some generations
            process.destroy();
            assertThat(process.waitFor(PATIENCE, TimeUnit.SECONDS)).isTrue();
        } finally {
            process.destroyForcibly();
        }
        assertThat(process.exitValue()).isEqualTo(SIGTERM_EXIT);
        assertThat(folder.resolve("seed-dropper/001/front.csv")).isNotEmptyFile();
        assertThat(Files.readString(folder.resolve("seed-dropper/001/run.json")))
                .contains("\"stopped_early\" : true");
        assertThat(Files.readString(err)).doesNotContain("Exception");
    }

    private static void waitFor(Path file) throws IOException, InterruptedException {
        for (int i = 0; i < 10 * PATIENCE && !Files.exists(file); i++) {
            Thread.sleep(100);
        }
        assertThat(file).exists();
    }
}
