package foamfront.optimizer.search;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** What a design is worth: objectives to be minimised, and by how much it breaks its limits. */
public final class Evaluation {
    private static final double[] NONE = {};

    /** Counts before the numbers of a row. */
    private static final int ROW_HEAD = 2;

    private final double[] objectives;
    private final double[] excesses;
    private final double violation;

    private Evaluation(double[] objectives, double[] excesses) {
        this.objectives = objectives;
        this.excesses = excesses;
        double sum = 0;
        for (double excess : excesses) {
            sum += excess;
        }
        violation = sum;
    }

    /**
     * A design that keeps all limits.
     *
     * @param objectives minimised, as many as the problem declares
     */
    public static Evaluation feasible(double... objectives) {
        return new Evaluation(objectives.clone(), NONE);
    }

    /**
     * A design that breaks a limit and of which nothing else is known.
     *
     * @param excesses over limits, each divided by its limit, summed by group of limits: designs that do better in some group
     *     than all others are kept while nothing is feasible; none below 0, their sum above 0, as many for every design
     */
    public static Evaluation infeasible(double... excesses) {
        return new Evaluation(NONE, excesses.clone());
    }

    /**
     * A design that breaks a limit, with its objectives: one that would be good if it kept its limits may lie near designs that
     * are good and do. It never counts as an answer.
     *
     * @param objectives as of a feasible design; where one is not finite, none is used
     * @param excesses as of {@link #infeasible(double...)}
     */
    public static Evaluation infeasible(double[] objectives, double[] excesses) {
        return new Evaluation(areFinite(objectives) ? objectives.clone() : NONE, excesses.clone());
    }

    /** {@link #infeasible} where the violation is above 0, otherwise {@link #feasible}. */
    public static Evaluation of(double violation, double... objectives) {
        return violation > 0 ? infeasible(objectives, new double[] {violation}) : feasible(objectives);
    }

    /** All there is to it as one row of numbers: how many these are, how many of them are excesses, excesses, objectives. */
    double[] row() {
        double[] row = new double[ROW_HEAD + excesses.length + objectives.length];
        row[0] = row.length - ROW_HEAD;
        row[1] = excesses.length;
        System.arraycopy(excesses, 0, row, ROW_HEAD, excesses.length);
        System.arraycopy(objectives, 0, row, ROW_HEAD + excesses.length, objectives.length);
        return row;
    }

    /** Reads a row from its place {@code from} on. */
    static Evaluation ofRow(double[] row, int from) {
        int excesses = from + ROW_HEAD;
        int objectives = excesses + (int) row[from + 1];
        return new Evaluation(
                Arrays.copyOfRange(row, objectives, endOfRow(row, from)),
                Arrays.copyOfRange(row, excesses, objectives));
    }

    /** Where what follows such a row begins. */
    static int endOfRow(double[] row, int from) {
        return from + ROW_HEAD + (int) row[from];
    }

    public boolean isFeasible() {
        return excesses.length == 0;
    }

    /** 0 for a feasible design, otherwise the normalised sum of excesses. */
    public double violation() {
        return violation;
    }

    /** The objective of this index; every feasible design has all of them. */
    public double objective(int index) {
        return objectives[index];
    }

    /** A copy of the objectives; empty for an infeasible design of which they are unknown. */
    public double[] objectives() {
        return objectives.clone();
    }

    /** The array itself, for the kernels of this package, which only read it. */
    double[] shared() {
        return objectives;
    }

    /** The array itself, as {@link #shared}; empty for a feasible design. */
    double[] sharedExcesses() {
        return excesses;
    }

    /** True where the search can rank it: the right number of finite objectives, or excesses none below 0 and some above. */
    boolean isSound(int expected) {
        if (!isFeasible()) {
            return (objectives.length == 0 || objectives.length == expected)
                    && violation > 0
                    && violation < Double.POSITIVE_INFINITY
                    && Arrays.stream(excesses).allMatch(excess -> excess >= 0);
        }
        return objectives.length == expected && areFinite(objectives);
    }

    private static boolean areFinite(double[] numbers) {
        boolean finite = true;
        for (double number : numbers) {
            finite &= Double.isFinite(number);
        }
        return finite;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Evaluation that
                && Arrays.equals(excesses, that.excesses)
                && Arrays.equals(objectives, that.objectives);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(excesses) + Arrays.hashCode(objectives);
    }

    @Override
    public String toString() {
        return isFeasible() ? Arrays.toString(objectives) : "infeasible by " + Arrays.toString(excesses);
    }
}
