package foamfront.optimizer.bench;

import foamfront.model.units.Numbers;
import foamfront.optimizer.pictures.Svg;
import java.util.Arrays;
import java.util.List;

/**
 * The plot of a sweep: thrust and electrical power, each from 0 to its own greatest value, in characters or as SVG. Lines are
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
        String left = Numbers.significant(curves.get(0).highest(), 3);
        String right = Numbers.significant(curves.get(1).highest(), 3);
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
        double highest = curve.highest();
        for (int column = 0; column < WIDTH && highest > 0; column++) {
            double at = x[0] + (x[x.length - 1] - x[0]) * column / (WIDTH - 1);
            int row = (int) Math.rint(between(at, y) / highest * (HEIGHT - 1));
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
        double span = x[x.length - 1] - x[0];
        for (int tick = 0; tick <= 4; tick++) {
            double share = 0.25 * tick;
            double height = BOTTOM - share * (BOTTOM - TOP);
            page.text(LEFT + share * (RIGHT - LEFT), BOTTOM + 18, "middle", number(x[0] + share * span));
            page.text(LEFT - 8, height + 4, "end", number(share * curves.get(0).highest()));
            page.text(
                    RIGHT + 8, height + 4, "start", number(share * curves.get(1).highest()));
        }
        page.text(0.5 * (LEFT + RIGHT), BOTTOM + 40, "middle", across);
        line(page, curves.get(0), "", "solid, left: ", LEFT, "start");
        line(page, curves.get(1), "7 4", "dashed, right: ", RIGHT, "end");
        return page.page();
    }

    private void line(Svg page, Curve curve, String dash, String place, double at, String anchor) {
        double[] px = new double[x.length];
        double[] py = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            double along = x.length < 2 ? 0 : (x[i] - x[0]) / (x[x.length - 1] - x[0]);
            double up = curve.highest() > 0 ? Math.max(0, curve.y().get(i)) / curve.highest() : 0;
            px[i] = LEFT + along * (RIGHT - LEFT);
            py[i] = BOTTOM - up * (BOTTOM - TOP);
        }
        page.line(px, py, "stroke=\"black\" stroke-width=\"1.5\"", dash);
        page.text(at, PAGE_HEIGHT - 6, anchor, place + curve.head());
    }

    private static String number(double value) {
        return Numbers.significant(value, 3);
    }
}
