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

    /** The same for the lines of a syntax error, both from 1. */
    static @Nullable String syntax(String text, int from, int to) {
        List<String> lines = text.lines()
                .skip(Math.max(0, from - 1L))
                .limit(Math.max(1, to - from + 1L))
                .toList();
        for (String line : lines) {
            String hint = missingSpace(line);
            if (hint != null) {
                return hint;
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
