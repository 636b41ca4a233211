package foamfront.optimizer.search;

import foamfront.optimizer.search.Variable.Condition;
import java.util.List;
import java.util.stream.IntStream;

/** The problem's variables as arrays: decodes unit-box genes and knows which of them matter. */
final class Schema {
    private final Problem problem;
    private final int[] levels;
    private final int[] lowest;
    private final boolean[] unordered;
    /** Those that leave a choice. */
    private final int[] categories;

    private final Gate[][] gates;
    private final boolean conditional;

    Schema(Problem problem) {
        this.problem = problem;
        List<Variable> variables = problem.variables();
        levels = variables.stream().mapToInt(Variable::levels).toArray();
        lowest = variables.stream().mapToInt(Variable::lowest).toArray();
        conditional = variables.stream().anyMatch(variable -> !variable.when().isEmpty());
        gates = new Gate[levels.length][];
        unordered = new boolean[levels.length];
        for (int i = 0; i < levels.length; i++) {
            unordered[i] = variables.get(i).unordered();
            check(variables, i);
            gates[i] = variables.get(i).when().stream()
                    .map(condition -> new Gate(condition, levels[condition.variable()]))
                    .toArray(Gate[]::new);
        }
        categories = IntStream.range(0, levels.length)
                .filter(i -> unordered[i] && levels[i] > 1)
                .toArray();
    }

    private static void check(List<Variable> variables, int index) {
        for (Condition condition : variables.get(index).when()) {
            if (condition.variable() >= index
                    || !variables.get(condition.variable()).unordered()) {
                throw new IllegalArgumentException(variables.get(index).name() + " depends on variable "
                        + condition.variable() + ", which is no category before it");
            }
            int levels = variables.get(condition.variable()).levels();
            if (condition.values().stream().anyMatch(value -> value < 0 || value >= levels)) {
                throw new IllegalArgumentException(variables.get(index).name() + " depends on values "
                        + condition.values() + " of a category with " + levels);
            }
        }
    }

    int size() {
        return levels.length;
    }

    boolean isReal(int variable) {
        return levels[variable] == 0;
    }

    boolean isCategory(int variable) {
        return unordered[variable];
    }

    int levels(int variable) {
        return levels[variable];
    }

    /** The level (0 to levels - 1) that a gene of a whole-number variable stands for. */
    int level(int variable, double gene) {
        return Math.min(levels[variable] - 1, (int) (gene * levels[variable]));
    }

    /** The middle of the stretch of genes that stand for a level. */
    double gene(int variable, int level) {
        return (level + 0.5) / levels[variable];
    }

    /** Whether a variable matters at these genes. */
    boolean isActive(int variable, double[] genes) {
        for (Gate gate : gates[variable]) {
            int other = gate.variable;
            if (!gate.open[level(other, genes[other])] || !isActive(other, genes)) {
                return false;
            }
        }
        return true;
    }

    int activeCount(double[] genes) {
        int count = genes.length;
        for (int i = 0; conditional && i < genes.length; i++) {
            count -= isActive(i, genes) ? 0 : 1;
        }
        return count;
    }

    /** Active categories of more than one kind. */
    int activeCategories(double[] genes) {
        int count = categories.length;
        for (int k = 0; conditional && k < categories.length; k++) {
            count -= isActive(categories[k], genes) ? 0 : 1;
        }
        return count;
    }

    /**
     * A design from genes, which are taken over and tidied in place: clipped to [0, 1], whole-number variables moved to the
     * middle of their level.
     */
    UnitChromosome design(double[] genes, Operator origin) {
        double[] values = new double[genes.length];
        for (int i = 0; i < genes.length; i++) {
            double gene = Math.min(1, Math.max(0, genes[i]));
            if (levels[i] == 0) {
                values[i] = gene + 0.0; // turns -0.0 into 0.0
            } else {
                int level = level(i, gene);
                values[i] = lowest[i] + level;
                gene = gene(i, level);
            }
            genes[i] = gene;
        }
        for (int i = 0; conditional && i < genes.length; i++) {
            if (!isActive(i, genes)) {
                values[i] = lowest[i];
            }
        }
        double[] canonical = problem.canonical().apply(values);
        int niche = problem.niches().of().applyAsInt(canonical);
        return new UnitChromosome(
                genes, canonical, Math.min(niche, problem.niches().count() - 1), origin);
    }

    /** A condition as a table over the levels of its category. */
    private static final class Gate {
        final int variable;
        final boolean[] open;

        Gate(Condition condition, int levels) {
            variable = condition.variable();
            open = new boolean[levels];
            for (int value : condition.values()) {
                open[value] = true;
            }
        }
    }
}
