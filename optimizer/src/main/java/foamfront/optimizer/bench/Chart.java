package foamfront.optimizer.bench;

import foamfront.model.units.Numbers;
import foamfront.optimizer.pictures.Axis;
import foamfront.optimizer.pictures.Svg;
import java.util.Arrays;
import java.util.List;

/**
 * The plot of a sweep: thrust and electrical power, each on its own axis from 0 to a round figure, in characters or as SVG. Lines are
 * told apart by sign, dash and letter; there is no colour.
 */
public final class Chart {
    private static final int WIDTH = 60;
    private static final int HEIGHT = 14;
    private static final int PAGE_WIDTH = 640;
    private static final int PAGE_HEIGHT = 400;
    private static final double LEFT = 70;
    private static final double TOP = 40;
    private static final double RIGHT = 570;
    private static final double BOTTOM = 340;

    private final String title;
    private final String across;
    private final double[] x;
    private final List<Curve> curves;

    private Chart(String title, String across, double[] x, List<Curve> curves) {
        this.title = title;
        this.across = across;
        this.x = x;
        this.curves = curves;
    }

    public static Chart of(Sweep sweep) {
        boolean speeds = sweep.axis() == Sweep.Axis.AIRSPEED;
        List<Point> points = sweep.points();
        double[] x = points.stream()
                .mapToDouble(point -> speeds ? point.speed() : 100 * point.at().throttle())
                .toArray();
        List<Double> thrust = points.stream().map(point -> point.at().thrust()).toList();
        List<Double> power =
                points.stream().map(point -> point.at().electricalPower()).toList();
        return new Chart(
                sweep.stand().words(),
                speeds ? "airspeed [m/s]" : "throttle [%]",
                x,
                List.of(new Curve("thrust [N]", 'o', thrust), new Curve("electrical power [W]", '+', power)));
    }

    /** In characters; empty where there is nothing to plot. */
    public String text() {
        if (x.length < 2) {
            return "";
        }
        char[][] field = new char[HEIGHT][WIDTH];
        for (char[] line : field) {
            Arrays.fill(line, ' ');
        }
        for (int k = curves.size() - 1; k >= 0; k--) {
            draw(field, curves.get(k));
        }
        StringBuilder out = new StringBuilder();
        String left = top(curves.get(0).axis());
        String right = top(curves.get(1).axis());
        for (Curve curve : curves) {
            out.append(curve.sign()).append(' ').append(curve.head()).append("   ");
        }
        out.append('\n');
        for (int i = 0; i < HEIGHT; i++) {
            String label = i == 0 ? left : i == HEIGHT - 1 ? "0" : "";
            out.append(" ".repeat(left.length() - label.length()))
                    .append(label)
                    .append(" |")
                    .append(field[i])
                    .append('|')
                    .append(i == 0 ? " " + right : i == HEIGHT - 1 ? " 0" : "")
                    .append('\n');
        }
        String first = Numbers.significant(x[0], 3);
        String last = Numbers.significant(x[x.length - 1], 3);
        out.append(" ".repeat(left.length() + 1))
                .append('+')
                .append("-".repeat(WIDTH))
                .append("+\n")
                .append(" ".repeat(left.length() + 2))
                .append(first)
                .append(" ".repeat(Math.max(1, WIDTH - first.length() - last.length())))
                .append(last)
                .append("  ")
                .append(across)
                .append('\n');
        return out.toString();
    }

    private void draw(char[][] field, Curve curve) {
        List<Double> y = curve.y();
        Axis up = curve.axis();
        for (int column = 0; column < WIDTH; column++) {
            double at = x[0] + (x[x.length - 1] - x[0]) * column / (WIDTH - 1);
            int row = (int) Math.rint(up.share(between(at, y)) * (HEIGHT - 1));
            field[HEIGHT - 1 - Math.max(0, Math.min(HEIGHT - 1, row))][column] = curve.sign();
        }
    }

    private double between(double at, List<Double> y) {
        int i = 1;
        while (i < x.length - 1 && x[i] < at) {
            i++;
        }
        double f = (at - x[i - 1]) / (x[i] - x[i - 1]);
        return y.get(i - 1) + f * (y.get(i) - y.get(i - 1));
    }

    /** As a page of its own. */
    public String svg() {
        Svg page = new Svg(PAGE_WIDTH, PAGE_HEIGHT, title);
        page.text(0.5 * PAGE_WIDTH, 20, "middle", title);
        page.line(
                new double[] {LEFT, LEFT, RIGHT, RIGHT},
                new double[] {TOP, BOTTOM, BOTTOM, TOP},
                "stroke=\"black\"",
                "");
        Axis along = Axis.holding(across, x[0], x[x.length - 1]);
        for (int i = 0; i <= along.steps(); i++) {
            double share = along.share(along.low() + i * along.step());
            page.text(LEFT + share * (RIGHT - LEFT), BOTTOM + 18, "middle", along.mark(i));
        }
        marks(page, curves.get(0).axis(), LEFT - 8, "end");
        marks(page, curves.get(1).axis(), RIGHT + 8, "start");
        page.text(0.5 * (LEFT + RIGHT), BOTTOM + 40, "middle", across);
        line(page, along, curves.get(0), "", "solid, left: ", LEFT, "start");
        line(page, along, curves.get(1), "7 4", "dashed, right: ", RIGHT, "end");
        return page.page();
    }

    private static void marks(Svg page, Axis up, double at, String anchor) {
        for (int i = 0; i <= up.steps(); i++) {
            double share = up.share(up.low() + i * up.step());
            page.text(at, BOTTOM - share * (BOTTOM - TOP) + 4, anchor, up.mark(i));
        }
    }

    private void line(Svg page, Axis along, Curve curve, String dash, String place, double at, String anchor) {
        Axis up = curve.axis();
        double[] px = new double[x.length];
        double[] py = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            px[i] = LEFT + along.share(x[i]) * (RIGHT - LEFT);
            py[i] = BOTTOM - up.share(Math.max(0, curve.y().get(i))) * (BOTTOM - TOP);
        }
        page.line(px, py, "stroke=\"black\" stroke-width=\"1.5\"", dash);
        page.text(at, PAGE_HEIGHT - 6, anchor, place + curve.head());
    }

    private static String top(Axis up) {
        return up.mark(up.steps());
    }
}
