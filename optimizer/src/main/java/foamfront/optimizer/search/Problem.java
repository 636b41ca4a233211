package foamfront.optimizer.search;

import foamfront.model.units.Require;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import java.util.function.UnaryOperator;

/**
 * What is searched.
 *
 * @param variables the free choices
 * @param resolution one per objective, above 0: the smallest difference that counts, and the side of the archive's boxes
 * @param evaluators makes one evaluator per worker, so that each may own scratch arrays
 * @param niches the kinds of design that are kept alive side by side
 * @param canonical replaces decoded values by those the design really has, so that two that snap to the same design are known
 *     as one; it may change and return the array it is given
 * @param starts designs to begin with, one number in [0, 1] per variable
 * @param interest where on the trade-off to look first
 */
public record Problem(
        List<Variable> variables,
        List<Double> resolution,
        Supplier<? extends Evaluator> evaluators,
        Niches niches,
        UnaryOperator<double[]> canonical,
        List<double[]> starts,
        Interest interest) {
    public Problem {
        variables = List.copyOf(variables);
        resolution = List.copyOf(resolution);
        starts = starts.stream().map(double[]::clone).toList();
        Require.positive("number of variables", variables.size(), "");
        Require.positive("number of objectives", resolution.size(), "");
        for (double side : resolution) {
            Require.positive("resolution", side, "");
        }
        if (!interest.isAll() && interest.low().size() != resolution.size()) {
            throw new IllegalArgumentException(
                    "an interest in " + interest.low().size() + " of " + resolution.size() + " objectives");
        }
        for (double[] start : starts) {
            if (start.length != variables.size()) {
                throw new IllegalArgumentException(
                        "a start has " + start.length + " numbers for " + variables.size() + " variables");
            }
        }
    }

    /** A problem of which everything is of interest. */
    public Problem(
            List<Variable> variables,
            List<Double> resolution,
            Supplier<? extends Evaluator> evaluators,
            Niches niches,
            UnaryOperator<double[]> canonical,
            List<double[]> starts) {
        this(variables, resolution, evaluators, niches, canonical, starts, Interest.ALL);
    }

    /** A problem with one niche, nothing to snap and no starts. */
    public Problem(List<Variable> variables, List<Double> resolution, Supplier<? extends Evaluator> evaluators) {
        this(variables, resolution, evaluators, Niches.ONE, UnaryOperator.identity(), List.of());
    }

    public int objectives() {
        return resolution.size();
    }

    /**
     * The kinds of design.
     *
     * @param count how many there are, at least 1
     * @param of the kind of a design from its decoded values, 0 to count - 1; a negative answer means no kind worth keeping
     */
    public record Niches(int count, ToIntFunction<double[]> of) {
        /** All designs alike. */
        public static final Niches ONE = new Niches(1, values -> 0);

        public Niches {
            Require.positive("number of niches", count, "");
        }
    }
}
