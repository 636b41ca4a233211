package foamfront.optimizer.search;

import java.util.Arrays;

/** A design with its evaluation as one row of numbers: origin, whether feasible, count of its numbers, these, genes. */
final class FitnessRow {
    private static final int HEAD = 3;

    private FitnessRow() {}

    static double[] of(Fitness fitness) {
        double[] numbers = fitness.evaluation().numbers();
        double[] genes = fitness.design().genes();
        double[] row = new double[HEAD + numbers.length + genes.length];
        row[0] = fitness.design().origin().ordinal();
        row[1] = fitness.isFeasible() ? 1 : 0;
        row[2] = numbers.length;
        System.arraycopy(numbers, 0, row, HEAD, numbers.length);
        System.arraycopy(genes, 0, row, HEAD + numbers.length, genes.length);
        return row;
    }

    /** Reads a row from its place {@code from} on. What the genes decode to is computed anew: it follows from them. */
    static Fitness read(double[] row, int from, Schema schema) {
        int numbers = from + HEAD;
        int genes = numbers + (int) row[from + 2];
        Operator origin = Operator.values()[(int) row[from]];
        return new Fitness(
                schema.design(Arrays.copyOfRange(row, genes, row.length), origin),
                Evaluation.of(row[from + 1] == 1, Arrays.copyOfRange(row, numbers, genes)));
    }
}
