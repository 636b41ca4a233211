package foamfront.optimizer.search;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** What a design is worth: objectives to be minimised, and by how much it breaks its limits. */
public final class Evaluation {
    private final double[] objectives;
    private final double violation;

    private Evaluation(double[] objectives, double violation) {
        this.objectives = objectives;
        this.violation = violation;
    }

    /**
     * A design that keeps all limits.
     *
     * @param objectives minimised, as many as the problem declares
     */
    public static Evaluation feasible(double... objectives) {
        return new Evaluation(objectives.clone(), 0);
    }

    /**
     * A design that breaks a limit. Its objectives are never looked at.
     *
     * @param violation above 0: the sum of the excesses over limits, each divided by its limit
     */
    public static Evaluation infeasible(double violation) {
        return new Evaluation(new double[0], violation);
    }

    /** {@link #infeasible} where the violation is above 0, otherwise {@link #feasible}. */
    public static Evaluation of(double violation, double... objectives) {
        return violation > 0 ? infeasible(violation) : feasible(objectives);
    }

    public boolean isFeasible() {
        return violation == 0;
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

    /** True where the search can rank it: the right number of finite objectives, or a violation above 0. */
    boolean isSound(int expected) {
        if (!isFeasible()) {
            return violation > 0 && violation < Double.POSITIVE_INFINITY;
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
                && Double.compare(violation, that.violation) == 0
                && Arrays.equals(objectives, that.objectives);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(violation) + Arrays.hashCode(objectives);
    }

    @Override
    public String toString() {
        return isFeasible() ? Arrays.toString(objectives) : "infeasible by " + violation;
    }
}
