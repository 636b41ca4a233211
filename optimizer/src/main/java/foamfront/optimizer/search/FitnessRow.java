package foamfront.optimizer.search;

import java.util.Arrays;

/** A design with its evaluation as one row of numbers: origin, violation, count of objectives, objectives, genes. */
final class FitnessRow {
    private static final int HEAD = 3;

    private FitnessRow() {}

    static double[] of(Fitness fitness) {
        double[] objectives = fitness.objectives();
        double[] genes = fitness.design().genes();
        double[] row = new double[HEAD + objectives.length + genes.length];
        row[0] = fitness.design().origin().ordinal();
        row[1] = fitness.violation();
        row[2] = objectives.length;
        System.arraycopy(objectives, 0, row, HEAD, objectives.length);
        System.arraycopy(genes, 0, row, HEAD + objectives.length, genes.length);
        return row;
    }

    /** Reads a row from its place {@code from} on. What the genes decode to is computed anew: it follows from them. */
    static Fitness read(double[] row, int from, Schema schema) {
        int objectives = from + HEAD;
        int genes = objectives + (int) row[from + 2];
        Operator origin = Operator.values()[(int) row[from]];
        return new Fitness(
                schema.design(Arrays.copyOfRange(row, genes, row.length), origin),
                Evaluation.of(row[from + 1], Arrays.copyOfRange(row, objectives, genes)));
    }
}
