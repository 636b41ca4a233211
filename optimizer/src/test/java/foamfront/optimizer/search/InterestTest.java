package foamfront.optimizer.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InterestTest {
    private static final double NONE = Double.NEGATIVE_INFINITY;
    private static final double ANY = Double.POSITIVE_INFINITY;

    /** A tenth of the front of ZDT1, f2 = 1 - sqrt(f1): f1 from 0.4 to 0.5. */
    private static final Interest TENTH = new Interest(List.of(0.4, NONE), List.of(0.5, ANY));

    private static Outcome run(Interest interest, long seed) {
        Problem plain = Benchmark.zdt1().problem();
        Problem problem = new Problem(
                plain.variables(),
                plain.resolution(),
                plain.evaluators(),
                Problem.Niches.ONE,
                UnaryOperator.identity(),
                List.of(),
                interest);
        return Search.run(problem, new Settings(5000, seed, 1, 60, 1000), Listener.NONE, () -> false);
    }

    /** Share of the region's exact dominated volume, the integral of sqrt(f1) - sqrt(0.4), that a front misses. */
    private static double missed(Outcome outcome) {
        double exact = 2.0 / 3 * (0.5 * Math.sqrt(0.5) - 0.4 * Math.sqrt(0.4)) - 0.1 * Math.sqrt(0.4);
        double[][] inside = outcome.front().stream()
                .map(member -> member.evaluation().objectives())
                .filter(f -> f[0] >= 0.4 && f[0] <= 0.5)
                .toArray(double[][]::new);
        return 1 - Hypervolume.of(inside, new double[] {0.5, 1 - Math.sqrt(0.4)}) / exact;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aSmallBudgetMissesLessInsideThanWithoutInterest(long seed) {
        assertThat(missed(run(TENTH, seed))).isLessThan(0.9 * missed(run(Interest.ALL, seed)));
    }

    @Test
    void whatLiesOutsideStaysFeasibleAndInTheArchive() {
        Outcome outcome = run(TENTH, 1);
        assertThat(outcome.feasible()).isEqualTo(outcome.evaluations());
        assertThat(outcome.front())
                .anyMatch(member -> member.evaluation().objective(0) < 0.4)
                .anyMatch(member -> member.evaluation().objective(0) > 0.5);
    }

    /** Below the front nothing can lie: the search then ends beside it. */
    @Test
    void aRegionThatNothingReachesDrawsTheSearchToItsEdge() {
        Outcome outcome = run(new Interest(List.of(NONE, NONE), List.of(0.25, 0.25)), 1);
        // Nearest in the sum of the two shortfalls: f1 = 0.25, f2 = 0.5.
        assertThat(outcome.front())
                .anyMatch(member -> Math.abs(member.evaluation().objective(0) - 0.25) < 0.02
                        && member.evaluation().objective(1) < 0.52);
    }

    @Test
    void aBoxOfAnotherSizeIsRefused() {
        Problem plain = Benchmark.dtlz2().problem();
        assertThatThrownBy(() -> new Problem(
                        plain.variables(),
                        plain.resolution(),
                        plain.evaluators(),
                        Problem.Niches.ONE,
                        UnaryOperator.identity(),
                        List.of(),
                        TENTH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2 of 3");
    }
}
