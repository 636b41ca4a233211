package foamfront.optimizer.explore;

import foamfront.model.appraisal.Appraiser;
import foamfront.model.appraisal.Score;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Mission;
import foamfront.optimizer.front.Costs;
import foamfront.optimizer.genome.Genome;
import foamfront.optimizer.search.Evaluation;
import foamfront.optimizer.search.Evaluator;
import foamfront.optimizer.study.Aim;
import java.util.List;

/** Scores designs for the search; one per worker, as its appraiser owns scratch arrays. */
final class DesignEvaluator implements Evaluator {
    /**
     * A design that cannot have what is aimed at (no take-off roll without wheels) is no answer, as if it missed a
     * limit by all.
     */
    private static final double LACKS_AN_AIM = 1;

    private final Genome genome;
    private final Mission mission;
    private final List<Aim> aims;
    private final Appraiser appraiser;

    DesignEvaluator(Genome genome, Mission mission, List<Aim> aims) {
        this.genome = genome;
        this.mission = mission;
        this.aims = aims;
        this.appraiser = new Appraiser(aims.stream().map(Aim::measure).toList());
    }

    @Override
    public Evaluation evaluate(double[] values) {
        Score score = appraiser.score(genome.decode(values), mission, Factors.NOMINAL);
        double[] costs = new double[aims.size()];
        for (int i = 0; i < costs.length; i++) {
            if (Double.isNaN(score.value(i))) {
                return Evaluation.infeasible(score.feasible() ? lacking(score) : score.excesses());
            }
            costs[i] = Costs.of(aims.get(i), score.value(i));
        }
        return score.feasible() ? Evaluation.feasible(costs) : Evaluation.infeasible(costs, score.excesses());
    }

    private static double[] lacking(Score score) {
        double[] excesses = score.excesses();
        excesses[excesses.length - 1] = LACKS_AN_AIM;
        return excesses;
    }
}
