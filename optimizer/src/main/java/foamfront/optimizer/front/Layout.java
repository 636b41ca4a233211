package foamfront.optimizer.front;

import foamfront.model.design.Design;
import foamfront.model.design.PowerKind;
import foamfront.model.design.TailKind;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The arrangement of a design as people say it: wing, tail and power. */
public final class Layout {
    private static final List<Function<Design, String>> PARTS =
            List.of(design -> design.wing().kind().words(), Layout::tail, Layout::power);

    private Layout() {}

    /** For example {@code monoplane, conventional tail, nose tractor}. */
    public static String words(Design design) {
        return join(PARTS, design);
    }

    /** The same, but only what tells these rows apart; empty for each where nothing does. */
    static List<String> telling(List<Row> rows) {
        List<Function<Design, String>> telling = new ArrayList<>();
        for (Function<Design, String> part : PARTS) {
            if (rows.stream().map(row -> part.apply(row.design())).distinct().count() > 1) {
                telling.add(part);
            }
        }
        return rows.stream().map(row -> join(telling, row.design())).toList();
    }

    private static String join(List<Function<Design, String>> parts, Design design) {
        List<String> words = new ArrayList<>();
        for (Function<Design, String> part : parts) {
            String word = part.apply(design);
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return String.join(", ", words);
    }

    private static String tail(Design design) {
        TailKind tail = design.tail().kind();
        return tail == TailKind.NONE ? "" : tail.words() + " tail";
    }

    private static String power(Design design) {
        PowerKind power = design.power().kind();
        return power == PowerKind.NONE ? "no motor" : power.words();
    }
}
