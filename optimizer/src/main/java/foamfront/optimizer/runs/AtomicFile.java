package foamfront.optimizer.runs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Whole files or none: written under a temporary name beside the target, forced, renamed. */
final class AtomicFile {
    /** Ends the temporary names. */
    static final String PART = ".part";

    private AtomicFile() {}

    /** A force that fails is not tried again: what reached the disk is then unknown. */
    static void write(Store store, Path target, String text) {
        Path temporary = target.resolveSibling("." + target.getFileName() + PART);
        try {
            store.write(temporary, text.getBytes(StandardCharsets.UTF_8));
            store.force(temporary);
            store.rename(temporary, target);
        } catch (IOException e) {
            discard(store, temporary, e);
            throw new CannotWrite(target, e);
        }
    }

    private static void discard(Store store, Path temporary, IOException cause) {
        try {
            store.delete(temporary);
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
    }

    /** Makes the renames in a folder last through a power cut. */
    static void force(Store store, Path folder) {
        try {
            store.forceFolder(folder);
        } catch (IOException e) {
            throw new CannotWrite(folder, e);
        }
    }
}
