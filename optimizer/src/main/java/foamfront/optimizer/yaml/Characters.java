package foamfront.optimizer.yaml;

import foamfront.optimizer.faults.Faults;
import java.util.Locale;

/** Characters that have no place in a file people edit, found before any parser sees them. */
final class Characters {
    /** Faults of this kind worth telling. */
    private static final int MOST = 5;

    private Characters() {}

    /** Whether the text is free of them. */
    static boolean check(String text, Faults faults) {
        int line = 1;
        int column = 1;
        int found = 0;
        boolean indent = true;
        for (int i = 0; i < text.length() && found < MOST; i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && !text.startsWith("\n", i + 1))) {
                line++;
                column = 0;
                indent = true;
            } else if (c == '\t' && indent) {
                faults.add(line, column, "", "the line is indented with a tab", "Use two spaces instead.");
                found++;
                indent = false;
            } else if (forbidden(c)) {
                faults.add(
                        line,
                        column,
                        "",
                        String.format(Locale.ROOT, "there is a control character (U+%04X)", (int) c),
                        "Delete it.");
                found++;
            } else if (c != ' ') {
                indent = false;
            }
            column++;
        }
        return found == 0;
    }

    private static boolean forbidden(char c) {
        return (c < ' ' && c != '\t' && c != '\r' && c != '\n')
                || (c >= 0x7f && c < 0xa0)
                || c >= 0xfffe
                || c == 0xfeff;
    }
}
