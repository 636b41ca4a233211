package foamfront.optimizer.explore;

import foamfront.model.appraisal.Appraisal;
import foamfront.model.appraisal.Appraiser;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Mission;
import foamfront.model.parts.Workshop;
import foamfront.optimizer.front.Row;
import foamfront.optimizer.genome.Genome;
import foamfront.optimizer.search.Evaluator;
import foamfront.optimizer.search.Interest;
import foamfront.optimizer.search.Problem;
import foamfront.optimizer.study.Study;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A study made ready to search.
 *
 * @param study what is asked
 * @param genome its variables
 * @param evaluators scores designs, one for each worker
 * @param row computes one design in full
 * @param interest where the search looks first; the report goes by the study's own region
 */
public record Task(
        Study study,
        Genome genome,
        Supplier<? extends Evaluator> evaluators,
        Function<Design, Row> row,
        Interest interest) {
    /** The study with the model's own appraisal. */
    public static Task of(Study study, Workshop workshop) {
        return of(study, study.mission(workshop));
    }

    /** The study under another mission than its own. */
    static Task of(Study study, Mission mission) {
        Genome genome = new Genome(study);
        Appraiser appraiser = new Appraiser(List.of());
        Function<Design, Row> row = design -> {
            Appraisal appraisal = appraiser.appraise(design, mission, Factors.NOMINAL);
            return new Row(design, appraisal.measures(), appraisal.limits(), appraisal.caveats());
        };
        return new Task(study, genome, () -> new DesignEvaluator(genome, mission, study.aims()), row, Region.of(study));
    }

    /** The same search with another region in its report. */
    public Task reporting(List<Bound> region) {
        return new Task(study.preferring(region), genome, evaluators, row, interest);
    }

    /**
     * The search problem.
     *
     * @param starts designs to begin with
     */
    Problem problem(List<Design> starts) {
        return new Problem(
                genome.variables(),
                study.aims().stream()
                        .map(aim -> Resolution.of(aim.measure(), study))
                        .toList(),
                evaluators,
                new Problem.Niches(genome.niches(), genome::niche),
                genome::canonical,
                starts.stream()
                        .map(design -> genome.genes(genome.encode(design)))
                        .toList(),
                interest);
    }
}
