package foamfront.optimizer.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The search beside the whole truth: every design of a small study computed. */
class TruthTest {
    /** The table has nine digits. */
    private static final double WRITTEN = 1e-8;

    private static final Truth TRUTH = new Truth();

    private static Truth.Stored stored;

    @BeforeAll
    static void read() throws IOException {
        stored = new Truth.Stored(TRUTH);
    }

    @Test
    void theStoredFrontIsOfThisStudyAndModel() {
        String advice = "the stored truth is of another study or model: ./test --enumerate computes it again";
        assertThat(stored.study).as(advice).isEqualTo(TRUTH.task().study().digest());
        assertThat(stored.model).as(advice).isEqualTo(TRUTH.modelDigest());
        for (int k = 0; k < stored.front.size(); k++) {
            double[] costs = stored.front.get(k).costs();
            double[] written = stored.written.get(k);
            assertThat(costs).hasSameSizeAs(written);
            for (int i = 0; i < costs.length; i++) {
                assertThat(costs[i]).as(advice).isCloseTo(written[i], within(WRITTEN * Math.abs(written[i])));
            }
        }
    }

    @Test
    void noneOfTheStoredFrontBeatsAnother() {
        List<Truth.Point> front = stored.front;
        assertThat(front).hasSizeGreaterThan(100);
        for (Truth.Point a : front) {
            assertThat(front).noneMatch(b -> NaiveFront.dominates(b.costs(), a.costs()));
        }
    }

    /** No design of the search may beat the truth: what it finds is on the front or behind it. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2})
    void aTwentiethOfTheEvaluationsFindsTheFront(long seed) {
        Outcome outcome = Enumeration.search(TRUTH, stored.designs / Enumeration.SHARE, seed, 2);
        for (Member member : outcome.front()) {
            double[] found = member.evaluation().objectives();
            assertThat(stored.front).noneMatch(point -> NaiveFront.dominates(found, point.costs()));
        }
        Benchmark scale = Benchmark.sampled("truth", TRUTH.problem(), stored.costs());
        assertThat(Enumeration.ratio(scale, outcome)).isGreaterThanOrEqualTo(Enumeration.ENOUGH);
    }
}
