package foamfront.optimizer.search;

import io.jenetics.DoubleGene;
import io.jenetics.Genotype;
import io.jenetics.Phenotype;

/** A member of a population as one row of numbers: generation of birth, whether it is evaluated, then its design. */
final class PhenotypeRow {
    private static final int HEAD = 2;

    /** Stands where a design is not evaluated yet. */
    private static final Evaluation NONE = Evaluation.infeasible(1);

    private PhenotypeRow() {}

    static double[] of(Phenotype<DoubleGene, Fitness> member) {
        UnitChromosome design = (UnitChromosome) member.genotype().chromosome();
        double[] fitness = FitnessRow.of(member.isEvaluated() ? member.fitness() : new Fitness(design, NONE));
        double[] row = new double[HEAD + fitness.length];
        row[0] = member.generation();
        row[1] = member.isEvaluated() ? 1 : 0;
        System.arraycopy(fitness, 0, row, HEAD, fitness.length);
        return row;
    }

    static Phenotype<DoubleGene, Fitness> read(double[] row, Schema schema) {
        Fitness fitness = FitnessRow.read(row, HEAD, schema);
        Phenotype<DoubleGene, Fitness> member = Phenotype.of(Genotype.of(fitness.design()), (long) row[0]);
        return row[1] == 1 ? member.withFitness(fitness) : member;
    }
}
