package foamfront.optimizer.faults;

/**
 * One thing wrong with a file.
 *
 * @param file its name, without folders
 * @param line from 1, or 0 for the whole file
 * @param column from 1, or 0 for the whole line
 * @param key dotted path of the key or the table's column, may be empty
 * @param problem what is wrong, without a full stop
 * @param advice what would be right, a sentence
 */
public record Fault(String file, int line, int column, String key, String problem, String advice) {
    /** Two lines: {@code trainer.yaml:14  vary.root chord: 620 mm is wider than the 508 mm sheet.} and the advice below. */
    @Override
    public String toString() {
        String where = line > 0 ? file + ":" + line + "  " : file + "  ";
        String what = (key.isEmpty() ? "" : key + ": ") + problem + ".";
        return advice.isEmpty() ? where + what : where + what + "\n" + " ".repeat(where.length()) + advice;
    }
}
