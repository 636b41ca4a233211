package foamfront.optimizer.search;

import io.jenetics.Alterer;
import io.jenetics.AltererResult;
import io.jenetics.DoubleGene;
import io.jenetics.Genotype;
import io.jenetics.Phenotype;
import io.jenetics.util.ISeq;
import io.jenetics.util.RandomRegistry;
import io.jenetics.util.Seq;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Makes the children of one generation from its selected parents: crossover in pairs or differential variation, by share,
 * then mutation. A child that repeats a known design is mutated again, so that the budget buys new designs.
 */
final class Variation implements Alterer<DoubleGene, Fitness> {
    /** Chance that a pair is crossed at all; common practice. */
    private static final double CROSSED = 0.9;

    /** Attempts to turn a repeat into a new design before it is let through. */
    private static final int ATTEMPTS = 4;

    private final Schema schema;
    private final BoundedCrossover crossover;
    private final DifferentialVariation differential;
    private final Mutation mutation;
    private final OperatorShares shares;
    private final KnownDesigns known;

    Variation(Schema schema, OperatorShares shares, KnownDesigns known) {
        this.schema = schema;
        this.crossover = new BoundedCrossover(schema);
        this.differential = new DifferentialVariation(schema);
        this.mutation = new Mutation(schema);
        this.shares = shares;
        this.known = known;
    }

    @Override
    public AltererResult<DoubleGene, Fitness> alter(Seq<Phenotype<DoubleGene, Fitness>> parents, long generation) {
        RandomGenerator random = RandomRegistry.random();
        List<Phenotype<DoubleGene, Fitness>> children = new ArrayList<>(parents.size());
        for (int i = 0; i < parents.size(); i += 2) {
            double[] first = genesOf(parents, i).clone();
            double[] second = genesOf(parents, (i + 1) % parents.size()).clone();
            Operator operator = Operator.CROSSOVER;
            if (random.nextDouble() < shares.differential()) {
                operator = Operator.DIFFERENTIAL;
                differ(first, parents, random);
                differ(second, parents, random);
            } else if (random.nextDouble() < CROSSED) {
                crossover.cross(first, second, random);
            }
            children.add(child(first, operator, generation, random));
            if (children.size() < parents.size()) {
                children.add(child(second, operator, generation, random));
            }
        }
        return new AltererResult<>(ISeq.of(children), children.size());
    }

    private void differ(double[] target, Seq<Phenotype<DoubleGene, Fitness>> parents, RandomGenerator random) {
        int n = parents.size();
        differential.vary(
                target,
                genesOf(parents, random.nextInt(n)),
                genesOf(parents, random.nextInt(n)),
                genesOf(parents, random.nextInt(n)),
                random);
    }

    private Phenotype<DoubleGene, Fitness> child(
            double[] genes, Operator operator, long generation, RandomGenerator random) {
        mutation.mutate(genes, random);
        UnitChromosome design = schema.design(genes, operator);
        for (int k = 0; k < ATTEMPTS && known.contains(design); k++) {
            double[] again = design.genes().clone();
            mutation.mutateOne(again, random);
            design = schema.design(again, operator);
        }
        return Phenotype.of(Genotype.of(design), generation);
    }

    private static double[] genesOf(Seq<Phenotype<DoubleGene, Fitness>> parents, int index) {
        return parents.get(index).fitness().design().genes();
    }
}
