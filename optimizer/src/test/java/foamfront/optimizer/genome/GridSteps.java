package foamfront.optimizer.genome;

import foamfront.model.design.DesignVariable;
import foamfront.optimizer.search.Variable;
import java.util.stream.IntStream;

/** How many values each variable of a genome can take once it is snapped. */
public final class GridSteps {
    private GridSteps() {}

    public static int[] of(Genome genome) {
        return genome.variables().stream()
                .mapToInt(variable -> variable.levels() > 0
                        ? variable.levels()
                        : grid(genome, variable).count())
                .toArray();
    }

    private static Grid grid(Genome genome, Variable variable) {
        for (DesignVariable dimension : Genome.DIMENSIONS) {
            Grid grid = genome.dimensions.grid(dimension);
            if (grid != null && dimension.words().equals(variable.name())) {
                return grid;
            }
        }
        return IntStream.range(0, genome.masses.size())
                .filter(i -> variable.name()
                        .equals("mass of " + genome.study.payload().get(i).name()))
                .mapToObj(genome.masses::get)
                .findFirst()
                .orElseThrow();
    }
}
