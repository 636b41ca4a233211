package foamfront.optimizer.front;

import foamfront.model.appraisal.Caveat;
import foamfront.model.appraisal.LimitCheck;
import foamfront.model.mission.Measure;
import foamfront.model.units.Currency;
import foamfront.model.units.Unit;
import foamfront.optimizer.study.Aim;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The front for programs: one row per design, fixed units named in the heads, whatever the study wants shown. */
public final class FrontTable {
    private FrontTable() {}

    /** Aims first, then every other measure, the tightest limit, and all choices, parts and dimensions. */
    public static Table of(Front front, int firstNumber, Currency currency) {
        List<Measure> order = measures(front.aims());
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.number("row"));
        columns.add(Table.Column.text("name"));
        columns.add(Table.Column.text("layout"));
        columns.add(Table.Column.text("stands out for"));
        order.forEach(
                measure -> columns.add(Table.Column.number(Show.head(measure.words(), measure.unit(), currency))));
        columns.add(Table.Column.number("least margin [%]"));
        columns.add(Table.Column.text("tightest limit"));
        columns.add(Table.Column.text("caveats"));
        columns.addAll(DesignColumns.heads());
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < front.size(); i++) {
            rows.add(cells(front, i, firstNumber + i, order));
        }
        return new Table(columns, rows);
    }

    private static List<String> cells(Front front, int index, int number, List<Measure> order) {
        Row row = front.rows().get(index);
        List<String> cells = new ArrayList<>();
        cells.add(Integer.toString(number));
        cells.add(row.design().name());
        cells.add(row.layout());
        cells.add(front.mark(index));
        for (Measure measure : order) {
            cells.add(DesignColumns.cell(row.measures().of(measure), measure.unit()));
        }
        LimitCheck tightest = row.tightest();
        cells.add(tightest == null ? "" : DesignColumns.cell(tightest.margin(), Unit.PERCENT));
        cells.add(tightest == null ? "" : tightest.bound().measure().words());
        cells.add(
                String.join("; ", row.caveats().stream().map(FrontTable::words).toList()));
        cells.addAll(DesignColumns.cells(row.design()));
        return cells;
    }

    /** A caveat's code in words; the sentences are in front.md. */
    private static String words(Caveat caveat) {
        return caveat.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static List<Measure> measures(List<Aim> aims) {
        List<Measure> order = new ArrayList<>();
        Set<Measure> aimed = EnumSet.noneOf(Measure.class);
        for (Aim aim : aims) {
            if (aimed.add(aim.measure())) {
                order.add(aim.measure());
            }
        }
        for (Measure measure : Measure.values()) {
            if (!aimed.contains(measure)) {
                order.add(measure);
            }
        }
        return order;
    }
}
