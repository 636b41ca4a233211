package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.explore.Dropper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisabledOnOs(OS.WINDOWS)
class SignalTest {
    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest(name = "SIG{0} after {2} ms")
    @CsvSource({
        "TERM, 143, 100",
        "TERM, 143, 700",
        "TERM, 143, 1500",
        "INT, 130, 100",
        "INT, 130, 700",
        "INT, 130, 1500"
    })
    void aSignalLeavesTheFrontSoFarAndSaysHowToGoOn(String signal, int code, int wait) throws Exception {
        Assumptions.assumeFalse(
                signal.equals("INT") && ignoresInterrupts(), "children of a background job ignore SIGINT");
        Path study = Files.writeString(folder.resolve("s.yaml"), Dropper.YAML);
        Path run = folder.resolve("seed-dropper/001");
        Child child = Child.exploring(folder, study, "1000000000");
        try {
            Child.waitFor(run.resolve("checkpoint/00000001.txt"));
            Thread.sleep(wait);
            child.signal(signal);
            assertThat(child.end()).isEqualTo(code);
        } finally {
            child.kill();
        }
        assertThat(run.resolve("front.csv")).isNotEmptyFile();
        assertThat(run.resolve("checkpoint/00000002.txt")).exists();
        assertThat(Files.readString(run.resolve("run.json"))).contains("\"stopped_early\" : true");
        assertThat(child.err())
                .contains("To go on: foamfront explore --resume " + run)
                .doesNotContain("Exception");
        Run resumed = Run.of("explore", "--resume", run.toString(), "--time", "1 s");
        assertThat(resumed.err()).contains("The time is up");
    }

    private static boolean ignoresInterrupts() throws Exception {
        Path status = Path.of("/proc/self/status");
        return Files.exists(status)
                && Files.readAllLines(status).stream()
                        .filter(line -> line.startsWith("SigIgn:"))
                        .anyMatch(line ->
                                (Long.parseUnsignedLong(line.substring(7).trim(), 16) & 2) != 0);
    }
}
