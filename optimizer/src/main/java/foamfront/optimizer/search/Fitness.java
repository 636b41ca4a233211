package foamfront.optimizer.search;

import java.util.Arrays;

/**
 * A design with its evaluation: what the engine calls fitness.
 *
 * <p>The order is only for the engine's own statistics; survival does not use it.
 */
record Fitness(UnitChromosome design, Evaluation evaluation) implements Comparable<Fitness> {
    boolean isFeasible() {
        return evaluation.isFeasible();
    }

    double violation() {
        return evaluation.violation();
    }

    double[] objectives() {
        return evaluation.shared();
    }

    @Override
    public int compareTo(Fitness other) {
        int byViolation = Double.compare(violation(), other.violation());
        return byViolation != 0 || !isFeasible() ? byViolation : Arrays.compare(objectives(), other.objectives());
    }
}
