package foamfront.optimizer.bench;

import foamfront.model.units.Numbers;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The plot of a sweep: thrust and electrical power, each from 0 to its own greatest value, in characters or as SVG. Lines are
 * told apart by sign, dash and letter; there is no colour.
 */
public final class Chart {
    private static final int WIDTH = 60;
    private static final int HEIGHT = 14;
    private static final double PAGE_WIDTH = 640;
    private static final double PAGE_HEIGHT = 400;
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
        StringBuilder out = new StringBuilder();
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"640\" height=\"400\" viewBox=\"0 0 640 400\"")
                .append(" font-family=\"sans-serif\" font-size=\"13\">\n")
                .append("<title>")
                .append(escape(title))
                .append("</title>\n<rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n");
        text(out, PAGE_WIDTH / 2, 20, "middle", title);
        out.append(String.format(
                Locale.ROOT,
                "<path d=\"M%.0f %.0f V%.0f H%.0f V%.0f\" fill=\"none\" stroke=\"black\"/>\n",
                LEFT,
                TOP,
                BOTTOM,
                RIGHT,
                TOP));
        double span = x[x.length - 1] - x[0];
        for (int tick = 0; tick <= 4; tick++) {
            double share = 0.25 * tick;
            double height = BOTTOM - share * (BOTTOM - TOP);
            text(out, LEFT + share * (RIGHT - LEFT), BOTTOM + 18, "middle", number(x[0] + share * span));
            text(out, LEFT - 8, height + 4, "end", number(share * curves.get(0).highest()));
            text(
                    out,
                    RIGHT + 8,
                    height + 4,
                    "start",
                    number(share * curves.get(1).highest()));
        }
        text(out, 0.5 * (LEFT + RIGHT), BOTTOM + 40, "middle", across);
        for (int k = 0; k < curves.size(); k++) {
            line(
                    out,
                    curves.get(k),
                    k == 0 ? "" : " stroke-dasharray=\"7 4\"",
                    k == 0 ? "solid, left: " : "dashed, right: ",
                    k);
        }
        return out.append("</svg>\n").toString();
    }

    private void line(StringBuilder out, Curve curve, String dash, String place, int index) {
        List<Double> y = curve.y();
        out.append("<polyline fill=\"none\" stroke=\"black\" stroke-width=\"1.5\"")
                .append(dash)
                .append(" points=\"");
        for (int i = 0; i < x.length; i++) {
            double across = x.length < 2 ? 0 : (x[i] - x[0]) / (x[x.length - 1] - x[0]);
            double up = curve.highest() > 0 ? Math.max(0, y.get(i)) / curve.highest() : 0;
            out.append(i == 0 ? "" : " ")
                    .append(Numbers.fixed(LEFT + across * (RIGHT - LEFT), 1))
                    .append(',')
                    .append(Numbers.fixed(BOTTOM - up * (BOTTOM - TOP), 1));
        }
        out.append("\"/>\n");
        text(out, index == 0 ? LEFT : RIGHT, PAGE_HEIGHT - 6, index == 0 ? "start" : "end", place + curve.head());
    }

    private static void text(StringBuilder out, double x, double y, String anchor, String words) {
        out.append("<text x=\"")
                .append(Numbers.fixed(x, 1))
                .append("\" y=\"")
                .append(Numbers.fixed(y, 1))
                .append("\" text-anchor=\"")
                .append(anchor)
                .append("\">")
                .append(escape(words))
                .append("</text>\n");
    }

    private static String number(double value) {
        return Numbers.significant(value, 3);
    }

    private static String escape(String words) {
        return words.replaceAll("\\p{Cntrl}", "?")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;");
    }
}
