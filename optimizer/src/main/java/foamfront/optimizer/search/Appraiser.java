package foamfront.optimizer.search;

import io.jenetics.DoubleGene;
import io.jenetics.Phenotype;
import io.jenetics.util.ISeq;
import io.jenetics.util.MSeq;
import io.jenetics.util.Seq;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
        Map<UnitChromosome, Integer> places = new HashMap<>(); // never iterated
        UnitChromosome[] fresh = new UnitChromosome[population.size()];
        int count = 0;
        for (Phenotype<DoubleGene, Fitness> member : population) {
            if (!member.isEvaluated()) {
                UnitChromosome design = design(member);
                // Beyond the budget a child is left unjudged.
                boolean isNew = evaluations + count < budget && known.find(design) == null;
                if (isNew && places.putIfAbsent(design, count) == null) {
                    fresh[count++] = design;
                }
            }
        }
        Evaluation[] scores = evaluate(fresh, count);
        MSeq<Phenotype<DoubleGene, Fitness>> result = MSeq.ofLength(population.size());
        for (int i = 0; i < population.size(); i++) {
            Phenotype<DoubleGene, Fitness> member = population.get(i);
            result.set(i, member.isEvaluated() ? member : judged(member, places.get(design(member)), scores));
        }
        for (int k = 0; k < count; k++) {
            note(new Fitness(fresh[k], scores[k]));
        }
        return result.toISeq();
    }

    private static UnitChromosome design(Phenotype<DoubleGene, Fitness> member) {
        return (UnitChromosome) member.genotype().chromosome();
    }

    private Phenotype<DoubleGene, Fitness> judged(
            Phenotype<DoubleGene, Fitness> member, @Nullable Integer place, Evaluation[] scores) {
        UnitChromosome design = design(member);
        Evaluation old = place == null ? known.find(design) : scores[place];
        return member.withFitness(new Fitness(design, old == null ? BROKEN : old));
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

    /** The counts and the faults; archive, known designs and shares are exchanged by their owner. */
    void exchange(Tape tape) {
        evaluations = tape.whole("evaluations", evaluations);
        feasible = tape.whole("feasible", feasible);
        faultCount = tape.whole("faults", faultCount);
        List<double[]> values = tape.rows(
                "broken", faults.stream().map(fault -> unboxed(fault.values())).toList());
        List<String> messages =
                tape.texts("messages", faults.stream().map(Fault::message).toList());
        faults.clear();
        for (int k = 0; k < values.size(); k++) {
            faults.add(new Fault(Arrays.stream(values.get(k)).boxed().toList(), messages.get(k)));
        }
    }

    private static double[] unboxed(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Judges a design again and compares. Those at which the evaluator broke down are left alone. */
    void check(Fitness then) {
        if (then.violation() == BROKEN.violation()) {
            return;
        }
        Evaluation now = workers.first().evaluate(then.design().values());
        if (!now.equals(then.evaluation())) {
            throw new ChangedProblem(then.evaluation(), now);
        }
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
