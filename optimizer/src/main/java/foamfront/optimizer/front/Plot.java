package foamfront.optimizer.front;

import foamfront.optimizer.study.Aim;
import java.util.Arrays;

/** The first two aims of a front against each other, in characters: {@code o} a design, {@code *} the best compromise. */
public final class Plot {
    private static final int WIDTH = 60;
    private static final int HEIGHT = 14;

    private Plot() {}

    /** Empty where there is nothing to plot: fewer than two aims, or all designs alike in one. */
    public static String of(Front front, Show show) {
        if (front.aims().size() < 2 || front.size() < 2) {
            return "";
        }
        double[][] at = new double[2][front.size()];
        double[] low = new double[2];
        double[] high = new double[2];
        for (int k = 0; k < 2; k++) {
            for (int i = 0; i < front.size(); i++) {
                at[k][i] = front.rows().get(i).measures().of(front.aims().get(k).measure());
            }
            low[k] = Arrays.stream(at[k]).min().orElse(0);
            high[k] = Arrays.stream(at[k]).max().orElse(0);
            if (!(high[k] > low[k])) {
                return "";
            }
        }
        char[][] field = new char[HEIGHT][WIDTH];
        for (char[] line : field) {
            Arrays.fill(line, ' ');
        }
        int compromise = front.compromise();
        for (int i = 0; i < front.size(); i++) {
            mark(field, at, low, high, i, 'o');
        }
        mark(field, at, low, high, compromise, '*');
        return frame(field, front, low, high, show);
    }

    private static void mark(char[][] field, double[][] at, double[] low, double[] high, int row, char sign) {
        int x = (int) Math.rint((at[0][row] - low[0]) / (high[0] - low[0]) * (WIDTH - 1));
        int y = (int) Math.rint((at[1][row] - low[1]) / (high[1] - low[1]) * (HEIGHT - 1));
        field[HEIGHT - 1 - y][x] = sign;
    }

    private static String frame(char[][] field, Front front, double[] low, double[] high, Show show) {
        Aim across = front.aims().get(0);
        Aim up = front.aims().get(1);
        String top = show.number(up.measure(), high[1]);
        String bottom = show.number(up.measure(), low[1]);
        int margin = Math.max(top.length(), bottom.length());
        StringBuilder out = new StringBuilder();
        out.append(show.head(up.measure())).append('\n');
        for (int i = 0; i < field.length; i++) {
            String label = i == 0 ? top : i == field.length - 1 ? bottom : "";
            String line = " ".repeat(margin - label.length()) + label + " |" + new String(field[i]);
            out.append(line.stripTrailing()).append('\n');
        }
        String left = show.number(across.measure(), low[0]);
        String right = show.number(across.measure(), high[0]);
        out.append(" ".repeat(margin + 1)).append('+').append("-".repeat(WIDTH)).append('\n');
        out.append(" ".repeat(margin + 2))
                .append(left)
                .append(" ".repeat(Math.max(1, WIDTH - left.length() - right.length())))
                .append(right)
                .append("  ")
                .append(show.head(across.measure()))
                .append('\n');
        return out.toString();
    }
}
