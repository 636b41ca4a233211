package foamfront.optimizer.front;

import foamfront.model.appraisal.Caveat;
import foamfront.model.appraisal.LimitCheck;
import foamfront.model.mission.Measure;
import foamfront.model.units.Unit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The front for people: a sentence, a plot, one table, the best of each layout, cautions. */
public final class FrontPage {
    /** Rows of the page's table; the files for programs have them all. */
    private static final int ROWS = 40;

    private static final int ROWS_PER_LAYOUT = 5;

    /** Shown beside the aims, where they are no aims themselves. */
    private static final List<Measure> BESIDES =
            List.of(Measure.PAYLOAD, Measure.ENDURANCE, Measure.BUILD_COST, Measure.MASS, Measure.STALL_SPEED);

    private FrontPage() {}

    /**
     * The page in Markdown.
     *
     * @param byLayout the best front of each layout, first row numbers following on from {@code front}'s
     * @param unmet layouts that the study leaves open and of which no design meets every limit
     */
    public static String markdown(
            String study, Front front, Map<String, Front> byLayout, Collection<String> unmet, Show show) {
        StringBuilder out = new StringBuilder();
        out.append("# ").append(MarkdownTable.escape(study)).append("\n\n");
        out.append(MarkdownTable.escape(Sentences.verdict(front, show, 1))).append("\n\n");
        String plot = Plot.of(front, show);
        if (!plot.isEmpty()) {
            out.append("```text\n").append(plot).append("```\n\n");
        }
        out.append("## Best trade-offs\n\n");
        List<Integer> chosen = front.spread(ROWS);
        if (chosen.size() < front.size()) {
            out.append("The ")
                    .append(chosen.size())
                    .append(" most different of ")
                    .append(front.size())
                    .append("; all are in front.csv.\n\n");
        }
        out.append(table(front, chosen, 1, show, BESIDES).markdown()).append('\n');
        layouts(out, front, byLayout, unmet, show);
        cautions(out, front);
        return out.toString();
    }

    private static void layouts(
            StringBuilder out, Front front, Map<String, Front> byLayout, Collection<String> unmet, Show show) {
        if (byLayout.size() < 2) {
            return;
        }
        out.append(new Contest(front, byLayout, unmet, show).markdown());
        out.append("## The best of each layout\n\nRows over ")
                .append(front.size())
                .append(" are beaten by another layout; they are in layouts.csv.\n\n");
        int first = front.size() + 1;
        for (Map.Entry<String, Front> layout : byLayout.entrySet()) {
            Front best = layout.getValue();
            out.append("### ").append(MarkdownTable.escape(layout.getKey())).append("\n\n");
            out.append(table(best, best.spread(ROWS_PER_LAYOUT), first, show, BESIDES)
                            .markdown())
                    .append('\n');
            first += best.size();
        }
    }

    private static void cautions(StringBuilder out, Front front) {
        out.append("## Before you build\n\n");
        Set<Caveat> caveats = new LinkedHashSet<>();
        for (Row row : front.rows()) {
            caveats.addAll(row.caveats());
        }
        for (Caveat caveat : Caveat.values()) {
            if (caveats.contains(caveat)) {
                long rows = front.rows().stream()
                        .filter(row -> row.caveats().contains(caveat))
                        .count();
                out.append("- ")
                        .append(rows)
                        .append(" of ")
                        .append(front.size())
                        .append(": ")
                        .append(MarkdownTable.escape(caveat.sentence()))
                        .append(".\n");
            }
        }
        Sentences.cautions(front)
                .forEach(caution -> out.append("- ").append(caution).append('\n'));
    }

    /** Some rows for people, in their units, narrow enough for a terminal. */
    public static Table narrow(Front front, List<Integer> chosen, int firstNumber, Show show) {
        return table(front, chosen, firstNumber, show, List.of(Measure.MASS));
    }

    private static Table table(Front front, List<Integer> chosen, int firstNumber, Show show, List<Measure> besides) {
        Set<Measure> measures = new LinkedHashSet<>();
        front.aims().forEach(aim -> measures.add(aim.measure()));
        measures.addAll(besides);
        List<String> layouts =
                Layout.telling(chosen.stream().map(front.rows()::get).toList());
        boolean oneLayout = layouts.stream().allMatch(String::isEmpty);
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.number("row"));
        measures.forEach(measure -> columns.add(Table.Column.number(show.head(measure))));
        columns.add(Table.Column.number(Show.head("span", show.unit(Unit.MILLIMETRE))));
        if (!oneLayout) {
            columns.add(Table.Column.text("layout"));
        }
        columns.add(Table.Column.text("least room to spare"));
        columns.add(Table.Column.text("stands out for"));
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < chosen.size(); i++) {
            int index = chosen.get(i);
            Row row = front.rows().get(index);
            List<String> cells = new ArrayList<>();
            cells.add(Integer.toString(firstNumber + index));
            measures.forEach(
                    measure -> cells.add(show.number(measure, row.measures().of(measure))));
            cells.add(show.number(row.design().wing().planform().span(), show.unit(Unit.MILLIMETRE)));
            if (!oneLayout) {
                cells.add(layouts.get(i));
            }
            cells.add(room(show, row.tightest()));
            cells.add(front.mark(index));
            rows.add(cells);
        }
        return new Table(columns, rows);
    }

    private static String room(Show show, @org.jspecify.annotations.Nullable LimitCheck tightest) {
        return tightest == null
                ? ""
                : show.quantity(tightest.margin(), Unit.PERCENT) + " on "
                        + tightest.bound().measure().words();
    }
}
