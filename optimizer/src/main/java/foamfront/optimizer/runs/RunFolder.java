package foamfront.optimizer.runs;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** The folder of one run; nobody else writes into it. */
public final class RunFolder {
    private static final int MOST_RUNS = 99_999;

    private final Path path;

    private RunFolder(Path path) {
        this.path = path;
    }

    /** A new folder {@code results/<study>/<next number>}, made now so that no other run takes it. */
    public static RunFolder create(Path results, String study) {
        Path parent = results.resolve(SafeName.of(study));
        try {
            Files.createDirectories(parent);
            for (int number = 1; number <= MOST_RUNS; number++) {
                Path folder = parent.resolve(String.format(Locale.ROOT, "%03d", number));
                if (claim(folder)) {
                    return new RunFolder(folder);
                }
            }
        } catch (IOException e) {
            throw new CannotWrite(parent, e);
        }
        throw new CannotWrite(parent, new IOException("it holds " + MOST_RUNS + " runs already"));
    }

    /** Making the folder is the claim: of two processes only one can. */
    private static boolean claim(Path folder) throws IOException {
        try {
            Files.createDirectory(folder);
            return true;
        } catch (FileAlreadyExistsException taken) {
            return false;
        }
    }

    public Path path() {
        return path;
    }

    /** Writes one whole file into this run. */
    public void write(String name, String text) {
        AtomicFile.write(inside(name), text);
    }

    /** Writes one whole file into a folder of this run. */
    public void write(String folder, String name, String text) {
        Path directory = inside(folder);
        try {
            Files.createDirectories(directory);
        } catch (IOException e) {
            throw new CannotWrite(directory, e);
        }
        Path target = directory.resolve(name).normalize();
        if (!directory.equals(target.getParent())) {
            throw new IllegalArgumentException(name + " leaves the run's folder");
        }
        AtomicFile.write(target, text);
    }

    /** Makes what was written last. */
    public void seal() {
        AtomicFile.force(path);
    }

    /** Removes the folder again if nothing was written into it. */
    public void discardIfEmpty() {
        try {
            Files.deleteIfExists(path);
        } catch (IOException notEmpty) {
            return; // it holds something: it stays
        }
    }

    private Path inside(String name) {
        Path target = path.resolve(name).normalize();
        if (!path.normalize().equals(target.getParent())) {
            throw new IllegalArgumentException(name + " leaves the run's folder");
        }
        return target;
    }
}
