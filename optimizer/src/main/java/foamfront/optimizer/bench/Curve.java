package foamfront.optimizer.bench;

import java.util.List;

/**
 * One line of a plot.
 *
 * @param head words and unit
 * @param sign that stands for it in a plot of characters
 * @param y over the plot's x
 */
record Curve(String head, char sign, List<Double> y) {
    Curve {
        y = List.copyOf(y);
    }

    /** Greatest value; curves start at 0. */
    double highest() {
        double highest = 0;
        for (double value : y) {
            highest = Math.max(highest, value);
        }
        return highest;
    }
}
