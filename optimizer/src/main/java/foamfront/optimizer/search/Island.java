package foamfront.optimizer.search;

import io.jenetics.DoubleGene;
import io.jenetics.Genotype;
import io.jenetics.Phenotype;
import io.jenetics.engine.Engine;
import io.jenetics.engine.EvolutionResult;
import io.jenetics.engine.EvolutionStart;
import io.jenetics.util.Factory;
import io.jenetics.util.ISeq;
import io.jenetics.util.RandomRegistry;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * One population with its own engine, archive and share of the budget. Between generations its whole state is the number of
 * the generation, the population, the operator shares, the archive and the table of known designs.
 */
final class Island {
    /** Rows of the table of known designs: some generations of a large population, about 3 MB with thirty variables. */
    private static final int KNOWN_ROWS = 1 << 11;

    /** Generations without one new design after which the island holds its space to be exhausted (judgement). */
    private static final int IDLE_LIMIT = 100;

    /** Designs recalled for each place of a niche that died out, so that some lie near the joint front (judgement). */
    private static final int RECALLED = 4;

    /** Designs of a resumed population that are judged again: they take a millisecond. */
    private static final int CHECKED = 32;

    private final Settings settings;
    private final int index;
    private final long budget;
    private final Archive archive;
    private final KnownDesigns known;
    private final Appraiser appraiser;
    private final Schema schema;
    private final NichePlaces places;
    private final OperatorShares shares = new OperatorShares();
    private final Engine<DoubleGene, Fitness> engine;

    private ISeq<Phenotype<DoubleGene, Fitness>> population;
    private long generation = 1;
    private int idle;

    Island(Problem problem, Schema schema, Settings settings, int index, Workers workers) {
        this.settings = settings;
        this.index = index;
        this.schema = schema;
        int survivors = settings.islandPopulation();
        budget = settings.islandBudget(index);
        archive = new Archive(problem, settings.archiveCap());
        known = new KnownDesigns(KNOWN_ROWS, schema.size());
        appraiser = new Appraiser(problem, budget, archive, known, shares, workers);
        places = new NichePlaces(problem.niches().count(), survivors);
        population = new FirstGeneration(problem, schema, index, settings.islands())
                .draw(survivors, Generators.of(settings.seed(), index, 0)).stream()
                        .map(design -> Phenotype.<DoubleGene, Fitness>of(Genotype.of(design), 0))
                        .collect(ISeq.toISeq());
        Survival survival = new Survival(survivors, places, problem.interest(), problem.resolution());
        Factory<Genotype<DoubleGene>> genotypes =
                () -> population.get(0).genotype(); // never asked: every design is valid
        engine = new Engine.Builder<>(appraiser, genotypes)
                .populationSize(2 * survivors)
                .offspringFraction(0.5)
                .survivorsSelector(survival.survivorSelector())
                .offspringSelector(survival.parentSelector())
                .alterers(new Variation(schema, shares, known))
                .maximalPhenotypeAge(Long.MAX_VALUE)
                .executor(Runnable::run)
                .build();
    }

    /** Goes on until a generation is reached, the budget is spent or somebody wants to stop. */
    void advance(long until, BooleanSupplier stop) {
        while (!hasReached(until) && !isToStop(stop)) {
            long before = appraiser.evaluations();
            places.prepare(generation, (double) appraiser.evaluations() / budget);
            recallNiches();
            EvolutionStart<DoubleGene, Fitness> start = EvolutionStart.of(population, generation);
            EvolutionResult<DoubleGene, Fitness> result = RandomRegistry.with(
                    Generators.of(settings.seed(), index, generation), random -> engine.evolve(start));
            population = result.population();
            generation++;
            shares.renew();
            idle = appraiser.evaluations() == before ? idle + 1 : 0;
        }
    }

    boolean hasReached(long until) {
        return generation >= until || isFinished();
    }

    /** Interrupted only when the whole search is being closed after a failure elsewhere. */
    private static boolean isToStop(BooleanSupplier stop) {
        return stop.getAsBoolean() || Thread.currentThread().isInterrupted();
    }

    boolean isFinished() {
        return appraiser.isExhausted() || idle >= IDLE_LIMIT;
    }

    /** A niche whose turn it is but that has died out comes back from its archived front. */
    private void recallNiches() {
        if (!places.areOpen()) {
            return;
        }
        List<Fitness> recalled = new ArrayList<>();
        for (int niche : places.turn()) {
            if (population.forAll(
                    member -> !member.isEvaluated() || member.fitness().design().niche() != niche)) {
                recalled.addAll(spread(archive.revivable(niche), RECALLED * places.perNiche()));
            }
        }
        append(recalled);
    }

    /** Takes in designs from another island. */
    void receive(List<Fitness> migrants) {
        migrants.forEach(archive::offer);
        append(migrants);
    }

    /** Designs to send to another island: drawn along the front, or the nearest to feasible while there is none. */
    List<Fitness> emigrants(int count) {
        List<Fitness> front = archive.front();
        return front.isEmpty() ? archive.nearest().stream().limit(count).toList() : spread(front, count);
    }

    /** One from each of as many equal stretches of a sorted front, at the same random place in each. */
    private List<Fitness> spread(List<Fitness> front, int count) {
        int taken = Math.min(count, front.size());
        double offset = Generators.of(settings.seed(), ~index, generation).nextDouble();
        List<Fitness> result = new ArrayList<>(taken);
        for (int k = 0; k < taken; k++) {
            result.add(front.get((int) ((k + offset) * front.size() / taken)));
        }
        return result;
    }

    private void append(List<Fitness> added) {
        if (!added.isEmpty()) {
            population = population.append(added.stream()
                    .map(fitness -> Phenotype.<DoubleGene, Fitness>of(Genotype.of(fitness.design()), generation)
                            .withFitness(fitness))
                    .collect(ISeq.toISeq()));
        }
    }

    /** All that the coming generations depend on. */
    void exchange(Tape tape) {
        generation = tape.whole("generation", generation);
        idle = (int) tape.whole("idle", idle);
        appraiser.exchange(tape);
        shares.exchange(tape);
        archive.exchange(tape);
        known.exchange(tape);
        population = tape.rows("population", population.map(PhenotypeRow::of).asList()).stream()
                .map(row -> PhenotypeRow.read(row, schema))
                .collect(ISeq.toISeq());
    }

    /**
     * Judges some of a resumed population again: another answer than then means that the evaluator has changed.
     *
     * @throws ChangedProblem in that case
     */
    void checkProblem() {
        population.stream()
                .filter(Phenotype::isEvaluated)
                .map(Phenotype::fitness)
                .limit(CHECKED)
                .forEach(appraiser::check);
    }

    /** The feasible designs of the population. */
    List<Fitness> feasible() {
        return population.stream()
                .filter(Phenotype::isEvaluated)
                .map(Phenotype::fitness)
                .filter(Fitness::isFeasible)
                .toList();
    }

    Archive archive() {
        return archive;
    }

    Appraiser appraiser() {
        return appraiser;
    }
}
