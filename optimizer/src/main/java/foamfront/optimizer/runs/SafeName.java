package foamfront.optimizer.runs;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;

/** File names made from what a study calls things: {@code [a-z0-9][a-z0-9_-]{0,63}}, and no device names. */
public final class SafeName {
    private static final int LONGEST = 64;

    private static final Set<String> DEVICES = Set.of(
            "con", "prn", "aux", "nul", "com0", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9",
            "lpt0", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

    private SafeName() {}

    /** The name as a file name; {@code study} where nothing of it is left. */
    public static String of(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFKD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^a-z0-9_]+", "-")
                .replaceAll("^[-_]+", "");
        String cut = plain.substring(0, Math.min(LONGEST - 1, plain.length())).replaceAll("[-_]+$", "");
        if (cut.isEmpty()) {
            return "study";
        }
        return DEVICES.contains(cut) ? cut + "-" : cut;
    }

    /** Whether a name may stand as it is. */
    public static boolean isSafe(String name) {
        return name.matches("[a-z0-9][a-z0-9_-]{0,63}") && !DEVICES.contains(name);
    }
}
