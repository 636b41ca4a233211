package foamfront.optimizer.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SearchTest {
    private static final long BUDGET = 6000;

    private static Outcome run(Problem problem, long budget, int threads, long seed) {
        return Search.run(problem, new Settings(budget, seed, threads, 60, 300), Listener.NONE, () -> false);
    }

    /** Everything a caller can see, with all digits. */
    private static String print(Outcome outcome) {
        StringBuilder text = new StringBuilder();
        outcome.front().forEach(member -> append(text, member));
        outcome.nicheFronts().forEach(front -> front.forEach(member -> append(text, member)));
        outcome.leastInfeasible().forEach(member -> append(text, member));
        return text.append(outcome.evaluations())
                .append(outcome.feasible())
                .append(outcome.faults())
                .append(outcome.history())
                .toString();
    }

    private static void append(StringBuilder text, Member member) {
        for (double gene : member.genes()) {
            text.append(Double.toHexString(gene)).append(' ');
        }
        text.append(Arrays.toString(member.values()))
                .append(member.evaluation())
                .append('\n');
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5, 8})
    void anyNumberOfThreadsFindsTheSame(int threads) {
        Problem categories = Benchmark.eightCategories().problem();
        assertThat(print(runTwo(categories, threads))).isEqualTo(print(runTwo(categories, 1)));
        Problem constrained = Benchmark.c1dtlz1().problem();
        assertThat(print(runTwo(constrained, threads))).isEqualTo(print(runTwo(constrained, 1)));
    }

    @Test
    void fourIslandsFindTheSameOnAnyNumberOfThreads() {
        Problem problem = Benchmark.zdt3().problem();
        assertThat(print(runFour(problem, 5))).isEqualTo(print(runFour(problem, 1)));
    }

    private static Outcome runTwo(Problem problem, int threads) {
        return Search.run(problem, new Settings(BUDGET, 3, threads, 200, 300), Listener.NONE, () -> false);
    }

    private static Outcome runFour(Problem problem, int threads) {
        Settings settings = new Settings(101_000, 3, threads, 400, 300);
        assertThat(settings.islands()).isEqualTo(4);
        return Search.run(problem, settings, Listener.NONE, () -> false);
    }

    @Test
    void aSmallPopulationIsNotSplit() {
        assertThat(new Settings(25_000, 1, 8, 100, 300).islands()).isEqualTo(1);
        assertThat(new Settings(25_000, 1, 1, 200, 300).islands()).isEqualTo(2);
        assertThat(new Settings(200_000, 1, 1, 300, 300).islands()).isEqualTo(3);
    }

    @Test
    void anotherSeedFindsAnotherFront() {
        Problem problem = Benchmark.zdt1().problem();
        assertThat(print(run(problem, BUDGET, 1, 3)))
                .isEqualTo(print(run(problem, BUDGET, 1, 3)))
                .isNotEqualTo(print(run(problem, BUDGET, 1, 4)));
    }

    /** O9: f = 1 - x for all x but the first; the best lies on every bound. */
    @ParameterizedTest(name = "optimum at {0}")
    @ValueSource(doubles = {0, 1})
    void everyBoundIsReached(double bound) {
        List<Variable> variables = List.of(
                new Variable.Real("trade"),
                new Variable.Real("a"),
                new Variable.Real("b"),
                new Variable.Real("c"),
                new Variable.Integral("n", 3, 40),
                new Variable.Ordinal("o", 12),
                new Variable.Category("k", 5));
        Evaluator evaluator = x -> {
            double off = Math.abs(x[1] - bound) + Math.abs(x[2] - bound) + Math.abs(x[3] - bound);
            off += Math.abs(x[4] - (bound > 0 ? 40 : 3)) / 37 + Math.abs(x[5] - 11 * bound) / 11;
            off += x[6] == 4 * bound ? 0 : 1;
            return Evaluation.feasible(x[0] + off, 1 - x[0] + off);
        };
        Outcome outcome = run(new Problem(variables, List.of(1e-3, 1e-3), () -> evaluator), BUDGET, 2, 1);
        double[] best = outcome.front().get(0).values();
        assertThat(best).containsExactly(0, bound, bound, bound, bound > 0 ? 40 : 3, 11 * bound, 4 * bound);
        double[] last = outcome.front().get(outcome.front().size() - 1).values();
        assertThat(last[0]).isEqualTo(1);
    }

    @Test
    void everyCategoryThatOwnsAPieceOfTheFrontIsOnIt() {
        Benchmark eight = Benchmark.eightCategories();
        Outcome outcome = Search.run(eight.problem(), new Settings(100_000, 2, 2), Listener.NONE, () -> false);
        for (int niche = 0; niche < 8; niche++) {
            int category = niche;
            assertThat(outcome.front()).anyMatch(member -> member.niche() == category);
            assertThat(outcome.nicheFronts().get(niche)).isNotEmpty().allMatch(member -> member.niche() == category);
        }
    }

    /** A niche that becomes feasible only after long improvement, beside one that is feasible at once. */
    @Test
    void aNicheThatIsSlowToBecomeFeasibleIsKeptAlive() {
        Evaluator evaluator = x -> {
            double off = 0;
            for (int i = 2; i < x.length; i++) {
                off += Math.abs(x[i] - 0.7);
            }
            boolean slow = x[0] == 1;
            return Evaluation.of(slow ? Math.max(0, off - 0.1) : 0, x[1], 1 - x[1] + (slow ? 0 : 0.5));
        };
        List<Variable> variables =
                new ArrayList<>(Benchmark.reals(10, 2, evaluator).variables());
        variables.set(0, new Variable.Category("kind", 2));
        Problem problem = new Problem(
                variables,
                List.of(1e-3, 1e-3),
                () -> evaluator,
                new Problem.Niches(2, values -> (int) values[0]),
                UnaryOperator.identity(),
                List.of());
        Outcome outcome = run(problem, 20_000, 2, 1);
        assertThat(outcome.nicheFronts().get(1)).isNotEmpty();
        assertThat(outcome.front()).anyMatch(member -> member.niche() == 1);
    }

    @Test
    void progressCoversTheBudgetAndItsVolumeNeverFalls() {
        List<Progress> heard = new ArrayList<>();
        Thread caller = Thread.currentThread();
        Outcome outcome = Search.run(
                Benchmark.tnk().problem(),
                new Settings(BUDGET, 1, 2),
                progress -> {
                    assertThat(Thread.currentThread()).isSameAs(caller);
                    heard.add(progress);
                },
                () -> false);
        assertThat(heard).isEqualTo(outcome.history());
        assertThat(heard.get(heard.size() - 1).evaluations()).isEqualTo(BUDGET);
        assertThat(heard).extracting(Progress::hypervolume).isSorted();
        assertThat(heard.get(heard.size() - 1).hypervolume()).isPositive();
        assertThat(outcome.feasible()).isBetween(1L, BUDGET - 1);
    }

    @Test
    void stoppingReturnsTheFrontSoFar() {
        AtomicBoolean stop = new AtomicBoolean();
        Outcome outcome = Search.run(
                Benchmark.zdt1().problem(),
                new Settings(100_000, 1, 2),
                progress -> stop.set(progress.evaluations() > 5000),
                stop::get);
        assertThat(outcome.stoppedEarly()).isTrue();
        assertThat(outcome.evaluations()).isBetween(5000L, 20_000L);
        assertThat(outcome.front()).isNotEmpty();
    }

    @Test
    void aBrokenEvaluationIsRecordedAndTheSearchGoesOn() {
        Evaluator evaluator = x -> {
            if (x[1] < 0.2) {
                throw new ArithmeticException("no lift");
            }
            return Evaluation.feasible(x[0] + x[1], x[1] > 0.9 ? Double.NaN : 1 - x[0] + x[1]);
        };
        Outcome outcome = run(Benchmark.reals(2, 2, evaluator), BUDGET, 2, 1);
        assertThat(outcome.evaluations()).isEqualTo(BUDGET);
        assertThat(outcome.faultCount()).isGreaterThan(100);
        assertThat(outcome.faults())
                .anyMatch(fault ->
                        fault.message().contains("no lift") && fault.values().get(1) < 0.2)
                .anyMatch(fault ->
                        fault.message().contains("NaN") && fault.values().get(1) > 0.9);
        assertThat(outcome.front()).isNotEmpty().allMatch(member -> member.values()[1] >= 0.2);
        assertThat(outcome.front().get(0).values()[1]).isCloseTo(0.2, within(1e-2)); // a search, not a solver
    }

    @Test
    void anErrorThatIsNoExceptionOfAnEvaluatorEndsTheSearch() {
        Problem broken = Benchmark.reals(2, 2, x -> {
            throw new StackOverflowError("endless");
        });
        assertThatThrownBy(() -> run(broken, BUDGET, 2, 1))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("endless");
    }

    @Test
    void whereNothingIsFeasibleTheNearestIsReturned() {
        Evaluator evaluator = x -> Evaluation.infeasible(0.5 + x[0] + Math.abs(x[1] - 0.3));
        Outcome outcome = run(Benchmark.reals(2, 2, evaluator), BUDGET, 2, 1);
        assertThat(outcome.front()).isEmpty();
        assertThat(outcome.leastInfeasible().get(0).evaluation().violation()).isCloseTo(0.5, within(1e-3));
        assertThat(outcome.history()).allMatch(progress -> progress.hypervolume() == 0);
    }

    @Test
    void aSmallSpaceIsSearchedToTheEndWithoutRepeats() {
        AtomicInteger calls = new AtomicInteger();
        Evaluator evaluator = x -> {
            calls.incrementAndGet();
            return Evaluation.feasible(x[0] * x[0] + x[1], (x[0] - 9) * (x[0] - 9) + x[1]);
        };
        Problem problem = new Problem(
                List.of(new Variable.Integral("a", 0, 9), new Variable.Integral("b", 0, 9)),
                List.of(0.5, 0.5),
                () -> evaluator);
        Outcome outcome = run(problem, BUDGET, 1, 1);
        // The one island knows its 100 designs.
        assertThat(calls.get()).isEqualTo((int) outcome.evaluations()).isLessThanOrEqualTo(100);
        assertThat(outcome.front()).hasSize(10);
        assertThat(outcome.stoppedEarly()).isFalse();
    }

    @Test
    void startsAreEvaluated() {
        double[] start =
                IntStream.range(0, 30).mapToDouble(i -> i == 0 ? 0.7 : 0).toArray();
        Problem plain = Benchmark.zdt1().problem();
        Problem seeded = new Problem(
                plain.variables(),
                plain.resolution(),
                plain.evaluators(),
                Problem.Niches.ONE,
                UnaryOperator.identity(),
                List.of(start));
        Outcome outcome = run(seeded, 60, 1, 1);
        assertThat(outcome.front()).anyMatch(member -> member.genes()[0] == 0.7);
        assertThat(outcome.evaluations()).isEqualTo(60);
    }
}
