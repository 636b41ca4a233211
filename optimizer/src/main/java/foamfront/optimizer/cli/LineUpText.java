package foamfront.optimizer.cli;

import foamfront.model.appraisal.LimitCheck;
import foamfront.model.appraisal.MeasureValues;
import foamfront.model.mission.Measure;
import foamfront.model.units.Numbers;
import foamfront.optimizer.fleet.LineUp;
import foamfront.optimizer.fleet.Member;
import foamfront.optimizer.fleet.Sharing;
import foamfront.optimizer.fleet.ShoppingList;
import foamfront.optimizer.front.Layout;
import foamfront.optimizer.front.Sentences;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.front.Table;
import foamfront.optimizer.front.Table.Column;
import java.util.ArrayList;
import java.util.List;

/** A line-up for people. */
final class LineUpText {
    private static final List<Measure> PROMISE = List.of(
            Measure.PAYLOAD,
            Measure.ENDURANCE,
            Measure.MASS,
            Measure.STALL_SPEED,
            Measure.CRUISE_SPEED,
            Measure.BUILD_COST);

    /** What sharing is weighed by. */
    private static final List<Measure> WEIGHED = List.of(Measure.PAYLOAD, Measure.ENDURANCE, Measure.BUILD_COST);

    private final LineUp lineUp;
    private final Show show;
    private final StringBuilder out = new StringBuilder();

    private LineUpText(LineUp lineUp, Show show) {
        this.lineUp = lineUp;
        this.show = show;
    }

    static String of(LineUp lineUp, Show show) {
        LineUpText text = new LineUpText(lineUp, show);
        text.roles();
        text.promises();
        text.sharing();
        text.uncovered();
        text.shopping();
        text.out.append('\n');
        Sentences.cautions(lineUp.members().stream().map(Member::design).toList(), false)
                .forEach(caution -> text.out.append(caution).append('\n'));
        return text.out.toString();
    }

    private static String name(Member member) {
        return Text.plain(member.design().name());
    }

    private void roles() {
        List<List<String>> rows = new ArrayList<>();
        for (Member member : lineUp.members()) {
            rows.add(List.of(
                    name(member),
                    Text.plain(member.role().isEmpty() ? member.study() : member.role()),
                    member.state().words(),
                    Layout.words(member.design())));
        }
        out.append("What each is for\n")
                .append(new Table(
                                List.of(
                                        Column.text("aeroplane"),
                                        Column.text("role"),
                                        Column.text("state"),
                                        Column.text("layout")),
                                rows)
                        .text());
    }

    private void promises() {
        List<Column> columns = new ArrayList<>(List.of(Column.text("aeroplane")));
        PROMISE.forEach(measure -> columns.add(Column.number(show.head(measure))));
        columns.add(Column.text("pilot"));
        columns.add(Column.text("limits of its study"));
        List<List<String>> rows = new ArrayList<>();
        for (Member member : lineUp.members()) {
            List<String> cells = new ArrayList<>(List.of(name(member)));
            MeasureValues values = member.appraisal().measures();
            PROMISE.forEach(measure -> cells.add(show.number(measure, values.of(measure))));
            cells.add(AppraisalText.pilot(values.of(Measure.PILOT_LEVEL)));
            cells.add(limits(member));
            rows.add(cells);
        }
        out.append("\nWhat each promises (computed, not flown)\n").append(new Table(columns, rows).text());
    }

    private static String limits(Member member) {
        List<String> missed = member.appraisal().limits().stream()
                .filter(check -> !check.holds())
                .map(LimitCheck::bound)
                .map(bound -> bound.measure().words())
                .toList();
        return missed.isEmpty() ? "all hold" : "misses " + String.join(", ", missed);
    }

    private void sharing() {
        for (Member member : lineUp.members()) {
            Sharing sharing = member.sharing();
            if (sharing == null) {
                continue;
            }
            out.append('\n')
                    .append(name(member))
                    .append(" flies with the ")
                    .append(String.join(", ", sharing.parts()))
                    .append(" of ")
                    .append(Text.plain(sharing.from().name()))
                    .append(".\n");
            List<String> different = sharing.different(member.design());
            if (!different.isEmpty()) {
                out.append("But these are no longer the same in both files, and are counted for each: ")
                        .append(String.join(", ", different))
                        .append(".\n");
            }
            if (lineUp.members().stream().noneMatch(other -> other.design().equals(sharing.from()))) {
                out.append("That aeroplane is not in this line-up; what it lends is taken to lie ready.\n");
            }
            if (sharing.alone() != null) {
                weigh(member, sharing.alone().measures());
            }
        }
    }

    private void weigh(Member member, MeasureValues alone) {
        List<List<String>> rows = new ArrayList<>();
        MeasureValues shared = member.appraisal().measures();
        for (Measure measure : WEIGHED) {
            rows.add(row(measure.words(), measure, shared.of(measure), alone.of(measure)));
        }
        rows.add(row(
                "cost of one more aeroplane",
                Measure.BUILD_COST,
                ShoppingList.besides(member),
                alone.of(Measure.BUILD_COST)));
        out.append("What sharing costs and saves, beside the aeroplane its file names as `alone`:\n")
                .append(new Table(
                                List.of(
                                        Column.text("measure"),
                                        Column.number("shared"),
                                        Column.number("its own"),
                                        Column.number("difference")),
                                rows)
                        .text());
    }

    private List<String> row(String words, Measure measure, double shared, double alone) {
        String sign = shared > alone ? "+" : "";
        return List.of(
                words,
                show.quantity(measure, shared),
                show.quantity(measure, alone),
                sign + show.number(measure, shared - alone));
    }

    private void uncovered() {
        if (!lineUp.uncovered().isEmpty()) {
            out.append("\nRoles that none of these covers: ")
                    .append(Text.plain(String.join(", ", lineUp.uncovered())))
                    .append(".\n");
        }
    }

    private void shopping() {
        ShoppingList list = lineUp.shopping();
        List<List<String>> rows = new ArrayList<>();
        for (ShoppingList.Line line : list.lines()) {
            rows.add(List.of(
                    line.item(),
                    Numbers.significant(line.quantity(), 3),
                    Numbers.significant(line.bought(), 3),
                    show.currency().number(line.cost())));
        }
        rows.add(List.of("all of it", "", "", show.currency().number(list.cost())));
        out.append("\nOne shopping list (sheets, pieces, metres of tape, kilograms of glue)\n")
                .append(new Table(
                                List.of(
                                        Column.text("item"),
                                        Column.number("needed"),
                                        Column.number("to buy"),
                                        Column.number("cost [" + show.currency() + "]")),
                                rows)
                        .text());
        out.append("Bought for one by one, each with everything of its own and the whole drawer to itself: ")
                .append(show.currency().amount(list.apart()))
                .append(". Prices are the catalogue's, some of them invented.\n");
    }
}
