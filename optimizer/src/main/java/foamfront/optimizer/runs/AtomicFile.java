package foamfront.optimizer.runs;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Whole files or none: written under a temporary name beside the target, forced, renamed. */
final class AtomicFile {
    private AtomicFile() {}

    static void write(Path target, String text) {
        Path temporary = target.resolveSibling("." + target.getFileName() + ".part");
        try {
            try (FileChannel channel = FileChannel.open(
                    temporary,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.TRUNCATE_EXISTING,
                    StandardOpenOption.WRITE)) {
                ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            move(temporary, target);
        } catch (IOException e) {
            discard(temporary, e);
            throw new CannotWrite(target, e);
        }
    }

    private static void move(Path temporary, Path target) throws IOException {
        try {
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void discard(Path temporary, IOException cause) {
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
    }

    /**
     * Makes the renames in a folder last through a power cut; where folders cannot be opened (Windows) there is nothing
     * to do.
     */
    static void force(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (java.nio.file.AccessDeniedException e) {
            return; // Windows opens no folders
        } catch (IOException e) {
            throw new CannotWrite(folder, e);
        }
    }
}
