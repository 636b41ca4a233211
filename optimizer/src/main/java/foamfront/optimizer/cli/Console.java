package foamfront.optimizer.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.function.BooleanSupplier;

/**
 * Where a command writes.
 *
 * @param out results
 * @param err progress and faults
 * @param terminal whether {@code err} is one: progress then rewrites its line
 * @param colour whether help may be coloured
 * @param readerGone whether whoever read {@code out} closed it
 */
record Console(PrintStream out, PrintStream err, boolean terminal, boolean colour, BooleanSupplier readerGone) {
    /** The process's own streams, always UTF-8. The launcher says whether standard error is a terminal. */
    static Console system() {
        boolean terminal = Boolean.getBoolean("foamfront.terminal");
        String noColour = System.getenv("NO_COLOR");
        boolean colour = terminal && (noColour == null || noColour.isEmpty());
        Pipe out = new Pipe(new FileOutputStream(FileDescriptor.out));
        return new Console(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8),
                terminal,
                colour,
                out::closedByReader);
    }

    /** Whether something written to {@code out} was lost that somebody wanted. */
    boolean failed() {
        return out.checkError() && !readerGone.getAsBoolean();
    }
}
