package foamfront.optimizer.front;

import java.util.List;

/** Aligned columns, two spaces apart, for a terminal; control characters never reach it. */
final class TextTable {
    private static final String GAP = "  ";

    private TextTable() {}

    static String write(Table table) {
        int columns = table.columns().size();
        int[] widths = new int[columns];
        List<String> heads = table.columns().stream().map(Table.Column::head).toList();
        widen(widths, heads);
        table.rows().forEach(row -> widen(widths, row));
        StringBuilder out = new StringBuilder();
        line(out, table, heads, widths);
        table.rows().forEach(row -> line(out, table, row, widths));
        return out.toString();
    }

    private static void widen(int[] widths, List<String> row) {
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.max(widths[i], length(plain(row.get(i))));
        }
    }

    private static void line(StringBuilder out, Table table, List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String cell = plain(row.get(i));
            String space = " ".repeat(widths[i] - length(cell));
            line.append(i == 0 ? "" : GAP).append(table.columns().get(i).numeric() ? space + cell : cell + space);
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    /** Text without anything that could steer a terminal. */
    static String plain(String text) {
        return text.replaceAll("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]", "?");
    }
}
