package foamfront.optimizer.search;

import java.util.List;

/**
 * The state of a search on its way out or in. While recording each method writes what it is given and gives it back; while
 * playing each gives what was recorded. So one method per class serves for both ways, and they cannot drift apart.
 */
interface Tape {
    /** A whole number. */
    long whole(String name, long now);

    /** Rows of numbers, kept bit by bit. */
    List<double[]> rows(String name, List<double[]> now);

    /** Texts. */
    List<String> texts(String name, List<String> now);

    /** Designs with their evaluations. */
    List<Fitness> designs(String name, List<Fitness> now);

    /** Any number, kept bit by bit. */
    default double real(String name, double now) {
        return row(name, now)[0];
    }

    /** One row of numbers. */
    default double[] row(String name, double... now) {
        return rows(name, List.of(now)).get(0);
    }
}
