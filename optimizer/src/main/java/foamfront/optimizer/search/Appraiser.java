package foamfront.optimizer.search;

import io.jenetics.DoubleGene;
import io.jenetics.Phenotype;
import io.jenetics.util.ISeq;
import io.jenetics.util.MSeq;
import io.jenetics.util.Seq;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Evaluates the new designs of a generation: repeats from the table of known designs, the others by the problem's evaluators
 * on this island's workers, collected by index. All that follows (counting, archive, operator shares) runs through the
 * designs in order. The one place in the search that catches a broken evaluator.
 */
final class Appraiser implements io.jenetics.engine.Evaluator<DoubleGene, Fitness> {
    /** Faulty designs remembered with their values. */
    static final int FAULTS_KEPT = 100;

    /** Worse than any true violation, but a number. */
    static final Evaluation BROKEN = Evaluation.infeasible(Double.MAX_VALUE);

    private final Problem problem;
    private final long budget;
    private final Archive archive;
    private final KnownDesigns known;
    private final OperatorShares shares;
    private final Workers workers;
    private final List<Fault> faults = new ArrayList<>();

    private long evaluations;
    private long feasible;
    private long faultCount;

    Appraiser(
            Problem problem, long budget, Archive archive, KnownDesigns known, OperatorShares shares, Workers workers) {
        this.problem = problem;
        this.budget = budget;
        this.archive = archive;
        this.known = known;
        this.shares = shares;
        this.workers = workers;
    }

    @Override
    public ISeq<Phenotype<DoubleGene, Fitness>> eval(Seq<Phenotype<DoubleGene, Fitness>> population) {
        int n = population.size();
        UnitChromosome[] fresh = new UnitChromosome[n];
        int[] places = new int[n];
        int count = 0;
        MSeq<Phenotype<DoubleGene, Fitness>> result = MSeq.ofLength(n);
        for (int i = 0; i < n; i++) {
            Phenotype<DoubleGene, Fitness> member = population.get(i);
            result.set(i, member);
            if (!member.isEvaluated()) {
                UnitChromosome design = (UnitChromosome) member.genotype().chromosome();
                Evaluation old = known.find(design);
                if (old == null && evaluations + count < budget) {
                    places[count] = i;
                    fresh[count++] = design;
                } else {
                    // Beyond the budget a child is left unjudged, behind all others.
                    result.set(i, member.withFitness(new Fitness(design, old == null ? BROKEN : old)));
                }
            }
        }
        Evaluation[] scores = evaluate(fresh, count);
        for (int k = 0; k < count; k++) {
            Fitness fitness = new Fitness(fresh[k], scores[k]);
            note(fitness);
            result.set(places[k], population.get(places[k]).withFitness(fitness));
        }
        return result.toISeq();
    }

    private Evaluation[] evaluate(UnitChromosome[] fresh, int count) {
        Evaluation[] scores = new Evaluation[count];
        @Nullable String[] broken = new @Nullable String[count];
        workers.forEach(count, (index, evaluator) -> guard(fresh[index], evaluator, index, scores, broken));
        for (int k = 0; k < count; k++) {
            String message = broken[k];
            if (message != null) {
                faultCount++;
                if (faults.size() < FAULTS_KEPT) {
                    faults.add(
                            new Fault(Arrays.stream(fresh[k].values()).boxed().toList(), message));
                }
            }
        }
        return scores;
    }

    /** Style: a NaN or an exception out of an evaluator is a bug to be reported, but a long run goes on without the design. */
    private void guard(
            UnitChromosome design, Evaluator evaluator, int index, Evaluation[] scores, @Nullable String[] broken) {
        scores[index] = BROKEN;
        try {
            Evaluation score = evaluator.evaluate(design.values());
            if (score.isSound(problem.objectives())) {
                scores[index] = score;
            } else {
                broken[index] = "score " + score + " for " + problem.objectives() + " finite objectives";
            }
        } catch (RuntimeException fault) {
            broken[index] = fault.toString();
        }
    }

    private void note(Fitness fitness) {
        evaluations++;
        if (fitness.isFeasible()) {
            feasible++;
        }
        boolean entered = fitness.violation() < BROKEN.violation() && archive.offer(fitness);
        shares.count(fitness.design().origin(), entered);
        known.add(fitness);
    }

    long evaluations() {
        return evaluations;
    }

    boolean isExhausted() {
        return evaluations >= budget;
    }

    long feasible() {
        return feasible;
    }

    long faultCount() {
        return faultCount;
    }

    List<Fault> faults() {
        return faults;
    }
}
