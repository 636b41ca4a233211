package foamfront.optimizer.search;

import java.util.List;

/**
 * Whether a search has stalled: over the last fifth of the designs tried so far the dominated volume grew by less than a stated
 * share of itself. A function of the history alone, so that it does not depend on the machine. Never while nothing is feasible
 * (the volume is then 0), and never in the first tenth of the budget, where a search often rests before it finds the next
 * layout (judgement).
 */
final class Stall {
    private static final double LAST = 0.2;
    private static final double EARLIEST = 0.1;

    private Stall() {}

    /** @param tolerance growth below this counts as none; 0 never stalls */
    static boolean isReached(List<Progress> history, double tolerance) {
        if (history.isEmpty() || !(tolerance > 0)) {
            return false;
        }
        Progress now = history.get(history.size() - 1);
        if (now.evaluations() < EARLIEST * now.total() || !(now.hypervolume() > 0)) {
            return false;
        }
        double before = 0;
        for (Progress earlier : history) {
            if (earlier.evaluations() <= (1 - LAST) * now.evaluations()) {
                before = earlier.hypervolume();
            }
        }
        return now.hypervolume() - before < tolerance * now.hypervolume();
    }
}
