package foamfront.optimizer.yaml;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Mistakes that YAML makes easy, recognised from the text. */
final class Hints {
    private static final Pattern TOGETHER =
            Pattern.compile("^[\\s\\-{\\[,]*([A-Za-z][A-Za-z _-]{0,40}):([^\\s:/].{0,60})");

    private Hints() {}

    /** Advice where a colon has no space behind it, or null. */
    static @Nullable String missingSpace(String text) {
        String first = text.lines().findFirst().orElse("");
        Matcher matcher = TOGETHER.matcher(first.length() > 120 ? first.substring(0, 120) : first);
        return matcher.find()
                ? "Put a space after the colon: '" + matcher.group(1) + ": "
                        + matcher.group(2).strip() + "'."
                : null;
    }

    /** Advice for one line, counted from 1. */
    record Found(int line, String advice) {}

    /** The same for a syntax error noticed in line {@code to} of a value that began in line {@code from}, nearest first. */
    static @Nullable Found syntax(String text, int from, int to) {
        List<String> lines = text.lines().limit(Math.max(0, to)).toList();
        for (int i = lines.size(); i >= Math.max(1, Math.min(from, to - 1)); i--) {
            String hint = missingSpace(lines.get(i - 1));
            if (hint != null) {
                return new Found(i, hint);
            }
        }
        return null;
    }

    /** A parser's words without control characters and line breaks. */
    static String plain(String problem) {
        String plain = problem.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
        return plain.length() > 120 ? plain.substring(0, 117) + "..." : plain;
    }
}
