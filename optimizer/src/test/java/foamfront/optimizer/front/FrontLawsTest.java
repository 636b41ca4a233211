package foamfront.optimizer.front;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FrontLawsTest {
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void noRowBeatsAnother(long seed) {
        Front front = Front.of(Rows.AIMS, Rows.random(300, seed));
        assertThat(front.size()).isGreaterThan(1);
        for (int i = 0; i < front.size(); i++) {
            for (int k = 0; k < front.size(); k++) {
                assertThat(i != k && covers(front.rows().get(i), front.rows().get(k)))
                        .isFalse();
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void everyCandidateIsBeatenOrMatchedByTheFront(long seed) {
        List<Row> candidates = Rows.random(300, seed);
        Front front = Front.of(Rows.AIMS, candidates);
        for (Row candidate : candidates) {
            assertThat(front.rows()).anyMatch(row -> covers(row, candidate));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theOrderOfCandidatesDoesNotMatter(long seed) {
        List<Row> candidates = new ArrayList<>(Rows.random(300, seed));
        Front front = Front.of(Rows.AIMS, candidates);
        Collections.shuffle(candidates, new Random(seed));
        Front again = Front.of(Rows.AIMS, candidates);
        assertThat(FrontTable.of(again, 1).csv())
                .isEqualTo(FrontTable.of(front, 1).csv());
        assertThat(FrontJson.of("s", again, 1)).isEqualTo(FrontJson.of("s", front, 1));
        assertThat(again.spread(12)).isEqualTo(front.spread(12));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void aSpreadHoldsTheExtremesTheCompromiseAndAsManyRowsAsAsked(long seed) {
        Front front = Front.of(Rows.AIMS, Rows.random(300, seed));
        int wanted = Math.min(8, front.size());
        assertThat(front.spread(8))
                .hasSize(wanted)
                .isSorted()
                .contains(front.compromise())
                .containsAll(Rows.AIMS.stream().map(front::best).toList());
        assertThat(front.spread(10_000)).hasSize(front.size());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void layoutsShareOutTheCandidatesAndNoneIsLost(long seed) {
        List<Row> candidates = Rows.random(300, seed);
        var layouts = Front.byLayout(Rows.AIMS, candidates);
        assertThat(layouts).hasSize(8);
        layouts.forEach((words, front) ->
                assertThat(front.rows()).allMatch(row -> row.layout().equals(words)));
        List<Row> all = new ArrayList<>();
        layouts.values().forEach(front -> all.addAll(front.rows()));
        assertThat(FrontTable.of(Front.of(Rows.AIMS, all), 1).csv())
                .isEqualTo(FrontTable.of(Front.of(Rows.AIMS, candidates), 1).csv());
    }

    private static boolean covers(Row a, Row b) {
        return Rows.AIMS.stream().allMatch(aim -> Costs.of(aim, a.measures()) <= Costs.of(aim, b.measures()));
    }
}
