package foamfront.optimizer.runs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32C;
import org.jspecify.annotations.Nullable;

/**
 * The checkpoints of a run, numbered files in its folder {@code checkpoint}, of which the last two are kept.
 *
 * <p>A file is text: a line that names the format, the facts of the run as {@code name: value} lines, a line {@code state}, the
 * state, and last the CRC-32C of all bytes before it. It is written under a temporary name, forced and renamed, and the folder is
 * forced before the last but one goes, so that at any moment one whole checkpoint is there.
 */
public final class CheckpointFiles {
    /** The number goes up whenever what the state's lines mean changes. */
    static final String FORMAT = "foamfront checkpoint 3\n";

    private static final Pattern ANY_FORMAT = Pattern.compile("foamfront checkpoint \\d+\n");
    static final String FOLDER = "checkpoint";

    private static final String STATE = "state\n";
    private static final String SUM = "crc32c ";
    private static final int SUM_LENGTH = SUM.length() + 9;
    private static final int KEPT = 2;

    /**
     * What was read.
     *
     * @param facts {@code name: value} lines
     * @param state of the search
     * @param remarks sentences on checkpoints that were passed over
     */
    public record Loaded(String facts, String state, List<String> remarks) {
        public Loaded {
            remarks = List.copyOf(remarks);
        }
    }

    private final Store store;
    private final Path folder;
    private final List<String> sound = new ArrayList<>();
    private long number;

    CheckpointFiles(Store store, Path run) {
        this.store = store;
        this.folder = run.resolve(FOLDER);
    }

    /** Keeps a state. */
    public void write(String facts, String state) {
        try {
            store.createAll(folder);
            String name = String.format(Locale.ROOT, "%08d.txt", ++number);
            AtomicFile.write(store, folder.resolve(name), sealed(FORMAT + facts + STATE + state));
            AtomicFile.force(store, folder);
            sound.add(name);
            removeAllBut(sound.subList(Math.max(0, sound.size() - KEPT), sound.size()));
        } catch (IOException e) {
            throw new CannotWrite(folder, e);
        }
    }

    private void removeAllBut(List<String> kept) throws IOException {
        for (String name : store.names(folder)) {
            if (isCheckpoint(name) && !kept.contains(name)) {
                store.delete(folder.resolve(name));
            }
        }
    }

    /**
     * The newest checkpoint whose checksum holds, or null; deletes what an ended write left behind.
     *
     * @throws OtherFormat where another version of the program wrote one
     */
    public @Nullable Loaded newest() {
        try {
            List<String> remarks = new ArrayList<>();
            Loaded loaded = null;
            sound.clear();
            for (String name : store.names(folder)) {
                if (name.endsWith(AtomicFile.PART)) {
                    store.delete(folder.resolve(name));
                } else if (isCheckpoint(name)) {
                    number = Long.parseLong(name.substring(0, 8));
                    loaded = read(name, loaded, remarks);
                }
            }
            return loaded == null ? null : new Loaded(loaded.facts(), loaded.state(), remarks);
        } catch (IOException e) {
            throw new CannotWrite(folder, e);
        }
    }

    private @Nullable Loaded read(String name, @Nullable Loaded before, List<String> remarks) throws IOException {
        byte[] bytes = store.read(folder.resolve(name));
        Matcher other = ANY_FORMAT.matcher(new String(bytes, StandardCharsets.UTF_8));
        if (other.lookingAt() && !other.group().equals(FORMAT)) {
            throw new OtherFormat(folder.resolve(name), other.group().strip(), FORMAT.strip());
        }
        Loaded loaded = opened(bytes);
        if (loaded == null) {
            remarks.add(folder.resolve(name) + " is damaged: its checksum does not hold. "
                    + (before == null ? "No earlier one is there." : "The checkpoint before it is taken."));
            return before;
        }
        sound.add(name);
        return loaded;
    }

    private static boolean isCheckpoint(String name) {
        return name.matches("\\d{8}\\.txt");
    }

    static String sealed(String text) {
        return text + SUM + sum(text.getBytes(StandardCharsets.UTF_8)) + "\n";
    }

    private static String sum(byte[] bytes) {
        CRC32C crc = new CRC32C();
        crc.update(bytes);
        return String.format(Locale.ROOT, "%08x", crc.getValue());
    }

    /** Null unless the checksum holds. */
    static @Nullable Loaded opened(byte[] bytes) {
        int end = bytes.length - SUM_LENGTH;
        if (end < 0) {
            return null;
        }
        byte[] body = Arrays.copyOf(bytes, end);
        String last = new String(bytes, end, SUM_LENGTH, StandardCharsets.ISO_8859_1);
        String text = new String(body, StandardCharsets.UTF_8);
        int state = text.indexOf("\n" + STATE);
        if (!last.equals(SUM + sum(body) + "\n") || !text.startsWith(FORMAT) || state < 0) {
            return null;
        }
        return new Loaded(
                text.substring(FORMAT.length(), state + 1), text.substring(state + 1 + STATE.length()), List.of());
    }
}
