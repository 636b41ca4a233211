package foamfront.optimizer.study;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.faults.Fault;
import foamfront.optimizer.faults.StudyException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Mutated files are read or refused, and never end in another way. */
class StudyFuzzTest {
    private static final int STUDIES = 20_000;
    private static final int DESIGNS = 4_000;
    private static final String[] SPLICES = {
        ": ",
        ":",
        "{",
        "}",
        "[",
        "]",
        ",",
        "\n",
        "  ",
        "\t",
        "- ",
        "&a ",
        "*a",
        "!!x ",
        "|",
        ">",
        "\"",
        "'",
        "#",
        "?",
        "%",
        "\u0000",
        "\uFEFF",
        "\r\n",
        "---\n",
        "...\n",
        "1e999",
        "-",
        "to",
        "at most",
        "nan",
        "~",
        "<<: *a",
        "é",
        "\ud83d\ude00",
        "0,5",
        "1/0 in",
        "999999999999999999999",
        "yes",
        "0x1F",
        "`",
        "@",
        "\\",
        "\u2028",
        "x"
    };

    @Test
    void mutatedStudiesAreReadOrRefused() throws IOException {
        String good = Files.readString(Fixtures.TRAINER);
        Random random = new Random(20_261_125);
        int refused = 0;
        for (int i = 0; i < STUDIES; i++) {
            byte[] bytes = mutated(good, random);
            try {
                StudyReader.read("fuzz.yaml", bytes, Fixtures.catalogue());
            } catch (StudyException e) {
                refused++;
                check(e);
            }
        }
        assertThat(refused).isBetween(STUDIES / 2, STUDIES - 1);
    }

    @Test
    void mutatedDesignsAreReadOrRefused() {
        String good = DesignWriter.write(DesignReaderTest.trainer());
        Random random = new Random(7);
        int refused = 0;
        for (int i = 0; i < DESIGNS; i++) {
            byte[] bytes = mutated(good, random);
            try {
                DesignReader.read("fuzz.yaml", bytes, Fixtures.catalogue());
            } catch (StudyException e) {
                refused++;
                check(e);
            }
        }
        assertThat(refused).isBetween(DESIGNS / 2, DESIGNS - 1);
    }

    private static void check(StudyException e) {
        assertThat(e.faults()).isNotEmpty();
        for (Fault fault : e.faults()) {
            assertThat(fault.problem()).isNotBlank();
            assertThat(fault.advice()).isNotBlank();
            assertThat(fault.line()).isNotNegative();
        }
    }

    private static byte[] mutated(String good, Random random) {
        StringBuilder text = new StringBuilder(good);
        for (int n = random.nextInt(4); n >= 0; n--) {
            int at = random.nextInt(text.length());
            int to = Math.min(text.length(), at + random.nextInt(12));
            switch (random.nextInt(5)) {
                case 0 -> text.delete(at, to);
                case 1 -> text.insert(at, SPLICES[random.nextInt(SPLICES.length)]);
                case 2 -> text.replace(at, to, SPLICES[random.nextInt(SPLICES.length)]);
                case 3 -> text.insert(random.nextInt(text.length()), text.substring(at, to));
                default ->
                    text.setCharAt(
                            at, (char) (random.nextInt(20) == 0 ? random.nextInt(0x10000) : random.nextInt(128)));
            }
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(20) == 0) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }
}
