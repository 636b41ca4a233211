package foamfront.optimizer.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moeaframework.core.Solution;
import org.moeaframework.core.indicator.WFGHypervolume;
import org.moeaframework.core.population.NondominatedPopulation;
import org.moeaframework.problem.AbstractProblem;

/** Against the hypervolume of the MOEA Framework 5.0 (its WFG implementation) on random sets. */
class HypervolumeExternalTest {
    /** Two exact sums in different order. */
    private static final double SUMMATION = 1e-10;

    @ParameterizedTest(name = "{0} points, {1} objectives")
    @CsvSource({"50,2,1", "200,2,2", "50,3,3", "200,3,4", "40,4,5", "40,5,6"})
    void agrees(int n, int objectives, long seed) {
        double[][] points = FrontLawsTest.points(n, objectives, seed, 1000);
        double[] reference = new double[objectives];
        Arrays.fill(reference, 1000);
        NondominatedPopulation population = new NondominatedPopulation();
        for (double[] point : points) {
            Solution solution = new Solution(0, objectives);
            for (int i = 0; i < objectives; i++) {
                solution.setObjectiveValue(i, point[i]);
            }
            population.add(solution);
        }
        double theirs = new WFGHypervolume(new Unasked(objectives), reference).evaluate(population);
        double ours = Hypervolume.of(points, reference);
        assertThat(ours / theirs).isCloseTo(1, within(SUMMATION));
    }

    /** A problem of which only the number of objectives is used. */
    private static final class Unasked extends AbstractProblem {
        Unasked(int objectives) {
            super(0, objectives);
        }

        @Override
        public void evaluate(Solution solution) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Solution newSolution() {
            return new Solution(0, numberOfObjectives);
        }
    }
}
