package foamfront.optimizer.search;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** What a design is worth: objectives to be minimised, and by how much it breaks its limits. */
public final class Evaluation {
    private static final double[] NONE = {};

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
     * A design that breaks a limit. Its objectives are never looked at.
     *
     * @param excesses over limits, each divided by its limit, summed by group of limits: designs that do better in some group
     *     than all others are kept while nothing is feasible; none below 0, their sum above 0, as many for every design
     */
    public static Evaluation infeasible(double... excesses) {
        return new Evaluation(NONE, excesses.clone());
    }

    /** {@link #infeasible} where the violation is above 0, otherwise {@link #feasible}. */
    public static Evaluation of(double violation, double... objectives) {
        return violation > 0 ? infeasible(violation) : feasible(objectives);
    }

    /** What {@link #numbers} gave, turned back. */
    static Evaluation of(boolean feasible, double[] numbers) {
        return feasible ? new Evaluation(numbers, NONE) : new Evaluation(NONE, numbers);
    }

    /** All there is to it: the objectives of a feasible design, the excesses of another. */
    double[] numbers() {
        return isFeasible() ? objectives : excesses;
    }

    public boolean isFeasible() {
        return excesses.length == 0;
    }

    /** 0 for a feasible design, otherwise the normalised sum of excesses. */
    public double violation() {
        return violation;
    }

    /** The objective of this index; only a feasible design has any. */
    public double objective(int index) {
        return objectives[index];
    }

    /** A copy of the objectives; empty for an infeasible design. */
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
            return violation > 0
                    && violation < Double.POSITIVE_INFINITY
                    && Arrays.stream(excesses).allMatch(excess -> excess >= 0);
        }
        boolean sound = objectives.length == expected;
        for (double objective : objectives) {
            sound &= Double.isFinite(objective);
        }
        return sound;
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
