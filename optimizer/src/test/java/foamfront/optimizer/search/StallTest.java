package foamfront.optimizer.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StallTest {
    private static final long BUDGET = 10_000;
    private static final long STEP = 100;
    private static final double TOLERANCE = 0.01;

    /** A history in equal steps, its volume a function of the share of the budget. */
    private static List<Progress> history(long until, DoubleUnaryOperator volume) {
        List<Progress> history = new ArrayList<>();
        for (long at = STEP; at <= until; at += STEP) {
            history.add(new Progress(at, BUDGET, 10, volume.applyAsDouble((double) at / BUDGET), 0.5));
        }
        return history;
    }

    /** The evaluations after which a search would end, asked at every epoch; the budget where it goes to its end. */
    private static long end(double tolerance, DoubleUnaryOperator volume) {
        for (long at = STEP; at < BUDGET; at += STEP) {
            if (Stall.isReached(history(at, volume), tolerance)) {
                return at;
            }
        }
        return BUDGET;
    }

    /** A volume that stands still from a share s of the budget stalls as soon as its last fifth does: at s / 0.8. */
    @ParameterizedTest(name = "still from {0} of the budget, ends at {1}")
    @CsvSource({"0.2, 2500", "0.4, 5000", "0.6, 7500", "0.9, 10000"})
    void aVolumeThatStandsStillEndsTheSearchAFifthLater(double share, long end) {
        assertThat(end(TOLERANCE, x -> Math.min(x, share))).isEqualTo(end);
    }

    /** For V = x^p the last fifth grows by 1 - 0.8^p of the whole, ever the same share: the tolerance alone decides. */
    @ParameterizedTest(name = "V = x^{0}, tolerance {1}: {2}")
    @CsvSource({"1, 0.199, 10000", "1, 0.201, 1000", "0.04, 0.0088, 10000", "0.04, 0.0090, 1000"})
    void growthIsComparedWithTheStatedShareOfTheWhole(double power, double tolerance, long end) {
        assertThat(end(tolerance, x -> StrictMath.pow(x, power))).isEqualTo(end);
    }

    @Test
    void theToleranceIsAShareSoThatTheScaleOfTheVolumeDoesNotMatter() {
        DoubleUnaryOperator volume = x -> 1 - StrictMath.exp(-6 * x);
        long end = end(TOLERANCE, volume);
        assertThat(end).isBetween(BUDGET / 2, BUDGET - STEP);
        for (double scale : new double[] {1e-9, 1e9}) {
            assertThat(end(TOLERANCE, x -> scale * volume.applyAsDouble(x))).isEqualTo(end);
        }
        assertThat(end(TOLERANCE / 4, volume)).isGreaterThan(end);
    }

    @Test
    void nothingStallsWhileNothingIsFeasible() {
        assertThat(end(TOLERANCE, x -> 0)).isEqualTo(BUDGET);
        // The first feasible designs count as growth, however late they come.
        assertThat(Stall.isReached(history(9000, x -> x < 0.85 ? 0 : 0.3), TOLERANCE))
                .isFalse();
    }

    @Test
    void nothingStallsInTheFirstTenthOrWithoutATolerance() {
        assertThat(end(TOLERANCE, x -> 0.5)).isEqualTo(BUDGET / 10);
        assertThat(end(0, x -> 0.5)).isEqualTo(BUDGET);
        assertThat(end(Double.NaN, x -> 0.5)).isEqualTo(BUDGET);
        assertThat(Stall.isReached(List.of(), TOLERANCE)).isFalse();
    }

    /** The whole search: once its grid of designs is found it has nothing to gain, says so, and ends the same on any threads. */
    @ParameterizedTest(name = "{0} threads")
    @CsvSource({"1", "4"})
    void aSearchThatHasFoundAllEndsEarlyAndSaysSo(int threads) {
        Problem problem = Benchmark.reals(
                2, 2, x -> Evaluation.feasible(Math.rint(8 * x[0]), 8 - Math.rint(8 * x[0]) + Math.rint(3 * x[1])));
        Outcome outcome =
                Search.run(problem, new Settings(50_000, 1, threads, 40, 100, TOLERANCE), Listener.NONE, () -> false);
        assertThat(outcome.stalled()).isTrue();
        assertThat(outcome.stoppedEarly()).isFalse();
        assertThat(outcome.front()).hasSize(9);
        assertThat(outcome.evaluations()).isBetween(5000L, 6000L);
        Outcome unasked = Search.run(problem, new Settings(50_000, 1, threads, 40, 100), Listener.NONE, () -> false);
        assertThat(unasked.stalled()).isFalse();
        assertThat(unasked.evaluations()).isEqualTo(50_000);
    }
}
