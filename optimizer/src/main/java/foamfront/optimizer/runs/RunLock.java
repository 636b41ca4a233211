package foamfront.optimizer.runs;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * Only one process at a time works in a run's folder. The operating system holds the lock and lets it go when the process ends,
 * however it ends; the file itself stays and says who held it last.
 */
public final class RunLock implements AutoCloseable {
    private final FileChannel channel;

    private RunLock(FileChannel channel) {
        this.channel = channel;
    }

    /** Null where another process has it. */
    public static @Nullable RunLock of(RunFolder folder) {
        Path file = folder.path().resolve(CheckpointFiles.FOLDER).resolve("lock");
        try {
            folder.store().createAll(folder.path().resolve(CheckpointFiles.FOLDER));
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            RunLock lock = new RunLock(channel);
            try {
                if (attempt(channel) == null) {
                    lock.close();
                    return null;
                }
                channel.truncate(0);
                channel.write(ByteBuffer.wrap(
                        ("process " + ProcessHandle.current().pid() + "\n").getBytes(StandardCharsets.UTF_8)));
            } catch (IOException e) {
                lock.close(); // what nobody holds must not stay locked
                throw e;
            }
            return lock;
        } catch (IOException e) {
            throw new CannotWrite(file, e);
        }
    }

    private static @Nullable FileLock attempt(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null; // this very process has it
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw new IllegalStateException("the lock of a run cannot be let go", e);
        }
    }
}
