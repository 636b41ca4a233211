package foamfront.optimizer.search;

import java.util.Arrays;

/** A design with its evaluation as one row of numbers: origin, evaluation, genes. */
final class FitnessRow {
    private static final int HEAD = 1;

    private FitnessRow() {}

    static double[] of(Fitness fitness) {
        double[] evaluation = fitness.evaluation().row();
        double[] genes = fitness.design().genes();
        double[] row = new double[HEAD + evaluation.length + genes.length];
        row[0] = fitness.design().origin().ordinal();
        System.arraycopy(evaluation, 0, row, HEAD, evaluation.length);
        System.arraycopy(genes, 0, row, HEAD + evaluation.length, genes.length);
        return row;
    }

    /** Reads a row from its place {@code from} on. What the genes decode to is computed anew: it follows from them. */
    static Fitness read(double[] row, int from, Schema schema) {
        int evaluation = from + HEAD;
        int genes = Evaluation.endOfRow(row, evaluation);
        Operator origin = Operator.values()[(int) row[from]];
        return new Fitness(
                schema.design(Arrays.copyOfRange(row, genes, row.length), origin), Evaluation.ofRow(row, evaluation));
    }
}
