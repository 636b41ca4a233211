package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.explore.Dropper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The same study and seed give the same bytes wherever and however they are computed. */
class SameBytesTest {
    private final Locale locale = Locale.getDefault();
    private final TimeZone zone = TimeZone.getDefault();

    @TempDir
    private Path folder = Path.of("");

    private String study = "";

    @BeforeEach
    void writeTheStudy() throws IOException {
        study = Files.writeString(folder.resolve("s.yaml"), Dropper.YAML).toString();
    }

    @AfterEach
    void restoreTheMachine() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    /** Turkish has an i without a dot, German a decimal comma, Arabic its own digits; Apia is thirteen hours ahead. */
    @ParameterizedTest(name = "seed {0} on {1} threads in {2}")
    @CsvSource({
        "3, 8, -Duser.language=tr -Duser.country=TR -Duser.timezone=Pacific/Apia",
        "4, 2, -Duser.language=ar -Duser.country=EG -Duser.extensions=u-nu-arab -Dfile.encoding=ISO-8859-1",
        "5, 8, -Duser.language=de -Duser.country=DE -Duser.timezone=Pacific/Apia -Dfile.encoding=ISO-8859-1",
        "6, 2, -XX:TieredStopAtLevel=1"
    })
    void aRunElsewhereLeavesTheSameFilesAndWords(String seed, String threads, String options) throws Exception {
        Path here = Files.createDirectory(folder.resolve("here"));
        Run one = Run.of("explore", study, "--seed", seed, "--threads", "1", "--out", here.toString(), "--quiet");
        sameFromAnother(
                Path.of(System.getProperty("java.home")), here, one, seed, threads, List.of(options.split(" ", -1)));
    }

    /** A short search, as without the compiler every design takes fifty times as long. */
    @Test
    void interpretedCodeFindsTheSame() throws Exception {
        Files.writeString(Path.of(study), Dropper.YAML.replace("evaluations: 1500", "evaluations: 300"));
        Path here = Files.createDirectory(folder.resolve("here"));
        Run one = Run.of("explore", study, "--seed", "7", "--threads", "1", "--out", here.toString(), "--quiet");
        sameFromAnother(Path.of(System.getProperty("java.home")), here, one, "7", "2", List.of("-Xint"));
    }

    /** {@code ./test} names the other Java where one is installed. */
    @Test
    void anotherJavaLeavesTheSameFilesAndWords() throws Exception {
        String other = System.getProperty("foamfront.otherJava", "");
        Assumptions.assumeFalse(other.isEmpty(), "no other Java was named");
        Path here = Files.createDirectory(folder.resolve("here"));
        Run one = Run.of("explore", study, "--seed", "7", "--threads", "2", "--out", here.toString(), "--quiet");
        sameFromAnother(Path.of(other), here, one, "7", "1", List.of());
    }

    private void sameFromAnother(Path java, Path here, Run one, String seed, String threads, List<String> options)
            throws Exception {
        Path there = Files.createDirectory(folder.resolve("there"));
        Child child = Child.start(
                java,
                folder,
                folder.resolve("out.txt"),
                options,
                "explore",
                study,
                "--seed",
                seed,
                "--threads",
                threads,
                "--out",
                there.toString(),
                "--quiet");
        assertThat(child.end()).as(child.err()).isEqualTo(one.code());
        assertThat(RunFiles.of(there.resolve("seed-dropper/001")))
                .isEqualTo(RunFiles.of(here.resolve("seed-dropper/001")))
                .hasSizeGreaterThan(10);
        assertThat(child.out().replace(there.toString(), here.toString())).isEqualTo(one.out());
        assertThat(child.err().replace(there.toString(), here.toString())).isEqualTo(one.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "de-DE"})
    void everyOtherCommandPrintsTheSame(String tag) {
        Locale.setDefault(Locale.ROOT);
        TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
        Run.of("explore", study, "--evaluations", "600", "--out", folder.toString(), "--quiet");
        String design = folder.resolve("seed-dropper/001/designs/001.yaml").toString();
        String row = folder.resolve("seed-dropper/001") + "#1";
        List<String[]> commands = List.of(
                new String[] {"check", study},
                new String[] {"check", design},
                new String[] {"check", folder.resolve("none.yaml").toString()},
                new String[] {"appraise", row},
                new String[] {"appraise", design, "--json"},
                new String[] {"parts"},
                new String[] {
                    "bench", "--motor", "2212-1000", "--propeller", "10x4.7 slow flyer", "--battery", "3S 2200"
                },
                new String[] {"--help"},
                new String[] {"explore", study, "--threads", "many"});
        List<Run> plain = commands.stream().map(SameBytesTest::timeless).toList();
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Apia"));
        List<Run> local = new ArrayList<>();
        commands.forEach(command -> local.add(timeless(command)));
        assertThat(local).isEqualTo(plain);
        assertThat(plain).extracting(Run::code).containsExactly(0, 0, 2, 0, 0, 0, 0, 0, 2);
    }

    /** What a command prints, but for the estimate of how long a search takes here. */
    private static Run timeless(String[] command) {
        Run run = Run.of(command);
        return new Run(run.code(), run.out().replaceAll("(?m)^To try: .*$", ""), run.err());
    }
}
