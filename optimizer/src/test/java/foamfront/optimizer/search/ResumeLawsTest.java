package foamfront.optimizer.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A search stopped at any generation and resumed ends as one that was never stopped, to the last bit of its last state: whatever
 * an island is given to remember must pass through its exchange.
 */
class ResumeLawsTest {
    /** States as texts. */
    private static final class Kept implements Checkpoints {
        final List<String> states = new ArrayList<>();

        @Nullable
        String from;

        @Override
        public @Nullable String last() {
            return from;
        }

        @Override
        public void offer(Supplier<String> state, boolean must) {
            states.add(state.get());
        }

        String newest() {
            return states.get(states.size() - 1);
        }
    }

    @ParameterizedTest(name = "seed {0}, {1} evaluations, {2} then {3} threads, archive {4}")
    @CsvSource({"1, 6000, 1, 8, 1000", "2, 6000, 8, 1, 20", "3, 100400, 2, 4, 50"})
    void stoppedAtAnyGenerationAndResumedItEndsTheSame(long seed, long evaluations, int before, int after, int cap) {
        Problem problem = mixed();
        int population = evaluations > 10_000 ? 2000 : 40;
        Kept whole = new Kept();
        Settings settings = new Settings(evaluations, seed, before, population, cap);
        Outcome straight = Search.run(problem, settings, whole, Listener.NONE, () -> false);
        Settings changed = new Settings(evaluations, seed, after, population, cap);

        Kept parts = new Kept();
        Outcome resumed = null;
        int stops = 0;
        for (int patience = 1; resumed == null || resumed.stoppedEarly(); patience = 3 * patience + 2) {
            AtomicInteger left = new AtomicInteger(patience);
            resumed = Search.run(problem, changed, parts, Listener.NONE, () -> left.getAndDecrement() <= 0);
            parts.from = parts.newest();
            stops++;
        }
        assertThat(stops).isGreaterThan(3);
        assertThat(parts.newest()).isEqualTo(whole.newest());
        assertThat(texts(resumed)).isEqualTo(texts(straight));
        assertThat(resumed.history()).isEqualTo(straight.history());
        assertThat(resumed.evaluations()).isEqualTo(straight.evaluations());
        assertThat(resumed.faults()).isEqualTo(straight.faults()).isNotEmpty();
        assertThat(resumed.faultCount()).isEqualTo(straight.faultCount());
    }

    /** Every state kept on the way leads to the same end. */
    @ParameterizedTest(name = "seed {0}")
    @CsvSource({"4", "5"})
    void everyStateLeadsToTheSameEnd(long seed) {
        Problem problem = mixed();
        Settings settings = new Settings(3000, seed, 2, 40, 30);
        Kept whole = new Kept();
        Outcome straight = Search.run(problem, settings, whole, Listener.NONE, () -> false);
        assertThat(whole.states).hasSizeGreaterThan(5);
        for (String state : whole.states) {
            Kept from = new Kept();
            from.from = state;
            Outcome resumed = Search.run(problem, settings, from, Listener.NONE, () -> false);
            assertThat(texts(resumed)).isEqualTo(texts(straight));
        }
    }

    private static List<String> texts(Outcome outcome) {
        List<String> texts = new ArrayList<>();
        List<List<Member>> fronts = new ArrayList<>(outcome.nicheFronts());
        fronts.add(outcome.front());
        fronts.add(outcome.leastInfeasible());
        for (List<Member> front : fronts) {
            front.forEach(member -> texts.add(member.niche() + " "
                    + List.of(boxed(member.genes()), boxed(member.values())) + member.evaluation()));
        }
        return texts;
    }

    private static List<Double> boxed(double[] numbers) {
        return java.util.Arrays.stream(numbers).boxed().toList();
    }

    /** Three niches, whole numbers, a condition, a limit, and a corner at which the evaluator breaks. */
    private static Problem mixed() {
        List<Variable> variables = List.of(
                new Variable.Category("kind", 3),
                new Variable.Ordinal("step", 7),
                new Variable.Real("x"),
                new Variable.Real("y"),
                new Variable.Real("z"));
        Evaluator evaluator = values -> {
            double x = values[2];
            double off = Math.abs(values[3] - 0.2 * values[0]) + Math.abs(values[4] - values[1] / 7);
            if (off < 1e-3 || values[4] > 0.999) {
                throw new IllegalStateException("broken\nhere \\ " + (values[4] > 0.999));
            }
            double shift = 0.1 * values[0];
            return Evaluation.of(
                    Math.max(0, off - 0.9),
                    x + off + shift,
                    1 - Math.sqrt(x) + off + shift * x,
                    off * (1 + x) + 0.3 * (1 - x));
        };
        return new Problem(
                variables,
                List.of(0.01, 0.01, 0.01),
                () -> evaluator,
                new Problem.Niches(3, values -> (int) values[0]),
                values -> values,
                List.of());
    }
}
