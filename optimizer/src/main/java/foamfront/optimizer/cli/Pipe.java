package foamfront.optimizer.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;

/** A stream that remembers how it failed: a reader who has seen enough is no fault, a full disk is. */
final class Pipe extends OutputStream {
    private final OutputStream to;
    private boolean broken;

    Pipe(OutputStream to) {
        this.to = to;
    }

    /** Whether whoever read this closed it. */
    boolean closedByReader() {
        return broken;
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        try {
            to.write(bytes, from, length);
        } catch (IOException e) {
            String message = e.getMessage();
            broken = message != null && message.toLowerCase(Locale.ROOT).contains("pipe");
            throw e;
        }
    }

    @Override
    public void flush() throws IOException {
        to.flush();
    }
}
