package foamfront.optimizer.cli;

import foamfront.model.appraisal.Appraisal;
import foamfront.model.appraisal.Caveat;
import foamfront.model.appraisal.LiftingSummary;
import foamfront.model.appraisal.LimitCheck;
import foamfront.model.appraisal.PolarPoint;
import foamfront.model.appraisal.PowerPoint;
import foamfront.model.fabrication.BillOfMaterials;
import foamfront.model.mass.Balance;
import foamfront.model.mass.MassItem;
import foamfront.model.mission.Measure;
import foamfront.model.units.Numbers;
import foamfront.model.units.Unit;
import foamfront.optimizer.explore.Explanation;
import foamfront.optimizer.front.Row;
import foamfront.optimizer.front.Sentences;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.front.Table;
import foamfront.optimizer.front.Table.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** One design for people: a sentence, then tables. */
final class AppraisalText {
    private final Appraisal appraisal;
    private final Row row;
    private final Show show;
    private final StringBuilder out = new StringBuilder();

    private AppraisalText(Appraisal appraisal, Show show) {
        this.appraisal = appraisal;
        this.show = show;
        this.row =
                new Row(appraisal.airframe().design(), appraisal.measures(), appraisal.limits(), appraisal.caveats());
    }

    /** Judged by the study of that name. */
    static String of(Appraisal appraisal, String study, Show show) {
        AppraisalText text = new AppraisalText(appraisal, show);
        text.out
                .append(Text.plain(text.row.design().name()))
                .append(" (")
                .append(text.row.layout())
                .append("), judged by: ")
                .append(Text.plain(study))
                .append('\n');
        text.verdict();
        text.measures();
        text.limits();
        text.masses();
        text.surfaces();
        text.motions();
        text.polar();
        text.power();
        text.out.append(InstallationText.of(appraisal.airframe()));
        text.bill();
        text.out.append(BuildText.of(appraisal, show));
        text.cautions();
        return text.out.toString();
    }

    private void verdict() {
        List<LimitCheck> missed =
                row.limits().stream().filter(check -> !check.holds()).toList();
        LimitCheck tightest = row.tightest();
        if (!missed.isEmpty()) {
            out.append("It misses ")
                    .append(missed.size())
                    .append(missed.size() == 1 ? " limit: " : " limits: ")
                    .append(String.join(
                            ", ",
                            missed.stream()
                                    .map(check -> check.bound().measure().words())
                                    .toList()))
                    .append(".\n");
        } else {
            out.append("It can be built and flown: every limit holds");
            if (tightest != null) {
                out.append(", the tightest being ")
                        .append(tightest.bound().measure().words());
            }
            out.append(".\n");
        }
        out.append(asksFor(pilot(row.measures().of(Measure.PILOT_LEVEL)))).append('\n');
        double balancePoint = row.measures().of(Measure.BALANCE_POINT);
        out.append("Balance point ")
                .append(show.quantity(Measure.BALANCE_POINT, balancePoint))
                .append(" behind the leading edge of the wing's root.\n");
    }

    /** Whom a pilot level means. */
    static String pilot(double level) {
        if (level <= 1) {
            return "beginner";
        }
        return level <= 2 ? "intermediate" : "experienced";
    }

    private static String asksFor(String pilot) {
        return pilot.equals("beginner") ? "A beginner can fly it." : "It asks for an " + pilot + " pilot.";
    }

    private void table(String title, List<Column> columns, List<List<String>> rows) {
        if (!rows.isEmpty()) {
            out.append('\n').append(title).append('\n').append(new Table(columns, rows).text());
        }
    }

