package foamfront.optimizer.bench;

import foamfront.optimizer.pictures.Axis;
import foamfront.optimizer.pictures.Svg;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Lines of one unit over a common x: one field of a {@link Chart}.
 *
 * @param head quantity and unit
 */
record Panel(String head, List<Curve> curves) {
    static final int COLUMNS = 30;
    static final int ROWS = 8;

    /** Room for a mark's figure. */
    private static final int MARK = 5;

    /** Characters from edge to edge. */
    static final int WIDTH = MARK + 2 + COLUMNS + 1;

    Panel {
        curves = List.copyOf(curves);
    }

    /** From zero or below to the first mark past the greatest value. */
    private Axis up() {
        double least =
                Math.min(0, curves.stream().mapToDouble(Curve::least).min().orElse(0));
        double greatest = curves.stream().mapToDouble(Curve::greatest).max().orElse(1);
        return Axis.holding(head, least, Math.max(0, greatest));
    }

    /** Lines of characters, all {@link #WIDTH} long. */
    List<String> text(double[] x) {
        Axis up = up();
        char[][] field = new char[ROWS][COLUMNS];
        for (char[] line : field) {
            Arrays.fill(line, ' ');
        }
        for (int k = curves.size() - 1; k >= 0; k--) {
            Curve curve = curves.get(k);
            for (int column = 0; column < COLUMNS; column++) {
                double at = x[0] + (x[x.length - 1] - x[0]) * column / (COLUMNS - 1);
                int row = (int) Math.rint(up.share(between(at, x, curve.y())) * (ROWS - 1));
                field[ROWS - 1 - row][column] = curve.sign();
            }
        }
        List<String> lines = new ArrayList<>();
        lines.add(padded(" ".repeat(MARK + 2) + legend(true)));
        for (int i = 0; i < ROWS; i++) {
            String mark = i == 0 ? up.mark(up.steps()) : i == ROWS - 1 ? up.mark(0) : "";
            lines.add(" ".repeat(Math.max(0, MARK - mark.length())) + mark + " |" + String.valueOf(field[i]) + "|");
        }
        return lines;
    }

    static String padded(String line) {
        return line + " ".repeat(Math.max(0, WIDTH - line.length()));
    }

    private static double between(double at, double[] x, List<Double> y) {
        int i = 1;
        while (i < x.length - 1 && x[i] < at) {
            i++;
        }
        double f = (at - x[i - 1]) / (x[i] - x[i - 1]);
        return y.get(i - 1) + f * (y.get(i) - y.get(i - 1));
    }

    /** Draws it with its upper left corner of the field at a place. */
    void draw(Svg page, double[] x, Axis along, double left, double top, double width, double height) {
        Axis up = up();
        double right = left + width;
        double bottom = top + height;
        page.line(new double[] {left, left, right}, new double[] {top, bottom, bottom}, "stroke=\"black\"", "");
        for (int i = 0; i <= up.steps(); i++) {
            page.text(left - 6, bottom - up.share(up.low() + i * up.step()) * height + 4, "end", up.mark(i));
        }
        for (int i = 0; i <= along.steps(); i++) {
            page.text(left + along.share(along.low() + i * along.step()) * width, bottom + 17, "middle", along.mark(i));
        }
        for (Curve curve : curves) {
            double[] px = new double[x.length];
            double[] py = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                px[i] = left + along.share(x[i]) * width;
                py[i] = bottom - up.share(curve.y().get(i)) * height;
            }
            page.line(px, py, "stroke=\"black\" stroke-width=\"1.5\"", curve.dash());
        }
        page.text(left, top - 10, "start", legend(false));
    }

    /** The quantity, and where there are several lines what each is. */
    private String legend(boolean signs) {
        if (curves.size() == 1) {
            return head;
        }
        List<String> each = new ArrayList<>();
        for (Curve curve : curves) {
            String line = curve.dash().isEmpty() ? "solid" : curve.dash().startsWith("1") ? "dotted" : "dashed";
            each.add((signs ? String.valueOf(curve.sign()) : line) + " " + curve.words());
        }
        return head + ": " + String.join(", ", each);
    }
}
