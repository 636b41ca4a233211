package foamfront.optimizer.runs;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * A disk in memory that can refuse any operation, end the program at it, and lose what was not forced: of each file's unforced
 * content nothing, a part or all may be left, and of the unforced names in a folder any subset.
 */
public final class MemoryStore implements Store {
    /** The program ended here. */
    public static final class Abort extends Error {
        private static final long serialVersionUID = 1;
    }

    /** What happens at the chosen operation. */
    public enum Trouble {
        NONE,
        REFUSED,
        ABORT_BEFORE,
        ABORT_AFTER
    }

    /** A file's content, on the disk and as the program sees it. */
    private static final class Content {
        byte[] forced = new byte[0];
        byte[] seen = new byte[0];

        static Content of(byte[] bytes) {
            Content content = new Content();
            content.forced = bytes.clone();
            content.seen = bytes.clone();
            return content;
        }
    }

    /** A change of names that is not forced yet. */
    private record Change(Path name, @Nullable Content to) {}

    private final Map<Path, Content> forced = new TreeMap<>();
    private final Map<Path, Content> seen = new TreeMap<>();
    private final TreeSet<Path> folders = new TreeSet<>();
    private final List<Change> changes = new ArrayList<>();
    private final Trouble trouble;
    private final long at;
    private boolean forcing = true;
    private long operations;

    public MemoryStore() {
        this(Trouble.NONE, -1);
    }

    /** @param at number of the operation, from 0 */
    public MemoryStore(Trouble trouble, long at) {
        this.trouble = trouble;
        this.at = at;
    }

    /** A careless disk, for the test of the tests: nothing is ever forced. */
    public MemoryStore careless() {
        forcing = false;
        return this;
    }

    public long operations() {
        return operations;
    }

    /** What a restart finds. */
    public MemoryStore afterPowerCut(RandomGenerator random) {
        MemoryStore left = new MemoryStore();
        left.folders.addAll(folders);
        Map<Path, Content> names = new TreeMap<>(forced);
        for (Change change : changes) {
            if (random.nextBoolean()) {
                put(names, change);
            }
        }
        names.forEach((name, content) -> {
            Content kept = Content.of(remains(content, random));
            left.forced.put(name, kept);
            left.seen.put(name, kept);
        });
        return left;
    }

    private static byte[] remains(Content content, RandomGenerator random) {
        if (Arrays.equals(content.forced, content.seen)) {
            return content.forced;
        }
        return switch (random.nextInt(3)) {
            case 0 -> content.forced;
            case 1 -> content.seen;
            default -> Arrays.copyOf(content.seen, random.nextInt(content.seen.length + 1));
        };
    }

    /** What a restart finds when only the program ended: all that it saw. */
    public MemoryStore afterRestart() {
        MemoryStore left = new MemoryStore();
        left.folders.addAll(folders);
        seen.forEach((name, content) -> {
            Content kept = Content.of(content.seen);
            left.forced.put(name, kept);
            left.seen.put(name, kept);
        });
        return left;
    }

    private static void put(Map<Path, Content> names, Change change) {
        if (change.to() == null) {
            names.remove(change.name());
        } else {
            names.put(change.name(), change.to());
        }
    }

    private void change(Path name, @Nullable Content to) {
        Change change = new Change(name, to);
        put(seen, change);
        changes.add(change);
    }

    /** One operation, with its trouble. */
    private interface Step {
        void run() throws IOException;
    }

    private synchronized void step(Step step) throws IOException {
        boolean here = operations++ == at;
        if (here && trouble == Trouble.REFUSED) {
            throw new IOException("No space left on device");
        }
        if (here && trouble == Trouble.ABORT_BEFORE) {
            throw new Abort();
        }
        step.run();
        if (here && trouble == Trouble.ABORT_AFTER) {
            throw new Abort();
        }
    }

    @Override
    public void create(Path folder) throws IOException {
        step(() -> {
            if (!folders.add(folder)) {
                throw new FileAlreadyExistsException(folder.toString());
            }
        });
    }

    @Override
    public void createAll(Path folder) throws IOException {
        step(() -> folders.add(folder));
    }

    @Override
    public void write(Path file, byte[] content) throws IOException {
        step(() -> {
            Content held = seen.get(file);
            if (held == null) {
                held = new Content();
                change(file, held);
            }
            held.seen = content.clone();
        });
    }

    @Override
    public void force(Path file) throws IOException {
        step(() -> {
            Content held = held(file);
            if (forcing) {
                held.forced = held.seen;
            }
        });
    }

    private Content held(Path file) throws IOException {
        Content held = seen.get(file);
        if (held == null) {
            throw new NoSuchFileException(file.toString());
        }
        return held;
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        step(() -> {
            Content held = held(from);
            change(from, null);
            change(to, held);
        });
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        step(() -> {
            if (forcing) {
                changes.stream()
                        .filter(change -> folder.equals(change.name().getParent()))
                        .forEach(change -> put(forced, change));
                changes.removeIf(change -> folder.equals(change.name().getParent()));
            }
        });
    }

    @Override
    public void delete(Path path) throws IOException {
        step(() -> {
            if (seen.containsKey(path)) {
                change(path, null);
            }
        });
    }

    @Override
    public byte[] read(Path file) throws IOException {
        byte[][] result = new byte[1][];
        step(() -> result[0] = held(file).seen.clone());
        return result[0];
    }

    @Override
    public List<String> names(Path folder) throws IOException {
        List<String> names = new ArrayList<>();
        step(() -> seen.keySet().stream()
                .filter(file -> folder.equals(file.getParent()))
                .forEach(file -> names.add(String.valueOf(file.getFileName()))));
        return names;
    }

    @Override
    public int writers() {
        return 1;
    }
}
