package foamfront.optimizer.runs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The few things that are done to a disk; each may fail, and what is not forced may be lost when the power goes. */
public interface Store {
    /** Makes a folder that is not there yet. */
    void create(Path folder) throws IOException;

    /** Makes a folder and those above it, unless they are there. */
    void createAll(Path folder) throws IOException;

    /** A file with this content, new or in place of its old content. */
    void write(Path file, byte[] content) throws IOException;

    /** Makes a file's content last. */
    void force(Path file) throws IOException;

    /** At once, in place of any target. */
    void rename(Path from, Path to) throws IOException;

    /** Makes the names in a folder last. */
    void forceFolder(Path folder) throws IOException;

    /** Removes a file or an empty folder, if it is there. */
    void delete(Path path) throws IOException;

    byte[] read(Path file) throws IOException;

    /** The names in a folder, sorted; none where there is no folder. */
    List<String> names(Path folder) throws IOException;

    /** How many files are worth writing at once. */
    int writers();
}
