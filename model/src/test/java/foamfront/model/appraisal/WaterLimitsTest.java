package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What water asks of hulls and floats, and not of aeroplanes of the land. */
class WaterLimitsTest {
    private final Appraiser appraiser = new Appraiser(List.of());

    /** Limits that only what floats has. */
    static Set<Measure> afloat() {
        return EnumSet.range(Measure.BUOYANCY_RESERVE, Measure.HULL_STRENGTH);
    }

    private static Mission water() {
        return Records.with(Samples.mission(), "site.ground", Ground.WATER);
    }

    private Set<Measure> misses(Design design, Mission mission) {
        Set<Measure> missed = EnumSet.noneOf(Measure.class);
        for (LimitCheck check :
                appraiser.appraise(design, mission, Factors.NOMINAL).limits()) {
            if (!check.holds()) {
                missed.add(check.bound().measure());
            }
        }
        return missed;
    }

    @Test
    void landAeroplanesHaveNoneOfItAndCannotUseASiteOfWater() {
        Appraisal ashore = appraiser.appraise(Samples.trainer(), Samples.mission(), Factors.NOMINAL);

        assertThat(ashore.limits())
                .noneMatch(check -> afloat().contains(check.bound().measure()));
        assertThat(misses(Samples.trainer(), water())).contains(Measure.BUOYANCY_RESERVE);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"hull", "floats"})
    void whatFloatsHasEveryMeasureOfTheWater(String name) {
        MeasureValues values = appraise(Arrangements.of(name));

        assertThat(afloat())
                .allSatisfy(measure -> assertThat(values.of(measure)).isFinite());
    }

    @Test
    void aStepFarBehindTheBalancePointIsRefused() {
        Design aft = Records.with(Arrangements.of("hull"), "body.step", 0.6);

        assertThat(misses(aft, water())).contains(Measure.STEP_ANGLE);
    }

    @Test
    void aNarrowShortFloatIsRefusedForItsSpray() {
        Design narrow = Records.with(Arrangements.of("floats"), "undercarriage.beam", 0.04);

        assertThat(misses(Records.with(narrow, "undercarriage.length", 0.35), water()))
                .contains(Measure.SPRAY_LOAD, Measure.BUOYANCY_RESERVE);
    }

    @Test
    void deadriseSoftensTheLanding() {
        Design deep = Records.with(Arrangements.of("hull"), "body.deadrise", 0.42);

        assertThat(appraise(deep).of(Measure.HULL_STRENGTH))
                .isGreaterThan(appraise(Arrangements.of("hull")).of(Measure.HULL_STRENGTH));
    }

    private MeasureValues appraise(Design design) {
        return appraiser.appraise(design, water(), Factors.NOMINAL).measures();
    }
}
