package foamfront.optimizer.front;

import java.util.List;

/**
 * Tables as RFC 4180 text: commas, CR LF, quotes doubled. Text that a spreadsheet would take for a formula gets a leading single
 * quote (OWASP, Application Security Verification Standard, 1.2.10; CWE-1236); numbers never do.
 */
final class Csv {
    private static final String FORMULA_STARTS = "=+-@\t\r\u0000";

    private Csv() {}

    static String write(Table table) {
        StringBuilder out = new StringBuilder();
        line(
                out,
                table.columns().stream()
                        .map(column -> field(column.head(), false))
                        .toList());
        for (List<String> row : table.rows()) {
            String[] cells = new String[row.size()];
            for (int i = 0; i < cells.length; i++) {
                cells[i] = field(row.get(i), table.columns().get(i).numeric());
            }
            line(out, List.of(cells));
        }
        return out.toString();
    }

    private static void line(StringBuilder out, List<String> cells) {
        out.append(String.join(",", cells)).append("\r\n");
    }

    static String field(String cell, boolean numeric) {
        String guarded = !numeric && !cell.isEmpty() && FORMULA_STARTS.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
        boolean quoted = guarded.indexOf(',') >= 0
                || guarded.indexOf('"') >= 0
                || guarded.indexOf('\n') >= 0
                || guarded.indexOf('\r') >= 0;
        return quoted ? '"' + guarded.replace("\"", "\"\"") + '"' : guarded;
    }
}
