package foamfront.optimizer.bench;

import java.util.List;

/**
 * One line of a plot.
 *
 * @param words what it is
 * @param sign that stands for it in a plot of characters
 * @param dash that stands for it in a drawing, empty for a whole line
 * @param y over the plot's x
 */
record Curve(String words, char sign, String dash, List<Double> y) {
    Curve {
        y = List.copyOf(y);
    }

    double least() {
        return y.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    }

    double greatest() {
        return y.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }
}
