package foamfront.optimizer.front;

import foamfront.model.design.Design;
import foamfront.model.units.Numbers;
import foamfront.model.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** A design as columns: every choice and part as text, every dimension as a number; a cell is empty where a design has none. */
public final class DesignColumns {
    /**
     * A choice or a part.
     *
     * @param words head of the column
     * @param of its text, empty for none
     */
    public record Text(String words, Function<Design, String> of) {
        public String key() {
            return DesignColumns.key(words);
        }
    }

    /**
     * A dimension.
     *
     * @param unit of tables
     * @param of its SI value, NaN for none
     */
    public record Figure(String words, Unit unit, ToDoubleFunction<Design> of) {
        public String key() {
            return DesignColumns.key(words);
        }
    }

    private DesignColumns() {}

    /** Choices and parts, in table order. */
    public static List<Text> texts() {
        return DesignTexts.ALL;
    }

    /** Dimensions, in table order. */
    public static List<Figure> numbers() {
        return DesignNumbers.ALL;
    }

    /** Heads with fixed units. */
    static List<Table.Column> heads() {
        List<Table.Column> heads = new ArrayList<>();
        DesignTexts.ALL.forEach(text -> heads.add(Table.Column.text(text.words())));
        DesignNumbers.ALL.forEach(number -> heads.add(Table.Column.number(Show.head(number.words(), number.unit()))));
        return heads;
    }

    /** All cells in table units, in the order of {@link #heads}. */
    static List<String> cells(Design design) {
        List<String> cells = new ArrayList<>();
        DesignTexts.ALL.forEach(text -> cells.add(text.of().apply(design)));
        for (Figure number : DesignNumbers.ALL) {
            cells.add(cell(number.of().applyAsDouble(design), number.unit()));
        }
        return cells;
    }

    /** A number of a table for programs: empty for what is not there. */
    static String cell(double si, Unit unit) {
        return Double.isFinite(si) ? Numbers.exact(unit.fromSi(si)) : "";
    }

    private static String key(String words) {
        return words.toLowerCase(Locale.ROOT).replace(' ', '_').replace('-', '_');
    }
}
