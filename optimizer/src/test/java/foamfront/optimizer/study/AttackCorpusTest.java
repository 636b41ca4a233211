package foamfront.optimizer.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import foamfront.optimizer.faults.Fault;
import foamfront.optimizer.faults.StudyException;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Files made to break a reader are refused by studies and designs alike, with a place and advice, and in no other way. */
class AttackCorpusTest {
    private static final String START = "study: trainer\nvary:\n  span: ";

    private static Map<String, byte[]> corpus() {
        Map<String, String> text = new LinkedHashMap<>();
        text.put("alias bomb", bomb(9));
        text.put("deeper alias bomb", bomb(24));
        text.put("aliases without end", "a: &a x\nb: [" + "*a, ".repeat(30_000) + "]\n");
        text.put("an anchor inside itself", "a: &a [1, *a]\n");
        text.put("two anchors inside each other", "a: &a [*b]\nb: &b [*a]\n");
        text.put("a mapping as its own key", "&a {*a : 1}\n");
        text.put("merged into itself", "a: &a\n  <<: *a\n");
        text.put("lists in lists", "[".repeat(20_000));
        text.put("lists in lists, closed", "[".repeat(20_000) + "]".repeat(20_000));
        text.put("mappings in mappings", "{a: ".repeat(20_000));
        text.put("dashes in dashes", "- ".repeat(20_000) + "x\n");
        text.put("question marks", "? ".repeat(20_000) + "x\n");
        text.put("indented ever deeper", indented(300));
        text.put("a megabyte of digits", START + "9".repeat(1 << 20) + " m\n");
        text.put("a quarter of that", START + "9".repeat(1 << 17) + " m to 1 m\n");
        text.put("digits under the limit", START + "9".repeat(1000) + " m to 2 m\n");
        text.put("decimals without end", START + "0." + "0".repeat(1000) + "1 m to 2 m\n");
        text.put("a great exponent", START + "1e999999999 m to 2e999999999 m\n");
        text.put("a great negative exponent", START + "1e-999999999 m to 2e-999999999 m\n");
        text.put("an exponent past every integer", START + "1e99999999999999999999 m to 2 m\n");
        text.put("infinity", START + ".inf m to .inf m\n");
        text.put("no number", START + "nan m to nan m\n");
        text.put("division by nothing", START + "1/0 in to 40 in\n");
        text.put("hexadecimal", START + "0x7fffffff m to 2 m\n");
        text.put("a null character", START + "1\0 m to 2 m\n");
        text.put("a bell and an escape", START + "1\u0007 m to \u001b[31m2 m\n");
        text.put("a byte order mark inside", START + "\uFEFF1 m to 2 m\n");
        text.put("a lone carriage return", START + "\r1 m to 2 m\rvary: x\r");
        text.put("tabs", "study:\ttrainer\nvary:\n\tspan:\t1 m to 2 m\n");
        text.put("line separators", START + "1 m\u2028to\u20292 m\u0085x\n");
        text.put("text that runs leftwards", START + "\u202e1 m to 2 m\n");
        text.put("an escaped surrogate", "study: \"\\ud83d\"\nvary: {span: x}\n");
        text.put("a class by tag", "study: !!javax.script.ScriptEngineManager [!!java.net.URLClassLoader [[]]]\n");
        text.put("a local tag", "study: !run rm\n");
        text.put("binary", "study: !!binary R0lGODlhDAAMAIQAAP\n");
        text.put("a tag directive", "%TAG ! tag:example.com,2000:app/\n---\nstudy: !x y\n");
        text.put("a version not made yet", "%YAML 9.9\n---\nstudy: x\n");
        text.put("two documents", "study: a\n---\nstudy: b\n");
        text.put("a hundred thousand documents", "---\n".repeat(60_000));
        text.put("a list", "- study: a\n");
        text.put("a word", "trainer\n");
        text.put("nothing but nothing", "~\n");
        text.put("a key without end", "a".repeat(100_000) + ": 1\n");
        text.put("keys without end", keys(12_000));
        text.put("an open quotation", "study: \"trainer\n" + "x".repeat(100_000));
        text.put("an open block", "study: |\n" + " x\n".repeat(60_000));
        text.put("comments only", "# x\n".repeat(60_000));
        text.put("spaces only", " ".repeat(200_000));
        text.put("the same key twice", "study: a\nstudy: b\n");
        Map<String, byte[]> corpus = new LinkedHashMap<>();
        text.forEach((name, file) -> corpus.put(name, file.getBytes(StandardCharsets.UTF_8)));
        corpus.put("half a surrogate pair", bytes("study: ", 0xED, 0xA0, 0xBD));
        corpus.put("an overlong slash", bytes("study: ", 0xC0, 0xAF));
        corpus.put("beyond the last character", bytes("study: ", 0xF4, 0x90, 0x80, 0x80));
        corpus.put("UTF-16", "study: trainer\n".getBytes(StandardCharsets.UTF_16));
        corpus.put("UTF-32 order mark", bytes("", 0, 0, 0xFE, 0xFF));
        corpus.put("Latin-1", "study: Flügel\n".getBytes(StandardCharsets.ISO_8859_1));
        corpus.put("a truncated character", bytes("study: ", 0xE2, 0x82));
        corpus.put("all bytes there are", everyByte());
        return corpus;
    }

    private static String bomb(int levels) {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < levels; i++) {
            String before = "*a" + (i - 1);
            text.append("a" + i + ": &a" + i + " [" + before + ", " + before + ", " + before + "]\n");
        }
        return text.toString();
    }

    private static String indented(int levels) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < levels; i++) {
            text.append(" ".repeat(i)).append("a:\n");
        }
        return text.toString();
    }

    private static String keys(int count) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append("k").append(i).append(": 1\n");
        }
        return text.toString();
    }

    private static byte[] bytes(String start, int... more) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(start.getBytes(StandardCharsets.UTF_8));
        for (int b : more) {
            all.write(b);
        }
        return all.toByteArray();
    }

    private static byte[] everyByte() {
        byte[] all = new byte[256];
        for (int i = 0; i < all.length; i++) {
            all[i] = (byte) i;
        }
        return all;
    }

    @Test
    void everyHostileStudyIsRefused() {
        corpus().forEach((name, bytes) -> refused(
                name,
                catchThrowableOfType(
                        StudyException.class, () -> StudyReader.read("attack.yaml", bytes, Fixtures.catalogue()))));
    }

    @Test
    void everyHostileDesignIsRefused() {
        corpus().forEach((name, bytes) -> refused(
                name,
                catchThrowableOfType(
                        StudyException.class, () -> DesignReader.read("attack.yaml", bytes, Fixtures.catalogue()))));
    }

    private static void refused(String name, StudyException e) {
        assertThat(e).as(name).isNotNull();
        assertThat(e.faults()).as(name).isNotEmpty().hasSizeLessThanOrEqualTo(50);
        for (Fault fault : e.faults()) {
            assertThat(fault.file()).isEqualTo("attack.yaml");
            assertThat(fault.problem()).as(name).isNotBlank();
            assertThat(fault.advice()).as(name).isNotBlank();
            assertThat(fault.toString()).as(name).hasSizeLessThan(2000).doesNotContain("Exception", "\u001b", "\0");
        }
    }
}