    private void measures() {
        List<List<String>> rows = new ArrayList<>();
        List<String> without = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            double value = row.measures().of(measure);
            if (Double.isNaN(value)) {
                without.add(measure.words());
            } else {
                rows.add(List.of(measure.words(), show.quantity(measure, value)));
            }
        }
        table("Measures", List.of(Column.text("measure"), Column.number("value")), rows);
        if (!without.isEmpty()) {
            out.append("Not of this design, or beyond what it can do: ")
                    .append(String.join(", ", without))
                    .append(".\n");
        }
    }

    private void limits() {
        List<List<String>> rows = new ArrayList<>();
        for (LimitCheck check : row.limits()) {
            Measure measure = check.bound().measure();
            rows.add(List.of(
                    measure.words(),
                    show.quantity(measure, check.value()),
                    Explanation.asked(check.bound(), show),
                    Text.room(check.margin())));
        }
        table(
                "Limits, and the room to spare",
                List.of(Column.text("limit"), Column.number("value"), Column.text("asked"), Column.text("room")),
                rows);
    }

    private void masses() {
        Balance balance = appraisal.balance();
        List<List<String>> rows = new ArrayList<>();
        for (MassItem item : appraisal.masses().items()) {
            rows.add(mass(item, item.fromBalancePoint() ? balance.aim() + item.x() : item.x()));
        }
        rows.add(mass(appraisal.masses().battery(), balance.batteryX()));
        rows.add(List.of(
                "all of it",
                grams(balance.mass()),
                show.number(balance.x(), show.unit(Unit.MILLIMETRE)),
                show.number(balance.z(), show.unit(Unit.MILLIMETRE))));
        String length = show.unit(Unit.MILLIMETRE).symbol();
        table(
                "Masses",
                List.of(
                        Column.text("item"),
                        Column.number("mass [" + show.unit(Unit.GRAM).symbol() + "]"),
                        Column.number("from the nose [" + length + "]"),
                        Column.number("over the axis [" + length + "]")),
                rows);
    }

    private List<String> mass(MassItem item, double x) {
        return List.of(
                item.name(),
                grams(item.mass()),
                show.number(x, show.unit(Unit.MILLIMETRE)),
                show.number(item.z(), show.unit(Unit.MILLIMETRE)));
    }

    private String grams(double mass) {
        return Numbers.fixed(show.unit(Unit.GRAM).fromSi(mass), show.metric() ? 1 : 2);
    }

    private void motions() {
        out.append('\n').append(MotionsText.of(appraisal.motions(), show)).append('\n');
    }

    private void surfaces() {
        List<List<String>> rows = new ArrayList<>();
        for (LiftingSummary surface : appraisal.surfaces()) {
            rows.add(List.of(
                    surface.name(),
                    fixed(surface.area() * 100, 2),
                    show.number(surface.span(), show.unit(Unit.MILLIMETRE)),
                    fixed(surface.liftCurveSlope(), 3),
                    fixed(surface.spanEfficiency(), 3),
                    show.number(surface.neutralPoint(), show.unit(Unit.MILLIMETRE))));
        }
        String length = show.unit(Unit.MILLIMETRE).symbol();
        table(
                "Lifting surfaces, inviscid",
                List.of(
                        Column.text("surface"),
                        Column.number("area [dm2]"),
                        Column.number("span [" + length + "]"),
                        Column.number("lift slope [per rad]"),
                        Column.number("span efficiency"),
                        Column.number("neutral point [" + length + "]")),
                rows);
    }

    private void polar() {
        List<List<String>> rows = new ArrayList<>();
        for (PolarPoint point : appraisal.polar()) {
            double drag = point.profileDrag() + point.inducedDrag() + point.parasiteDrag();
            rows.add(List.of(
                    speed(point.speed()),
                    fixed(point.reynolds() / 1000, 0),
                    fixed(point.liftCoefficient(), 3),
                    fixed(point.profileDrag(), 4),
                    fixed(point.inducedDrag(), 4),
                    fixed(point.parasiteDrag(), 4),
                    fixed(point.drag(), 2),
                    fixed(point.liftCoefficient() / drag, 1),
                    fixed(Unit.DEGREE.fromSi(point.incidence()), 1),
                    fixed(Unit.DEGREE.fromSi(point.elevator()), 1)));
        }
        table(
                "Trimmed level flight",
                List.of(
                        Column.number(speedHead()),
                        Column.number("Re [thousand]"),
                        Column.number("C_L"),
                        Column.number("C_D sections"),
                        Column.number("induced"),
                        Column.number("all else"),
                        Column.number("drag [N]"),
                        Column.number("lift/drag"),
                        Column.number("incidence [deg]"),
                        Column.number("elevator [deg]")),
                rows);
    }

    private void power() {
        List<List<String>> rows = new ArrayList<>();
        for (PowerPoint point : appraisal.power()) {
            rows.add(List.of(
                    speed(point.speed()),
                    fixed(point.available(), 2),
                    fixed(point.required(), 2),
                    fixed(100 * point.throttle(), 0),
                    fixed(point.current(), 1),
                    fixed(point.electrical(), 0),
                    fixed(point.climb(), 1)));
        }
        table(
                "Power",
                List.of(
                        Column.number(speedHead()),
                        Column.number("full thrust [N]"),
                        Column.number("needed [N]"),
                        Column.number("throttle [%]"),
                        Column.number("current [A]"),
                        Column.number("power [W]"),
                        Column.number("climb [m/s]")),
                rows);
    }

    private void bill() {
        List<List<String>> rows = new ArrayList<>();
        for (BillOfMaterials.Line line : appraisal.bill().lines()) {
            rows.add(List.of(
                    line.item(),
                    Numbers.significant(line.quantity(), 3),
                    Numbers.significant(line.bought(), 3),
                    show.currency().number(line.cost()),
                    line.provenance().words()));
        }
        rows.add(List.of(
                "all of it", "", "", show.currency().number(appraisal.bill().cost()), ""));
        table(
                "Shopping list (sheets, pieces, metres of tape, kilograms of glue)",
                List.of(
                        Column.text("item"),
                        Column.number("needed"),
                        Column.number("to buy"),
                        Column.number("cost [" + show.currency() + "]"),
                        Column.text("price from")),
                rows);
    }

    private void cautions() {
        out.append('\n');
        appraisal
                .caveats()
                .forEach(caveat ->
                        out.append("Note: ").append(capital(caveat.sentence())).append(".\n"));
        if (row.caveats().contains(Caveat.NEAR_250_GRAMS)) {
            threshold();
        }
        Sentences.cautions(List.of(row.design()), true)
                .forEach(caution -> out.append(caution).append('\n'));
    }

    /** The mass at which many countries draw a line, beside the band in which the built model will lie. */
    private void threshold() {
        double mass = appraisal.balance().mass();
        out.append("Four builds of five will weigh ")
                .append(show.number(Measure.MASS, mass - appraisal.massSpread()))
                .append(" to ")
                .append(show.quantity(Measure.MASS, mass + appraisal.massSpread()))
                .append("; the line is at ")
                .append(show.quantity(Measure.MASS, 0.25))
                .append(", so weigh it before you rely on either side. Local rules decide.\n");
    }

    private static String capital(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    private String speed(double si) {
        return show.number(si, show.unit(Unit.METRE_PER_SECOND));
    }

    private String speedHead() {
        return "speed [" + show.unit(Unit.METRE_PER_SECOND).symbol() + "]";
    }

    private static String fixed(double value, int decimals) {
        return Double.isFinite(value) ? Numbers.fixed(value, decimals) : "-";
    }
}
