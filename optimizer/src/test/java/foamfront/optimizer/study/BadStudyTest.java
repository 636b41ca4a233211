package foamfront.optimizer.study;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.faults.StudyException;
import java.nio.file.Path;
import java.util.Random;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Golden cases: each message says file and line, the key, what is wrong and what would be right. */
class BadStudyTest {
    /** Where and what, a sentence. */
    private static final String FAULT = "trainer\\.yaml(:\\d+)?  \\S.*\\.";

    /** What would be right, under the fault. */
    private static final String ADVICE = " {14,}\\S.*";

    private static final String GOOD = """
            study: trainer
            payload:
              - {name: camera, mass: 30 g, size: 30 mm x 30 mm x 25 mm}
            vary:
              span: 0.9 m to 1.3 m
              body length: 0.6 m to 0.9 m
            aim: {most: [payload], least: [build cost]}
            """;

    /** Columns: line of the good study to replace (0 appends, lines are cut at ¦), what stands there, what the message holds. */
    @ParameterizedTest(name = "{1}")
    @CsvFileSource(resources = "/foamfront/optimizer/study/bad-studies.txt", delimiter = '|', quoteCharacter = '`')
    void saysWhereWhatAndWhatToDo(int line, String text, String where, String problem, String advice) {
        String[] lines = GOOD.split("\n", -1);
        String there = text.replace("¦", "\n").replace("→", "\t");
        String study;
        if (line == 0) {
            study = GOOD + there + "\n";
        } else {
            lines[line - 1] = there;
            study = String.join("\n", lines);
        }

        String message = Fixtures.refusal(study);

        assertThat(message).contains(where).contains(problem).contains(advice);
        assertThat(message.lines()).allMatch(part -> part.matches(FAULT) || part.matches(ADVICE));
    }

    @Test
    void readsTheGoodOne() {
        assertThat(Fixtures.study(GOOD).name()).isEqualTo("trainer");
        assertThat(Fixtures.study("\uFEFF" + GOOD.replace("\n", "\r\n"))).isEqualTo(withDigestOf(GOOD));
    }

    private static Study withDigestOf(String text) {
        Study study = Fixtures.study(text);
        String digest = Digest.of("\uFEFF" + text.replace("\n", "\r\n"));
        return new Study(
                study.name(),
                study.about(),
                study.currency(),
                study.site(),
                study.payload(),
                study.carSpace(),
                study.arrangements(),
                study.vary(),
                study.fixed(),
                study.stock(),
                study.drawer(),
                study.limits(),
                study.aims(),
                study.prefer(),
                study.showIn(),
                study.increment(),
                study.search(),
                study.keepFrom(),
                study.startFrom(),
                digest);
    }

    @Test
    void tellsAllFaultsAtOnce() {
        String message = Fixtures.refusal(GOOD.replace("0.9 m to 1.3 m", "1.3 m to 0.9 m")
                .replace("30 g", "30 mm")
                .replace("build cost", "bild cost"));

        assertThat(message)
                .contains("trainer.yaml:3  payload.mass: '30 mm' is a length where a mass belongs")
                .contains("trainer.yaml:5  vary.span: '1.3 m to 0.9 m' runs downwards")
                .contains("trainer.yaml:7  aim.least: there is no measure 'bild cost'");
    }

    @Test
    void theAdviceStandsUnderTheProblem() {
        assertThat(Fixtures.refusal(GOOD.replace("span: 0.9 m to 1.3 m", "root chord: 200 mm to 620 mm")
                        + "boards: [white 5 mm]\n"))
                .isEqualTo("""
                        trainer.yaml:5  vary.root chord: 620 mm lies outside what can be.
                                        Use 60 mm to 600 mm.""".replace("620 mm lies", "200 mm to 620 mm lies"));
        assertThat(Fixtures.refusal(GOOD.replace("span: 0.9 m to 1.3 m", "root chord: 200 mm to 580 mm")
                        + "boards: [white 5 mm]\n"))
                .isEqualTo("""
                        trainer.yaml:5  vary.root chord: 580 mm is wider than the 508 mm sheet.
                                        Use at most 508 mm, or name a wider board under boards.""");
        assertThat(Fixtures.refusal(GOOD + "fix: {root chord: 580 mm}\nboards: [white 5 mm]\n"))
                .contains("fix.root chord: 580 mm is wider than the 508 mm sheet.");
    }

    @Test
    void emptyAndMissingFiles(@TempDir Path folder) {
        assertThat(Fixtures.refusal(""))
                .isEqualTo("trainer.yaml  the file is empty.\n"
                        + "              Write at least a name, for example 'study: trainer'.");
        assertThat(Fixtures.refusal("# nothing\n")).contains("the file is empty");
        assertThat(missing(folder.resolve("none.yaml"))).startsWith("none.yaml  there is no such file.");
        assertThat(missing(folder)).contains("this is a folder");
    }

    private static String missing(Path path) {
        StudyException e = Assertions.catchThrowableOfType(
                StudyException.class, () -> StudyReader.read(path, Fixtures.catalogue()));
        return e == null ? "read without a fault" : String.valueOf(e.getMessage());
    }

    @Test
    void hostileFilesAreRefused() {
        assertThat(Fixtures.refusal("a: &a [x,x,x,x,x,x,x,x,x]\n" + bomb())).contains("10 000 values");
        assertThat(Fixtures.refusal("study: &s [*s]\n")).contains("stands before its anchor or inside it");
        assertThat(Fixtures.refusal("[".repeat(20_000))).contains("nested more than 32 deep");
        assertThat(Fixtures.refusal("a: {".repeat(20_000))).contains("nested more than 32 deep");
        assertThat(Fixtures.refusal("study: " + "9".repeat(200_000))).contains("longer than 1024 characters");
        assertThat(Fixtures.refusal("x: " + "*a ".repeat(3))).contains("alias");
        assertThat(Fixtures.refusal("study: \0x\n")).contains("control character (U+0000)");
        assertThat(Fixtures.refusal("study: !!java.net.URL [x]\n")).contains("has no meaning here");
        assertThat(Fixtures.refusal("a".repeat(300_000))).contains("larger than 256 KiB");
        assertThat(Fixtures.refusal(new byte[] {'a', (byte) 0xff, ':'})).contains("not text in UTF-8");
        assertThat(Fixtures.refusal("a: 1\n---\nb: 2\n")).contains("second document");
        assertThat(Fixtures.refusal("study: \ud83d\n")).startsWith("trainer.yaml:1");
    }

    @Test
    void noiseIsRefused() {
        Random random = new Random(5);
        byte[] noise = new byte[200_000];
        random.nextBytes(noise);
        assertThat(Fixtures.refusal(noise)).contains("not text in UTF-8");
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (byte) (' ' + random.nextInt(95));
        }
        assertThat(Fixtures.refusal(noise)).startsWith("trainer.yaml");
    }

    private static String bomb() {
        StringBuilder text = new StringBuilder();
        for (char c = 'b'; c < 'i'; c++) {
            String before = "*" + (char) (c - 1);
            text.append(c).append(": &").append(c).append(" [" + before + "," + before + "]\n");
        }
        return text.toString().replaceAll("\\[(\\*.),(\\*.)]", "[$1,$2,$1]");
    }
}
