package foamfront.optimizer.search;

import java.util.List;

/**
 * A design at which the evaluator broke down. It was marked infeasible and the search went on.
 *
 * @param values what the evaluator saw
 * @param message the exception, or the score that was not a number
 */
public record Fault(List<Double> values, String message) {
    public Fault {
        values = List.copyOf(values);
    }
}
