package foamfront.optimizer.bench;

import foamfront.optimizer.pictures.Axis;
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

    /** From 0 to the first mark past the greatest value. */
    Axis axis() {
        double highest = 0;
        for (double value : y) {
            highest = Math.max(highest, value);
        }
        return Axis.holding(head, 0, highest);
    }
}
