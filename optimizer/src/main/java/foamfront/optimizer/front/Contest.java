package foamfront.optimizer.front;

import foamfront.model.design.Design;
import foamfront.model.units.Numbers;
import foamfront.optimizer.study.Aim;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Which layout wins where, and by how much: the best that each gives in each aim, and who leads at each step of the first aim.
 * It knows the rows that a search kept, the front and the best of each layout, and no others.
 */
final class Contest {
    /** Parts of the way from the worst to the best of the first aim. */
    private static final int STEPS = 4;

    /** Choices beside the layout that a front may tell apart. */
    private static final List<String> CHOICES = List.of("wing", "tail", "body", "power", "undercarriage", "flaps");

    private final Front front;
    private final List<Row> rows;
    private final Collection<String> unmet;
    private final Show show;

    /** @param unmet layouts of which no design meets every limit */
    Contest(Front front, Map<String, Front> byLayout, Collection<String> unmet, Show show) {
        this.unmet = unmet;
        this.front = front;
        this.rows = Stream.concat(
                        front.rows().stream(), byLayout.values().stream().flatMap(best -> best.rows().stream()))
                .toList();
        this.show = show;
    }

    /** Tables in Markdown under one heading. */
    String markdown() {
        StringBuilder out = new StringBuilder("## Which layout wins where\n\n");
        out.append("The best that each layout gives in each aim, whatever that costs in the others.\n\n");
        out.append(best("layout", Row::layout).markdown()).append('\n');
        Table leaders = leaders();
        if (!leaders.rows().isEmpty()) {
            out.append("Who leads, step by step through ")
                    .append(front.aims().get(0).measure().words())
                    .append(", and how far the next layout stays behind.\n\n");
            out.append(leaders.markdown()).append('\n');
        }
        choices(out);
        if (!unmet.isEmpty()) {
            out.append("No design that meets every limit was found, which does not prove that there is none, as: ")
                    .append(MarkdownTable.escape(String.join("; ", unmet)))
                    .append(".\n\n");
        }
        return out.toString();
    }

    private void choices(StringBuilder out) {
        List<DesignColumns.Text> open = DesignColumns.texts().stream()
                .filter(text -> CHOICES.contains(text.words()))
                .filter(text -> rows.stream()
                                .map(row -> text.of().apply(row.design()))
                                .distinct()
                                .count()
                        > 1)
                .toList();
        if (open.size() < 2) {
            return;
        }
        out.append("The same choice by choice, among the designs that were kept.\n\n");
        for (DesignColumns.Text text : open) {
            Function<Design, String> of = text.of();
            out.append(best(text.words(), row -> of.apply(row.design())).markdown())
                    .append('\n');
        }
    }

    /** One line a group: how many rows of the front it has, and its best in each aim. */
    private Table best(String head, Function<Row, String> group) {
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.text(head));
        columns.add(Table.Column.number("rows of the front"));
        front.aims()
                .forEach(aim ->
                        columns.add(Table.Column.number((aim.most() ? "most " : "least ") + show.head(aim.measure()))));
        List<List<String>> lines = new ArrayList<>();
        groups(rows, group).forEach((name, members) -> {
            List<String> cells = new ArrayList<>();
            cells.add(name);
            cells.add(Long.toString(front.rows().stream()
                    .filter(row -> group.apply(row).equals(name))
                    .count()));
            for (Aim aim : front.aims()) {
                Row best = best(members, aim);
                cells.add(show.number(aim.measure(), best.measures().of(aim.measure())));
            }
            lines.add(cells);
        });
        return new Table(columns, lines);
    }

    private Table leaders() {
        Aim first = front.aims().get(0);
        double least = rows.stream().mapToDouble(row -> cost(first, row)).max().orElseThrow();
        double most = rows.stream().mapToDouble(row -> cost(first, row)).min().orElseThrow();
        List<List<String>> lines = new ArrayList<>();
        for (Aim aim : front.aims().subList(1, front.aims().size())) {
            for (int step = 0; step <= STEPS; step++) {
                double bound = step == STEPS ? most : least + (most - least) * step / STEPS;
                List<Row> there =
                        rows.stream().filter(row -> cost(first, row) <= bound).toList();
                lines.add(leader(aim, Costs.of(first, bound), there));
            }
        }
        return new Table(
                List.of(
                        Table.Column.number((first.most() ? "at least " : "at most ") + show.head(first.measure())),
                        Table.Column.text("aim"),
                        Table.Column.text("leads"),
                        Table.Column.text("with"),
                        Table.Column.text("next"),
                        Table.Column.text("with"),
                        Table.Column.text("behind by")),
                lines);
    }

    private List<String> leader(Aim aim, double bound, List<Row> there) {
        Row lead = best(there, aim);
        Row next = there.stream()
                .filter(row -> !row.layout().equals(lead.layout()))
                .reduce((a, b) -> cost(aim, b) < cost(aim, a) ? b : a)
                .orElse(null);
        return List.of(
                show.number(front.aims().get(0).measure(), bound),
                Costs.words(aim),
                lead.layout(),
                quantity(aim, lead),
                next == null ? "no other layout" : next.layout(),
                next == null ? "" : quantity(aim, next),
                next == null ? "" : behind(aim, lead, next));
    }

    private String quantity(Aim aim, Row row) {
        return show.quantity(aim.measure(), row.measures().of(aim.measure()));
    }

    private static String behind(Aim aim, Row lead, Row next) {
        double best = lead.measures().of(aim.measure());
        return Numbers.fixed(100 * Math.abs(next.measures().of(aim.measure()) - best) / Math.abs(best), 0) + " %";
    }

    private static double cost(Aim aim, Row row) {
        return Costs.of(aim, row.measures());
    }

    /** The first of the best in one aim. */
    private static Row best(List<Row> rows, Aim aim) {
        @Nullable Row best = null;
        for (Row row : rows) {
            best = best == null || cost(aim, row) < cost(aim, best) ? row : best;
        }
        if (best == null) {
            throw new IllegalArgumentException("no rows");
        }
        return best;
    }

    private static Map<String, List<Row>> groups(List<Row> rows, Function<Row, String> group) {
        Map<String, List<Row>> groups = new TreeMap<>();
        rows.forEach(row -> groups.computeIfAbsent(group.apply(row), name -> new ArrayList<>())
                .add(row));
        return groups;
    }
}
