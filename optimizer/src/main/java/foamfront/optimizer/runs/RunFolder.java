package foamfront.optimizer.runs;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** The folder of one run; nobody else writes into it. */
public final class RunFolder {
    private static final int MOST_RUNS = 99_999;

    private final Store store;
    private final Path path;

    private RunFolder(Store store, Path path) {
        this.store = store;
        this.path = path;
    }

    /** A run that is there already. */
    public static RunFolder open(Store store, Path path) {
        return new RunFolder(store, path);
    }

    /** A new folder {@code results/<study>/<next number>}, made now so that no other run takes it. */
    public static RunFolder create(Store store, Path results, String study) {
        Path parent = results.resolve(SafeName.of(study));
        try {
            store.createAll(parent);
            for (int number = 1; number <= MOST_RUNS; number++) {
                Path folder = parent.resolve(String.format(Locale.ROOT, "%03d", number));
                if (claim(store, folder)) {
                    return new RunFolder(store, folder);
                }
            }
        } catch (IOException e) {
            throw new CannotWrite(parent, e);
        }
        throw new CannotWrite(parent, new IOException("it holds " + MOST_RUNS + " runs already"));
    }

    /** Making the folder is the claim: of two processes only one can. */
    private static boolean claim(Store store, Path folder) throws IOException {
        try {
            store.create(folder);
            return true;
        } catch (FileAlreadyExistsException taken) {
            return false;
        }
    }

    Store store() {
        return store;
    }

    /** Its checkpoints. */
    public CheckpointFiles checkpoints() {
        return new CheckpointFiles(store, path);
    }

    public Path path() {
        return path;
    }

    /** Writes one whole file into this run. */
    public void write(String name, String text) {
        AtomicFile.write(store, inside(name), text);
    }

    /** Writes one whole file into a folder of this run. */
    public void write(String folder, String name, String text) {
        writeAll(folder, Map.of(name, text));
    }

    /** Writes many whole files into a folder of this run; together, because a disk forces many at once as fast as one. */
    public void writeAll(String folder, Map<String, String> files) {
        Path directory = inside(folder);
        try {
            store.createAll(directory);
        } catch (IOException e) {
            throw new CannotWrite(directory, e);
        }
        List<Callable<Void>> tasks = new ArrayList<>();
        files.forEach((name, text) -> {
            Path target = directory.resolve(name).normalize();
            if (!directory.equals(target.getParent())) {
                throw new IllegalArgumentException(name + " leaves the run's folder");
            }
            tasks.add(() -> {
                AtomicFile.write(store, target, text);
                return null;
            });
        });
        runAll(tasks);
        AtomicFile.force(store, directory);
    }

    /** The same, and removes those files of that folder that are not among them: an earlier end of this run left them. */
    public void replaceAll(String folder, Map<String, String> files) {
        writeAll(folder, files);
        Path directory = inside(folder);
        try {
            for (String name : store.names(directory)) {
                if (!files.containsKey(name)) {
                    store.delete(directory.resolve(name));
                }
            }
        } catch (IOException e) {
            throw new CannotWrite(directory, e);
        }
        AtomicFile.force(store, directory);
    }

    /** Removes a file of this run that an earlier end of it left and that no longer holds. */
    public void remove(String name) {
        try {
            store.delete(inside(name));
        } catch (IOException e) {
            throw new CannotWrite(inside(name), e);
        }
    }

    private void runAll(List<Callable<Void>> tasks) {
        ExecutorService writers = Executors.newFixedThreadPool(Math.max(1, Math.min(store.writers(), tasks.size())));
        try {
            for (Future<Void> written : writers.invokeAll(tasks)) {
                written.get();
            }
        } catch (ExecutionException e) {
            if (e.getCause() instanceof CannotWrite refused) {
                throw refused;
            }
            throw new IllegalStateException("writing broke down", e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while writing", e);
        } finally {
            writers.shutdownNow();
        }
    }

    /** Makes what was written last. */
    public void seal() {
        AtomicFile.force(store, path);
    }

    /** Removes the folder and all in it: of a run that never began nothing stays. */
    public void discard() {
        try {
            clear(path);
        } catch (IOException e) {
            return; // what cannot be removed stays; why the run never began is said already
        }
    }

    private void clear(Path folder) throws IOException {
        for (String name : store.names(folder)) {
            Path entry = folder.resolve(name);
            if (Files.isDirectory(entry)) {
                clear(entry);
            } else {
                store.delete(entry);
            }
        }
        store.delete(folder);
    }

    private Path inside(String name) {
        Path target = path.resolve(name).normalize();
        if (!path.normalize().equals(target.getParent())) {
            throw new IllegalArgumentException(name + " leaves the run's folder");
        }
        return target;
    }
}
