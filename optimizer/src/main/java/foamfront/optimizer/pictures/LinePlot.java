package foamfront.optimizer.pictures;

import java.util.List;
import java.util.stream.IntStream;

/**
 * One family of curves over one pair of axes. The letter of each curve stands at its end, its words underneath; one alone needs
 * neither, its title says what it is.
 *
 * @param title over the plot
 * @param across words of the horizontal axis, with its unit
 * @param up words of the vertical axis, with its unit
 * @param lines at most as many as there are dash patterns
 */
record LinePlot(String title, String across, String up, List<Line> lines) {
    private static final String[] DASHES = {"", "9 4", "3 3", "12 3 3 3", "1 4", "16 5"};
    private static final int WIDTH = 720;
    private static final int HEIGHT = 480;
    private static final double LEFT = 70;
    private static final double TOP = 50;
    private static final double RIGHT = 680;
    private static final double BOTTOM = 380;
    private static final double LEGEND = 455;

    /** One curve: its words and points. Only points that are numbers are drawn. */
    @SuppressWarnings("ArrayRecordComponent") // made, drawn and dropped
    record Line(String words, double[] x, double[] y) {
        /** The same without the points that are no numbers. */
        Line drawn() {
            int[] kept = IntStream.range(0, x.length)
                    .filter(i -> Double.isFinite(x[i]) && Double.isFinite(y[i]))
                    .toArray();
            return new Line(
                    words,
                    IntStream.of(kept).mapToDouble(i -> x[i]).toArray(),
                    IntStream.of(kept).mapToDouble(i -> y[i]).toArray());
        }
    }

    LinePlot {
        lines = lines.stream().map(Line::drawn).toList();
        if (lines.size() > DASHES.length) {
            throw new IllegalArgumentException("a plot tells at most " + DASHES.length + " lines apart");
        }
    }

    String svg() {
        Axis x = axis(across, true);
        Axis y = axis(up, false);
        Svg page = new Svg(WIDTH, HEIGHT, title);
        page.text(0.5 * (LEFT + RIGHT), 26, "middle", title);
        for (int i = 0; i <= x.steps(); i++) {
            double at = px(x.share(x.low() + i * x.step()));
            grid(page, at, BOTTOM, at, TOP);
            page.text(at, BOTTOM + 18, "middle", x.mark(i));
        }
        for (int i = 0; i <= y.steps(); i++) {
            double at = py(y.share(y.low() + i * y.step()));
            grid(page, LEFT, at, RIGHT, at);
            page.text(LEFT - 8, at + 4, "end", y.mark(i));
        }
        page.text(0.5 * (LEFT + RIGHT), BOTTOM + 40, "middle", across);
        page.text(LEFT, TOP - 10, "start", up);
        for (int k = 0; k < lines.size(); k++) {
            draw(page, x, y, lines.get(k), k);
        }
        return page.page();
    }

    private static void grid(Svg page, double x1, double y1, double x2, double y2) {
        page.line(new double[] {x1, x2}, new double[] {y1, y2}, "stroke=\"#ccc\"", "");
    }

    private void draw(Svg page, Axis x, Axis y, Line line, int k) {
        double[] px = new double[line.x().length];
        double[] py = new double[px.length];
        for (int i = 0; i < px.length; i++) {
            px[i] = px(x.share(line.x()[i]));
            py[i] = py(y.share(line.y()[i]));
        }
        if (px.length > 0) {
            page.line(px, py, "stroke=\"black\" stroke-width=\"1.5\"", DASHES[k]);
        }
        if (lines.size() > 1) {
            legend(page, px, py, line.words(), k);
        }
    }

    private void legend(Svg page, double[] px, double[] py, String words, int k) {
        String letter = String.valueOf((char) ('a' + k));
        if (px.length > 0) {
            // Letters at different places along their curves, which often end close together.
            int at = (px.length - 1) * (2 * lines.size() - k - 1) / (2 * lines.size());
            page.text(px[at] + 4, py[at] - 4, "start", letter);
        }
        double column = LEFT + (RIGHT - LEFT) * (k % 3) / 3.0;
        double row = LEGEND - 14 + 18 * (k / 3);
        page.line(
                new double[] {column, column + 36},
                new double[] {row - 4, row - 4},
                "stroke=\"black\" stroke-width=\"1.5\"",
                DASHES[k]);
        page.text(column + 42, row, "start", letter + " " + words);
    }

    private static double px(double share) {
        return LEFT + share * (RIGHT - LEFT);
    }

    private static double py(double share) {
        return BOTTOM - share * (BOTTOM - TOP);
    }

    private Axis axis(String words, boolean horizontal) {
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (Line line : lines) {
            for (double value : horizontal ? line.x() : line.y()) {
                least = Math.min(least, value);
                greatest = Math.max(greatest, value);
            }
        }
        return least <= greatest ? Axis.holding(words, least, greatest) : Axis.holding(words, 0, 1);
    }
}
