package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import foamfront.optimizer.explore.Dropper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What users get wrong, through the program's front door: exit code 2, standard output empty, one fault a line with
 * file, line, key and what is wrong, what would be right below it, never a stack trace, and no run left behind.
 */
class BadInputTest {
    /** {@code file.yaml:14  some.key: what is wrong.} and the advice under it. */
    private static final String FAULT = "bad\\.yaml:%d  %s: .*%s.*\\.\\n {10,}(?=\\S).*%s.*(?s:.*)";

    private static final String WHOLE_FILE = "(?s)bad\\.yaml(:\\d+)?  .*%s.*\\.\\n {9,}\\S.*";

    @TempDir
    private Path folder = Path.of("");

    static Stream<Arguments> wrong() {
        String good = Dropper.YAML;
        return Stream.of(
                Arguments.of("unknown key", good + "serch: {seed: 7}\n", 14, "serch", "no such key", "search"),
                Arguments.of(
                        "unknown key inside",
                        good.replace("runway:", "runwya:"),
                        2,
                        "site\\.runwya",
                        "no such key",
                        "runway"),
                Arguments.of(
                        "wrong unit",
                        good.replace("elevation: 2 m", "elevation: 2 kg"),
                        2,
                        "site\\.elevation",
                        "is a mass where a length belongs",
                        "m"),
                Arguments.of(
                        "no unit", good.replace("runway: 40 m", "runway: 40"), 2, "site\\.runway", "has no unit", "m"),
                Arguments.of(
                        "range upside down",
                        good.replace("0.9 m to 1.5 m", "1.5 m to 0.9 m"),
                        10,
                        "vary\\.span",
                        "runs downwards",
                        "0.9 m to 1.5 m"),
                Arguments.of(
                        "decimal comma",
                        good.replace("elevation: 2 m", "elevation: \"2,5 m\""),
                        2,
                        "site\\.elevation",
                        "decimal comma",
                        "2.5 m"),
                Arguments.of(
                        "contradictory limits",
                        good + "must: {stall speed: at least 9 m/s, top speed: at most 8 m/s}\n",
                        14,
                        "must\\.stall speed",
                        "contradicts top speed, at most 8",
                        "Lower"),
                Arguments.of(
                        "contradictory ends",
                        good + "must: {static margin: 20 % to 8 %}\n",
                        14,
                        "must\\.static margin",
                        "runs downwards",
                        "8 % to 20 %"),
                Arguments.of(
                        "unknown part",
                        good + "motors: [2212-92]\n",
                        14,
                        "motors",
                        "the catalogue has no motor '2212-92'",
                        "Did you mean '2212-920'"),
                Arguments.of(
                        "unknown part in the drawer",
                        good.replace("[receiver 6ch]", "[receiver 6 ch]"),
                        11,
                        "in the drawer",
                        "the catalogue has no",
                        "receiver 6ch"),
                Arguments.of(
                        "unknown aim",
                        good.replace("least: [build cost]", "least: [bild cost]"),
                        12,
                        "aim\\.least",
                        "no measure 'bild cost'",
                        "build cost"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wrong")
    void isToldWithFileLineKeyProblemAndAdvice(
            String name, String study, int line, String key, String problem, String advice) throws IOException {
        refused(
                study.getBytes(StandardCharsets.UTF_8),
                FAULT.formatted(line, key, problem.replace("(", "\\("), advice.replace(".", "\\.")));
    }

    @Test
    void anEmptyFileIsToldAsOne() throws IOException {
        for (String empty : List.of("", "\n\n", "# nothing\n")) {
            refused(empty.getBytes(StandardCharsets.UTF_8), WHOLE_FILE.formatted("the file is empty"));
        }
    }

    @Test
    void twoHundredKilobytesOfNoiseAreRefused() throws IOException {
        byte[] noise = new byte[200_000];
        new Random(5).nextBytes(noise);
        refused(noise, WHOLE_FILE.formatted("not text in UTF-8"));
        Random random = new Random(6);
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (byte) (' ' + random.nextInt(95));
        }
        refused(noise, "(?s)bad\\.yaml.*");
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (byte) (random.nextInt(60) == 0 ? '\n' : 'a' + random.nextInt(26));
        }
        refused(noise, "(?s)bad\\.yaml.*");
    }

    @Test
    void everyFaultIsToldAtOnceInTheOrderOfTheFile() throws IOException {
        String study = Dropper.YAML
                .replace("elevation: 2 m", "elevation: 2 kg")
                .replace("0.9 m to 1.5 m", "1.5 m to 0.9 m")
                .replace("least: [build cost]", "least: [bild cost]");
        refused(
                study.getBytes(StandardCharsets.UTF_8),
                "(?s)bad\\.yaml:2  .*\\nbad\\.yaml:10  .*\\nbad\\.yaml:12  aim.*");
    }

    private void refused(byte[] bytes, String pattern) throws IOException {
        String file = Files.write(folder.resolve("bad.yaml"), bytes).toString();
        Path out = folder.resolve("results");
        for (List<String> command :
                List.of(List.of("explore", file, "--out", out.toString()), List.of("check", file))) {
            Run run = Run.of(command.toArray(String[]::new));
            assertThat(run.code()).isEqualTo(Exit.USER_INPUT);
            assertThat(run.out()).isEmpty();
            assertThat(run.err().stripTrailing()).matches(pattern);
            clean(run);
        }
        assertThat(out).doesNotExist();
    }

    private static void clean(Run run) {
        assertThat(run.err()).doesNotContain("Exception", "\tat ", "java.", "foamfront.optimizer");
    }

    @Test
    void aMissingFileAndAFolderAreNamed() {
        String missing = folder.resolve("none.yaml").toString();
        for (String command : List.of("explore", "check", "appraise")) {
            Run run = Run.of(command, missing);
            assertThat(run.code()).isEqualTo(Exit.USER_INPUT);
            assertThat(run.out()).isEmpty();
            assertThat(run.err()).contains("none.yaml", "there is no such file");
            clean(run);
            Run folderRun = Run.of(command, folder.toString());
            assertThat(folderRun.code()).isEqualTo(Exit.USER_INPUT);
            assertThat(folderRun.err()).contains("folder");
            clean(folderRun);
        }
    }

    @Test
    void aDesignThatCannotBeReadIsToldLikeAStudy() throws IOException {
        Path file = Files.writeString(folder.resolve("d.yaml"), "design: d\nwing: {kind: monoplane, spam: 1.2 m}\n");
        for (String command : List.of("appraise", "check")) {
            Run run = Run.of(command, file.toString());
            assertThat(run.code()).isEqualTo(Exit.USER_INPUT);
            assertThat(run.err()).contains("d.yaml:2  wing.spam: there is no such key", "span");
            clean(run);
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsExitFourInOneLine() throws IOException {
        String study =
                Files.writeString(folder.resolve("dropper.yaml"), Dropper.YAML).toString();
        Path file = Files.createFile(folder.resolve("file"));
        for (Path place : List.of(file, file.resolve("below"))) {
            Run run = Run.of("explore", study, "--out", place.toString(), "--evaluations", "100");
            cannotWrite(run, place);
        }
    }

    @Test
    void aReadOnlyFolderIsExitFourInOneLine() throws IOException {
        Path locked = Files.createDirectory(folder.resolve("locked"));
        assumeTrue(locked.toFile().setWritable(false) && !Files.isWritable(locked), "this user may write anywhere");
        String study =
                Files.writeString(folder.resolve("dropper.yaml"), Dropper.YAML).toString();
        cannotWrite(Run.of("explore", study, "--out", locked.toString(), "--evaluations", "100"), locked);
        assertThat(locked.toFile().setWritable(true)).isTrue();
    }

    private static void cannotWrite(Run run, Path place) {
        assertThat(run.code()).isEqualTo(Exit.CANNOT_WRITE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(place.toString(), "cannot write here", "--out");
        assertThat(run.err().lines()).hasSize(1);
        clean(run);
    }
}
