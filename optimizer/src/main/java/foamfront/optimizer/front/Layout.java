package foamfront.optimizer.front;

import foamfront.model.design.Arrangement;
import foamfront.model.design.Design;
import foamfront.model.design.FlapKind;
import foamfront.model.design.PowerKind;
import foamfront.model.design.TailKind;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The arrangement of a design as people say it: wing, tail, power and flaps. */
public final class Layout {
    private static final List<Function<Arrangement, String>> PARTS =
            List.of(layout -> layout.wing().words(), Layout::tail, Layout::power, Layout::flaps);

    private Layout() {}

    /** For example {@code monoplane, conventional tail, nose tractor}. */
    public static String words(Design design) {
        return words(Arrangement.of(design));
    }

    /** The same before there is a design. */
    public static String words(Arrangement layout) {
        return join(PARTS, layout);
    }

    /** The same, but only what tells these rows apart; empty for each where nothing does. */
    static List<String> telling(List<Row> rows) {
        List<Arrangement> layouts =
                rows.stream().map(row -> Arrangement.of(row.design())).toList();
        List<Function<Arrangement, String>> telling = new ArrayList<>();
        for (Function<Arrangement, String> part : PARTS) {
            if (layouts.stream().map(part).distinct().count() > 1) {
                telling.add(part);
            }
        }
        return layouts.stream().map(layout -> join(telling, layout)).toList();
    }

    private static String join(List<Function<Arrangement, String>> parts, Arrangement layout) {
        List<String> words = new ArrayList<>();
        for (Function<Arrangement, String> part : parts) {
            String word = part.apply(layout);
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return String.join(", ", words);
    }

    private static String tail(Arrangement layout) {
        return layout.tail() == TailKind.NONE ? "" : layout.tail().words() + " tail";
    }

    private static String power(Arrangement layout) {
        return layout.power() == PowerKind.NONE ? "no motor" : layout.power().words();
    }

    private static String flaps(Arrangement layout) {
        FlapKind flaps = layout.flaps();
        return flaps == FlapKind.NONE ? "" : flaps.words();
    }
}
