package foamfront.optimizer.explore;

import foamfront.model.mission.Mission;
import foamfront.optimizer.genome.Genome;
import foamfront.optimizer.search.Variable;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.LongSupplier;

/** How long one design takes, from a few random ones. */
public final class Timing {
    private static final int DESIGNS = 2000;
    private static final int WARM_UP = 2000;

    /** Random designs fail early; those of a search go on through every stage (judgement). */
    private static final double SEARCHED_OVER_RANDOM = 2;

    private static final double NANO = 1e-9;

    private Timing() {}

    /**
     * Seconds for one design of a search on one thread.
     *
     * @param clock nanoseconds
     */
    public static double perDesign(Genome genome, Mission mission, LongSupplier clock) {
        DesignEvaluator evaluator = new DesignEvaluator(genome, mission, List.of());
        SplittableRandom random = new SplittableRandom(1);
        long start = 0;
        for (int i = -WARM_UP; i < DESIGNS; i++) {
            if (i == 0) {
                start = clock.getAsLong();
            }
            evaluator.evaluate(genome.canonical(values(genome, random)));
        }
        return SEARCHED_OVER_RANDOM * NANO * (clock.getAsLong() - start) / DESIGNS;
    }

    private static double[] values(Genome genome, SplittableRandom random) {
        List<Variable> variables = genome.variables();
        double[] values = new double[variables.size()];
        for (int i = 0; i < values.length; i++) {
            int levels = variables.get(i).levels();
            values[i] = levels == 0 ? random.nextDouble() : variables.get(i).lowest() + random.nextInt(levels);
        }
        return values;
    }
}
