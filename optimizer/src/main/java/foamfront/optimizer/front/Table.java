package foamfront.optimizer.front;

import java.util.ArrayList;
import java.util.List;

/**
 * A table of cells already written as text; each column knows whether it holds numbers, which align right and are never guarded.
 *
 * @param columns left to right
 * @param rows each as long as {@code columns}
 */
public record Table(List<Column> columns, List<List<String>> rows) {
    /**
     * One column.
     *
     * @param head with its unit in brackets where it has one
     */
    public record Column(String head, boolean numeric) {
        public static Column text(String head) {
            return new Column(head, false);
        }

        public static Column number(String head) {
            return new Column(head, true);
        }
    }

    public Table {
        columns = List.copyOf(columns);
        List<List<String>> copy = new ArrayList<>();
        for (List<String> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(row.size() + " cells under " + columns.size() + " heads");
            }
            copy.add(List.copyOf(row));
        }
        rows = List.copyOf(copy);
    }

    /** Text as Markdown that shows it as it stands. */
    public static String plain(String text) {
        return MarkdownTable.escape(text);
    }

    /** For programs: RFC 4180 with formula guard. */
    public String csv() {
        return Csv.write(this);
    }

    /** For people: a Markdown pipe table. */
    public String markdown() {
        return MarkdownTable.write(this);
    }

    /** For people: aligned columns for a terminal. */
    public String text() {
        return TextTable.write(this);
    }
}
