package foamfront.optimizer.yaml;

import foamfront.optimizer.faults.Faults;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Iterator;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/**
 * Reads one YAML mapping, guarded: at most {@value #MOST_BYTES} bytes of UTF-8, and the limits of {@link TreeBuilder}. Whatever
 * is wrong ends as faults, never as another exception.
 */
public final class YamlReader {
    /** Largest file, bytes. */
    public static final int MOST_BYTES = 256 * 1024;

    private YamlReader() {}

    /** The bytes of a file, or null with a fault where there is none to read. */
    public static byte @Nullable [] bytes(Path path, Faults faults) {
        try {
            if (Files.isDirectory(path)) {
                faults.add(0, 0, "", "this is a folder", "Name the file in it.");
                return null;
            }
            try (InputStream in = Files.newInputStream(path)) {
                return in.readNBytes(MOST_BYTES + 1);
            }
        } catch (NoSuchFileException e) {
            faults.add(0, 0, "", "there is no such file", "Check the name and the folder: " + path + ".");
        } catch (AccessDeniedException e) {
            faults.add(0, 0, "", "the file may not be read", "Check its permissions.");
        } catch (IOException e) {
            faults.add(0, 0, "", "the file cannot be read: " + e.getMessage(), "Check the disk.");
        }
        return null;
    }

    /** The document's mapping, or null with the faults that keep it from being one. */
    public static Yaml.@Nullable Mapping read(byte[] bytes, Faults faults) {
        if (bytes.length > MOST_BYTES) {
            faults.add(0, 0, "", "the file is larger than 256 KiB", "A file of this kind has a few kilobytes.");
            return null;
        }
        String text = decode(bytes, faults);
        if (text == null || !Characters.check(text, faults)) {
            return null;
        }
        Yaml root = parse(text, faults);
        if (root == null) {
            return null;
        }
        if (root instanceof Yaml.Mapping mapping) {
            return mapping;
        }
        String hint = root instanceof Yaml.Scalar scalar ? Hints.missingSpace(scalar.text()) : null;
        faults.add(
                root.line(),
                root.column(),
                "",
                "the file holds no keys",
                hint == null ? "Write lines like 'span: 1.2 m'." : hint);
        return null;
    }

    private static @Nullable String decode(byte[] bytes, Faults faults) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            faults.add(0, 0, "", "the file is not text in UTF-8", "Save it as UTF-8 from a text editor.");
            return null;
        }
    }

    private static @Nullable Yaml parse(String text, Faults faults) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(faults.file())
                .setCodePointLimit(MOST_BYTES)
                .setUseMarks(true)
                .build();
        TreeBuilder builder = new TreeBuilder(faults);
        try {
            Iterator<Event> events = new Parse(settings).parseString(text).iterator();
            return builder.document(events);
        } catch (MarkedYamlEngineException e) {
            syntax(text, e, faults);
        } catch (RuntimeException e) {
            // The library's scanner has other ways to fail on hostile text; this is the one boundary they cross.
            faults.add(
                    builder.line(),
                    0,
                    "",
                    "this is not readable as YAML",
                    "Look for odd characters near this line; write lines like 'span: 1.2 m'.");
        }
        return null;
    }

    private static void syntax(String text, MarkedYamlEngineException e, Faults faults) {
        Mark mark = e.getProblemMark().or(e::getContextMark).orElse(null);
        int line = mark == null ? 0 : mark.getLine() + 1;
        int column = mark == null ? 0 : mark.getColumn() + 1;
        Mark context = e.getContextMark().orElse(null);
        int start = context == null ? line : Math.min(line, context.getLine() + 1);
        Hints.Found hint = Hints.syntax(text, start, line);
        String problem = e.getProblem() == null ? "this cannot be read" : Hints.plain(e.getProblem());
        if (hint != null) {
            faults.add(hint.line(), 1, "", "a key and its value run together", hint.advice());
            return;
        }
        faults.add(
                line,
                column,
                "",
                "this is not readable as YAML: " + problem,
                "Check the indentation, brackets and quotes here; write lines like 'span: 1.2 m'.");
    }
}
