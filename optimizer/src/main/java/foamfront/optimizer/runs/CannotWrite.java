package foamfront.optimizer.runs;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;

/** A file or folder that could not be written: one line with the place, the cause and what to do. */
public final class CannotWrite extends RuntimeException {
    private static final long serialVersionUID = 1;

    public CannotWrite(Path place, IOException cause) {
        super(
                place + ": cannot write here: " + words(cause)
                        + ". Free some space, or name another place (explore: --out).",
                cause);
    }

    private static String words(IOException cause) {
        if (cause instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (cause instanceof FileAlreadyExistsException || cause instanceof NotDirectoryException) {
            return "a file is in the way";
        }
        if (cause instanceof NoSuchFileException) {
            return "the folder is not there";
        }
        if (cause.getCause() instanceof ReadOnlyFileSystemException) {
            return "the disk is read-only";
        }
        String message = cause.getMessage();
        if (cause instanceof java.nio.file.FileSystemException system && system.getReason() != null) {
            message = system.getReason();
        }
        return message == null ? "the disk refused" : message.replaceAll("\\s+", " ");
    }
}
