package foamfront.optimizer.bench;

import foamfront.model.units.Numbers;
import foamfront.model.units.Unit;
import foamfront.optimizer.pictures.Axis;
import foamfront.optimizer.pictures.Svg;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The plot of a sweep: thrust, rotor speed, current, powers and efficiencies in fields side by side over one axis, in characters or
 * as SVG. Lines are told apart by sign or dash; there is no colour.
 */
public final class Chart {
    private static final int ACROSS = 2;
    private static final int PAGE_WIDTH = 820;
    private static final int PAGE_HEIGHT = 690;
    private static final double LEFT = 60;
    private static final double TOP = 70;
    private static final double FIELD_WIDTH = 320;
    private static final double FIELD_HEIGHT = 140;
    private static final double STEP_RIGHT = 410;
    private static final double STEP_DOWN = 210;

    private static final String DASHED = "7 4";
    private static final String DOTTED = "1 3";

    private final String title;
    private final String along;
    private final double[] x;
    private final List<Panel> panels;

    private Chart(String title, String along, double[] x, List<Panel> panels) {
        this.title = title;
        this.along = along;
        this.x = x;
        this.panels = panels;
    }

    public static Chart of(Sweep sweep) {
        boolean speeds = sweep.axis() == Sweep.Axis.AIRSPEED;
        List<Point> points = sweep.points();
        double[] x = points.stream()
                .mapToDouble(point ->
                        speeds ? point.speed() : Unit.PERCENT.fromSi(point.at().throttle()))
                .toArray();
        return new Chart(
                sweep.stand().words(),
                speeds ? "airspeed [m/s]" : "throttle [%]",
                x,
                List.of(
                        new Panel("thrust [N]", List.of(curve(points, "", 'o', "", p -> p.at().thrust()))),
                        new Panel(
                                "power [W]",
                                List.of(
                                        curve(points, "electrical", 'e', "", p -> p.at().electricalPower()),
                                        curve(points, "shaft", 's', DASHED, p -> p.at().shaftPower()))),
                        new Panel(
                                "speed [rpm]",
                                List.of(curve(
                                        points,
                                        "",
                                        'o',
                                        "",
                                        p -> Unit.REVOLUTION_PER_MINUTE.fromSi(p.at().rotation())))),
                        new Panel(
                                "battery current [A]",
                                List.of(curve(points, "", 'o', "", p -> p.at().batteryCurrent()))),
                        new Panel(
                                "[%]",
                                List.of(
                                        curve(
                                                points,
                                                "motor",
                                                'm',
                                                DASHED,
                                                p -> Unit.PERCENT.fromSi(p.motorEfficiency())),
                                        curve(
                                                points,
                                                "rotor",
                                                'r',
                                                DOTTED,
                                                p -> Unit.PERCENT.fromSi(p.propellerEfficiency())),
                                        curve(
                                                points,
                                                "all together",
                                                'a',
                                                "",
                                                p -> Unit.PERCENT.fromSi(p.efficiency()))))));
    }

    private static Curve curve(List<Point> points, String words, char sign, String dash, ToDoubleFunction<Point> of) {
        return new Curve(
                words,
                sign,
                dash,
                points.stream().map(point -> of.applyAsDouble(point)).toList());
    }

    /** In characters; empty where there is nothing to plot. */
    public String text() {
        if (x.length < 2) {
            return "";
        }
        StringBuilder out = new StringBuilder();
        for (int k = 0; k < panels.size(); k += ACROSS) {
            List<String> left = panels.get(k).text(x);
            List<String> right = k + 1 < panels.size() ? panels.get(k + 1).text(x) : List.of();
            for (int i = 0; i < left.size(); i++) {
                String line = right.isEmpty() ? left.get(i) : left.get(i) + "  " + right.get(i);
                out.append(line.stripTrailing()).append('\n');
            }
        }
        String first = Numbers.significant(x[0], 3);
        String last = Numbers.significant(x[x.length - 1], 3);
        int room = Panel.COLUMNS - first.length() - last.length();
        return out.append(" ".repeat(Panel.WIDTH - Panel.COLUMNS - 1))
                .append(first)
                .append(" ".repeat(Math.max(1, room)))
                .append(last)
                .append("  ")
                .append(along)
                .append(" of every field\n")
                .toString();
    }

    /** As a page of its own. */
    public String svg() {
        Svg page = new Svg(PAGE_WIDTH, PAGE_HEIGHT, title);
        page.text(0.5 * PAGE_WIDTH, 24, "middle", title);
        Axis bottom = Axis.holding(along, x[0], x[x.length - 1]);
        for (int k = 0; k < panels.size(); k++) {
            double left = LEFT + k % ACROSS * STEP_RIGHT;
            int row = k / ACROSS;
            double top = TOP + row * STEP_DOWN;
            panels.get(k).draw(page, x, bottom, left, top, FIELD_WIDTH, FIELD_HEIGHT);
            page.text(left + 0.5 * FIELD_WIDTH, top + FIELD_HEIGHT + 36, "middle", along);
        }
        return page.page();
    }
}
