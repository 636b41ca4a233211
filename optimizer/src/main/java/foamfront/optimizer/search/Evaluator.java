package foamfront.optimizer.search;

/** The function under search. Pure: the same values give the same answer, whatever was asked before. */
@FunctionalInterface
public interface Evaluator {
    /**
     * Judges one design.
     *
     * @param values one per variable, decoded: fractions for reals, whole numbers for the others; to be read only
     */
    Evaluation evaluate(double[] values);
}
