package foamfront.optimizer.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Where a command writes.
 *
 * @param out results
 * @param err progress and faults
 * @param terminal whether {@code err} is one: progress then rewrites its line
 * @param colour whether help may be coloured
 */
record Console(PrintStream out, PrintStream err, boolean terminal, boolean colour) {
    /** The process's own streams, always UTF-8. The launcher says whether standard error is a terminal. */
    static Console system() {
        String said = System.getProperty("foamfront.terminal");
        boolean terminal = said == null ? System.console() != null : said.equals("yes");
        String noColour = System.getenv("NO_COLOR");
        boolean colour = terminal && (noColour == null || noColour.isEmpty());
        return new Console(stream(FileDescriptor.out), stream(FileDescriptor.err), terminal, colour);
    }

    private static PrintStream stream(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }

    /** Whether everything written to {@code out} arrived. */
    boolean failed() {
        return out.checkError();
    }
}
