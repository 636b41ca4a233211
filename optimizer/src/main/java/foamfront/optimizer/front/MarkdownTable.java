package foamfront.optimizer.front;

import java.util.List;
import java.util.stream.Collectors;

/** Pipe tables; whatever a study calls things stays text. */
final class MarkdownTable {
    private static final String SPECIAL = "\\`*_{}[]<>#|~!&";

    private MarkdownTable() {}

    static String write(Table table) {
        StringBuilder out = new StringBuilder();
        // Heads are our own words: no escape, so that the brackets of units read well as plain text too.
        out.append(table.columns().stream().map(Table.Column::head).collect(Collectors.joining(" | ", "| ", " |\n")));
        out.append('|');
        for (Table.Column column : table.columns()) {
            out.append(column.numeric() ? " ---: |" : " --- |");
        }
        out.append('\n');
        table.rows().forEach(row -> line(out, row));
        return out.toString();
    }

    private static void line(StringBuilder out, List<String> cells) {
        out.append(cells.stream().map(MarkdownTable::escape).collect(Collectors.joining(" | ", "| ", " |\n")));
    }

    /** Text that Markdown shows as it stands. */
    static String escape(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c == 0x7f) {
                out.append(' ');
            } else {
                if (SPECIAL.indexOf(c) >= 0) {
                    out.append('\\');
                }
                out.append(c);
            }
        }
        return out.toString();
    }
}
