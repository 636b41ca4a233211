package foamfront.optimizer.faults;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The known words nearest to a mistyped one, by edits (insert, delete, replace, swap neighbours; Damerau 1964). */
public final class Nearest {
    /** Longer words are compared by their beginning only. */
    private static final int LONGEST = 60;

    private Nearest() {}

    /** Up to {@code most} of {@code known}, nearest first; empty if none is near. */
    public static List<String> of(String word, Collection<String> known, int most) {
        String mine = plain(word);
        record Near(String word, int distance) {}
        List<Near> near = new ArrayList<>();
        for (String candidate : known) {
            String theirs = plain(candidate);
            int distance = distance(mine, theirs);
            boolean part = mine.length() >= 3 && (theirs.contains(mine) || mine.contains(theirs));
            if (distance <= Math.max(1, Math.max(mine.length(), theirs.length()) / 3) || part) {
                near.add(new Near(candidate, part ? Math.min(distance, 2) : distance));
            }
        }
        near.sort(Comparator.comparingInt(Near::distance).thenComparing(Near::word));
        return near.stream().limit(most).map(Near::word).toList();
    }

    /** A sentence of advice: {@code Did you mean 'span'?}, or else the known words. */
    public static String advice(String word, Collection<String> known, String what) {
        List<String> near = of(word, known, 3);
        if (!near.isEmpty()) {
            return "Did you mean '" + String.join("' or '", near) + "'?";
        }
        if (known.isEmpty()) {
            return "There is no " + what + " to choose from.";
        }
        List<String> shown = known.stream().limit(12).toList();
        return "Use " + (shown.size() == 1 ? "" : "one of ") + String.join(", ", shown)
                + (known.size() > shown.size() ? " ... (" + known.size() + " in all)." : ".");
    }

    /** A word without capitals, hyphens and underscores, cut where it is long. */
    public static String plain(String word) {
        String lower = word.strip().toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ');
        return lower.length() > LONGEST ? lower.substring(0, LONGEST) : lower;
    }

    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int replace = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                d[i][j] = Math.min(replace, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], 1 + d[i - 2][j - 2]);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
