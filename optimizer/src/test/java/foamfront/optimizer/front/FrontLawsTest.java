package foamfront.optimizer.front;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.appraisal.MeasureValues;
import foamfront.model.design.Design;
import foamfront.model.mission.Measure;
import foamfront.model.units.Currency;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FrontLawsTest {
    private static final Currency USD = new Currency("USD");

    private static final int CASES = 200;

    // seed 3 draws one row that beats all others
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 4, 5, 6})
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

    /**
     * A front is of candidates none of which beats another, the same in whatever order they came and in whatever units the aims
     * are counted.
     */
    @Test
    void theFrontDependsNeitherOnOrderNorOnScale() {
        for (int seed = 0; seed < CASES; seed++) {
            List<Row> candidates = new ArrayList<>(Rows.random(2 + seed % 40, seed));
            Front front = Front.of(Rows.AIMS, candidates);
            for (int i = 0; i < front.size(); i++) {
                for (int k = 0; k < front.size(); k++) {
                    assertThat(i != k
                                    && covers(front.rows().get(i), front.rows().get(k)))
                            .isFalse();
                }
            }
            Collections.shuffle(candidates, new Random(seed));
            assertThat(designs(Front.of(Rows.AIMS, candidates))).isEqualTo(designs(front));
            double factor = Math.scalb(1.0, seed % 21 - 10);
            List<Row> rescaled =
                    candidates.stream().map(row -> rescaled(row, factor)).toList();
            assertThat(designs(Front.of(Rows.AIMS, rescaled))).isEqualTo(designs(front));
        }
    }

    private static List<Design> designs(Front front) {
        return front.rows().stream().map(Row::design).toList();
    }

    /** By powers of two, which lose no digit: equal rows stay equal. */
    private static Row rescaled(Row row, double factor) {
        double[] values = new double[Measure.values().length];
        for (Measure measure : Measure.values()) {
            values[measure.ordinal()] = factor * row.measures().of(measure);
        }
        return new Row(row.design(), new MeasureValues(values), row.limits(), row.caveats());
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
        assertThat(FrontTable.of(again, 1, USD).csv())
                .isEqualTo(FrontTable.of(front, 1, USD).csv());
        assertThat(FrontJson.of("s", again, 1, USD)).isEqualTo(FrontJson.of("s", front, 1, USD));
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
        List<Row> candidates = Rows.random(2000, seed);
        var layouts = Front.byLayout(Rows.AIMS, candidates);
        // Six powers: eighteen of monoplanes, fifteen of biplanes, which have no pusher, six of flying wings.
        assertThat(layouts).hasSize(39);
        layouts.forEach((words, front) ->
                assertThat(front.rows()).allMatch(row -> row.layout().equals(words)));
        List<Row> all = new ArrayList<>();
        layouts.values().forEach(front -> all.addAll(front.rows()));
        assertThat(FrontTable.of(Front.of(Rows.AIMS, all), 1, USD).csv())
                .isEqualTo(
                        FrontTable.of(Front.of(Rows.AIMS, candidates), 1, USD).csv());
    }

    private static boolean covers(Row a, Row b) {
        return Rows.AIMS.stream().allMatch(aim -> Costs.of(aim, a.measures()) <= Costs.of(aim, b.measures()));
    }
}
