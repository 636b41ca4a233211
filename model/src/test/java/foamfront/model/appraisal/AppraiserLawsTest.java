package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Two hundred random designs of every arrangement: both ways in give the same, and no call leaves a trace in the next. */
class AppraiserLawsTest {
    private static final List<Measure> EVERY = List.of(Measure.values());
    private static final Mission MISSION = Samples.mission();
    private static final Appraiser REUSED = new Appraiser(EVERY);

    /** A sum of the same terms in the same order. */
    private static final double ROUNDING = 1e-12;

    /** No single limit counts more. */
    private static final double MOST = 3;

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void scoreAndAppraisalGiveTheSameBits(long seed) {
        Design design = Arrangements.near(seed);
        Mission free = Missions.unlimited(MISSION);

        Score score = REUSED.score(design, free, Factors.NOMINAL);
        Appraisal appraisal = REUSED.appraise(design, free, Factors.NOMINAL);

        assertThat(score.violation()).isZero();
        for (int i = 0; i < EVERY.size(); i++) {
            assertThat(score.value(i))
                    .as(EVERY.get(i).words())
                    .isEqualTo(Double.valueOf(appraisal.measures().of(EVERY.get(i))));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theScoreMissesTheAppraisalsLimitsByAsMuch(long seed) {
        Design design = Arrangements.near(seed);

        Score score = REUSED.score(design, MISSION, Factors.NOMINAL);
        Appraisal appraisal = REUSED.appraise(design, MISSION, Factors.NOMINAL);

        assertThat(score.feasible()).isEqualTo(appraisal.feasible());
        double sum = 0;
        for (LimitCheck check : appraisal.limits()) {
            int i = EVERY.indexOf(check.bound().measure());
            assertThat(score.value(i)).isEqualTo(check.value());
            sum += Math.min(MOST, check.bound().violation(check.value()));
        }
        assertThat(score.violation()).isCloseTo(sum, within(ROUNDING));
        assertThat(Arrays.stream(score.excesses()).sum()).isCloseTo(score.violation(), within(ROUNDING));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aFreshAppraiserGivesWhatAReusedOneGives(long seed) {
        Design design = Arrangements.near(seed);

        Score reused = REUSED.score(design, MISSION, Factors.NOMINAL);
        Score fresh = new Appraiser(EVERY).score(design, MISSION, Factors.NOMINAL);
        Appraisal whole = REUSED.appraise(design, MISSION, Factors.NOMINAL);
        Appraisal wholeFresh = new Appraiser(EVERY).appraise(design, MISSION, Factors.NOMINAL);

        assertThat(fresh.violation()).isEqualTo(reused.violation());
        for (int i = 0; i < EVERY.size(); i++) {
            assertThat(fresh.value(i)).as(EVERY.get(i).words()).isEqualTo(Double.valueOf(reused.value(i)));
        }
        assertThat(wholeFresh.measures()).isEqualTo(whole.measures());
        assertThat(wholeFresh.limits()).isEqualTo(whole.limits());
        assertThat(wholeFresh.polar()).isEqualTo(whole.polar());
        assertThat(wholeFresh.power()).isEqualTo(whole.power());
        assertThat(wholeFresh.caveats()).isEqualTo(whole.caveats());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatAppliesIsANumberAndWhatDoesNotIsNone(long seed) {
        Workbench bench = new Workbench(Arrangements.near(seed), MISSION, Factors.NOMINAL);
        for (int stage = 0; stage < Stages.count(); stage++) {
            bench.run(stage);
        }

        for (Measure measure : EVERY) {
            if (bench.applies(measure)) {
                assertThat(bench.get(measure)).as(measure.words()).isNotNaN();
            }
        }
    }

    /** Wider limits never make a feasible design infeasible, and narrower ones never the other way. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void widerLimitsNeverRefuseMore(long seed) {
        Design design = Arrangements.near(seed);

        double narrow = REUSED.score(design, Missions.widened(MISSION, -0.1), Factors.NOMINAL)
                .violation();
        double stated = REUSED.score(design, MISSION, Factors.NOMINAL).violation();
        double wide = REUSED.score(design, Missions.widened(MISSION, 0.1), Factors.NOMINAL)
                .violation();

        assertThat(wide == 0 || stated > 0).isTrue();
        assertThat(stated == 0 || narrow > 0).isTrue();
    }

    @Test
    void theSeedsReachEveryStage() {
        long feasible = seeds().filter(seed -> REUSED.score(Arrangements.near(seed), MISSION, Factors.NOMINAL)
                        .feasible())
                .count();
        assertThat(feasible).isBetween(1L, 150L);
    }
}
