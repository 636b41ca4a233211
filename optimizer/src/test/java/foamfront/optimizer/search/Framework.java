package foamfront.optimizer.search;

import java.util.List;
import org.moeaframework.algorithm.Algorithm;
import org.moeaframework.core.PRNG;
import org.moeaframework.core.Solution;
import org.moeaframework.core.TypedProperties;
import org.moeaframework.core.constraint.LessThanOrEqual;
import org.moeaframework.core.population.NondominatedPopulation;
import org.moeaframework.core.spi.AlgorithmFactory;
import org.moeaframework.core.variable.BinaryIntegerVariable;
import org.moeaframework.core.variable.RealVariable;
import org.moeaframework.problem.AbstractProblem;

/**
 * Runs the MOEA Framework's algorithms, at their defaults and 100 members, on our problems. Categories are its binary integers
 * where the algorithm can vary them; everything else, and for MOEA/D and GDE3 categories too, is a real that our own schema
 * decodes.
 */
final class Framework {
    static final List<String> ALGORITHMS =
            List.of("NSGAII", "NSGAIII", "eMOEA", "eNSGAII", "MOEAD", "AGE-MOEA-II", "GDE3");

    /** Of a design whose objectives are unknown, being infeasible; limits are compared first. */
    private static final double UNKNOWN = 1e6;

    private Framework() {}

    static double[][] run(String algorithm, Problem problem, long budget, long seed) {
        PRNG.setSeed(seed);
        boolean real = algorithm.equals("MOEAD") || algorithm.equals("GDE3");
        TypedProperties settings = new TypedProperties();
        settings.setInt("populationSize", 100);
        settings.setInt("maxEvaluations", Math.toIntExact(budget));
        Adapted adapted = new Adapted(problem, !real);
        if (adapted.mixed) {
            settings.setString("operator", "sbx+hux+pm+bf");
        }
        if (algorithm.startsWith("e")) {
            settings.setDoubleArray(
                    "epsilon",
                    problem.resolution().stream()
                            .mapToDouble(Double::doubleValue)
                            .toArray());
        }
        Algorithm running = AlgorithmFactory.getInstance().getAlgorithm(algorithm, settings, adapted);
        try {
            while (adapted.evaluations < budget && !running.isTerminated()) {
                running.step();
            }
            return front(running.getResult());
        } finally {
            running.terminate();
        }
    }

    private static double[][] front(NondominatedPopulation result) {
        NondominatedPopulation feasible = new NondominatedPopulation();
        for (Solution solution : result) {
            if (solution.isFeasible()) {
                feasible.add(solution);
            }
        }
        double[][] front = new double[feasible.size()][];
        for (int k = 0; k < front.length; k++) {
            front[k] = feasible.get(k).getObjectiveValues();
        }
        return front;
    }

    /** Our problem in their terms. */
    private static final class Adapted extends AbstractProblem {
        private final Problem problem;
        private final Schema schema;
        private final Evaluator evaluator;
        private final boolean[] binary;
        final boolean mixed;
        long evaluations;

        Adapted(Problem problem, boolean binaryCategories) {
            super(problem.variables().size(), problem.objectives(), 1);
            this.problem = problem;
            schema = new Schema(problem);
            evaluator = problem.evaluators().get();
            binary = new boolean[schema.size()];
            boolean any = false;
            for (int i = 0; i < binary.length; i++) {
                binary[i] = binaryCategories && schema.isCategory(i);
                any |= binary[i];
            }
            mixed = any;
        }

        @Override
        public void evaluate(Solution solution) {
            evaluations++;
            double[] genes = new double[schema.size()];
            for (int i = 0; i < genes.length; i++) {
                genes[i] = binary[i]
                        ? schema.gene(i, BinaryIntegerVariable.getInt(solution.getVariable(i)))
                        : RealVariable.getReal(solution.getVariable(i));
            }
            Evaluation evaluation =
                    evaluator.evaluate(schema.design(genes, Operator.START).values());
            double[] objectives = evaluation.objectives();
            for (int i = 0; i < problem.objectives(); i++) {
                solution.setObjectiveValue(i, i < objectives.length ? objectives[i] : UNKNOWN);
            }
            solution.setConstraintValue(0, evaluation.violation());
        }

        @Override
        public Solution newSolution() {
            Solution solution = new Solution(schema.size(), problem.objectives(), 1);
            for (int i = 0; i < schema.size(); i++) {
                solution.setVariable(
                        i, binary[i] ? new BinaryIntegerVariable(0, schema.levels(i) - 1) : new RealVariable(0, 1));
            }
            solution.setConstraint(0, LessThanOrEqual.to(0));
            return solution;
        }
    }
}
