package foamfront.optimizer.search;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * The designs an island begins with: the problem's starts, a Latin hypercube, and for each niche that these miss one random
 * design if one is found. Niches and starts are dealt to the islands in turn.
 */
final class FirstGeneration {
    /** Random draws spent on each niche that the hypercube misses (judgement). */
    private static final int DRAWS_PER_NICHE = 200;

    private final Problem problem;
    private final Schema schema;
    private final int island;
    private final int islands;
    private final boolean[] met;

    FirstGeneration(Problem problem, Schema schema, int island, int islands) {
        this.problem = problem;
        this.schema = schema;
        this.island = island;
        this.islands = islands;
        this.met = new boolean[problem.niches().count()];
    }

    List<UnitChromosome> draw(int population, RandomGenerator random) {
        List<UnitChromosome> designs = new ArrayList<>();
        for (int k = island; k < problem.starts().size(); k += islands) {
            add(designs, schema.design(problem.starts().get(k).clone(), Operator.START));
        }
        int points = Math.max(population / 2, population - designs.size());
        for (double[] point : LatinHypercube.draw(points, schema.size(), random)) {
            add(designs, schema.design(point, Operator.START));
        }
        int missing = missing();
        for (int draw = 0; draw < DRAWS_PER_NICHE * met.length && missing > 0; draw++) {
            UnitChromosome design = schema.design(random.doubles(schema.size()).toArray(), Operator.START);
            if (isMissing(design.niche())) {
                add(designs, design);
                missing--;
            }
        }
        return designs;
    }

    private void add(List<UnitChromosome> designs, UnitChromosome design) {
        designs.add(design);
        if (design.niche() >= 0) {
            met[design.niche()] = true;
        }
    }

    private int missing() {
        int count = 0;
        for (int niche = 0; niche < met.length; niche++) {
            count += isMissing(niche) ? 1 : 0;
        }
        return count;
    }

    private boolean isMissing(int niche) {
        return niche >= 0 && niche % islands == island && !met[niche];
    }
}
