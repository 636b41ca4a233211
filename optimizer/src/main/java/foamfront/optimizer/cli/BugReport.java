package foamfront.optimizer.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/** The last line of defence: a bug is called a bug, and what we need to find it goes into a file. */
final class BugReport {
    private BugReport() {}

    /** Writes the report and gives the words for the user. */
    static String write(Throwable thrown, String[] args) {
        StringWriter text = new StringWriter();
        PrintWriter out = new PrintWriter(text);
        out.println("foamfront " + Main.VERSION + " on Java " + Runtime.version());
        out.println("command: " + String.join(" ", args));
        thrown.printStackTrace(out);
        String said = thrown.getClass().getSimpleName() + ": " + thrown.getMessage();
        try {
            Path file = Files.createTempFile("foamfront-bug-", ".txt");
            Files.writeString(file, text.toString());
            return "foamfront: this is a bug of ours, not of your files (" + said.replaceAll("\\s+", " ") + ").\n"
                    + "Please report it and attach " + file + " and the file you ran.";
        } catch (IOException e) {
            return "foamfront: this is a bug of ours, not of your files (" + said.replaceAll("\\s+", " ") + ").\n"
                    + "Please report it and attach the file you ran.";
        }
    }
}
