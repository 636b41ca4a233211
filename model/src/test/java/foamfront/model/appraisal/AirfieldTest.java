package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.factors.Factors;
import foamfront.model.flight.GroundAndHand;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Limits;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import foamfront.model.mission.Site;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Short fields: the hedge, the wind along the runway, and coming down again. */
class AirfieldTest {
    private static final List<Measure> DISTANCES = List.of(
            Measure.TAKE_OFF_DISTANCE, Measure.OBSTACLE_DISTANCE, Measure.LANDING_ROLL, Measure.LANDING_DISTANCE);

    private final Appraiser appraiser = new Appraiser(DISTANCES);

    private static Mission mission(double obstacle, double headwind) {
        Mission sample = Samples.mission();
        return Records.with(Records.with(sample, "site.obstacle", obstacle), "site.headwind", headwind);
    }

    private MeasureValues run(String arrangement, Mission mission) {
        return appraiser
                .appraise(Arrangements.of(arrangement), mission, Factors.NOMINAL)
                .measures();
    }

    @ParameterizedTest
    @ValueSource(strings = {"tail wheel", "tricycle"})
    void higherHedgesAskMoreRoomAndWindLess(String gear) {
        MeasureValues low = run(gear, mission(1, 0));
        MeasureValues high = run(gear, mission(3, 0));
        MeasureValues windy = run(gear, mission(3, 2));

        assertThat(low.of(Measure.TAKE_OFF_DISTANCE)).isEqualTo(high.of(Measure.TAKE_OFF_DISTANCE));
        assertThat(low.of(Measure.OBSTACLE_DISTANCE))
                .isBetween(low.of(Measure.TAKE_OFF_DISTANCE), high.of(Measure.OBSTACLE_DISTANCE));
        assertThat(low.of(Measure.LANDING_DISTANCE))
                .isBetween(low.of(Measure.LANDING_ROLL), high.of(Measure.LANDING_DISTANCE));
        for (Measure distance : DISTANCES) {
            assertThat(windy.of(distance)).as(distance.words()).isLessThan(high.of(distance));
        }
        // Force falls with speed, so that wind takes less off than (1 - W / V)² and more than 1 - W / V would leave.
        double share = 1 - 2 / (1.2 * high.of(Measure.STALL_SPEED));
        assertThat(windy.of(Measure.TAKE_OFF_DISTANCE) / high.of(Measure.TAKE_OFF_DISTANCE))
                .isBetween(share * share, share);
    }

    /** Friction of the whole weight alone would take V² / 2 μ g; a model's air does up to three fifths of the work. */
    @Test
    void theRollIsShorterThanByFrictionAlone() {
        MeasureValues values = run("tail wheel", mission(2, 0));
        double v = 1.15 * values.of(Measure.LANDING_STALL_SPEED);
        double longest = v * v / (2 * Samples.mission().site().ground().friction() * 9.80665);
        assertThat(values.of(Measure.LANDING_ROLL)).isBetween(0.4 * longest, longest);
    }

    /** Between what friction of the whole weight would take, V² / 2 μ g, and three fifths of it less for the wing's lift and drag. */
    @Test
    void whatIsThrownSlidesOnItsBellyShorterThanWheelsRoll() {
        MeasureValues thrown = run("trainer", mission(2, 0));
        double v = 1.15 * thrown.of(Measure.LANDING_STALL_SPEED);
        double longest = v * v / (2 * Samples.mission().site().ground().sliding() * 9.80665);
        assertThat(thrown.of(Measure.OBSTACLE_DISTANCE)).isNaN();
        assertThat(thrown.of(Measure.LANDING_ROLL))
                .isBetween(0.7 * longest, 1.4 * longest)
                .isLessThan(run("tail wheel", mission(2, 0)).of(Measure.LANDING_ROLL));
        assertThat(thrown.of(Measure.LANDING_DISTANCE)).isGreaterThan(thrown.of(Measure.LANDING_ROLL));
        assertThat(run("trainer", Records.with(mission(2, 0), "site.ground", Ground.LONG_GRASS))
                        .of(Measure.LANDING_ROLL))
                .isLessThan(thrown.of(Measure.LANDING_ROLL));
    }

    /** Water slows by a tenth to a quarter of the weight, less what the wing carries at first. */
    @Test
    void floatsRunOutOnWaterAndNeverComeToLand() {
        MeasureValues water = run("floats", Records.with(mission(2, 0), "site.ground", Ground.WATER));
        double v = 1.15 * water.of(Measure.LANDING_STALL_SPEED);
        assertThat(water.of(Measure.LANDING_ROLL)).isBetween(v * v / (2 * 9.80665 * 0.3), v * v / (2 * 9.80665 * 0.08));
        MeasureValues breeze = run("floats", Records.with(mission(2, 3), "site.ground", Ground.WATER));
        assertThat(breeze.of(Measure.LANDING_ROLL)).isLessThan(water.of(Measure.LANDING_ROLL));
        MeasureValues land = run("floats", mission(2, 0));
        assertThat(land.of(Measure.LANDING_ROLL)).isNaN();
        assertThat(land.of(Measure.LANDING_DISTANCE)).isNaN();
    }

    /** Whoever can be launched from a site can be landed there. */
    @Test
    void everyArrangementThatCanLeaveTheSiteComesDownOnIt() {
        for (String arrangement : Arrangements.all().keySet()) {
            MeasureValues values = run(arrangement, mission(2, 0));
            double roll = values.of(Measure.TAKE_OFF_DISTANCE);
            if (Double.isNaN(roll) || roll < GroundAndHand.NEVER) {
                assertThat(values.of(Measure.LANDING_ROLL)).as(arrangement).isPositive();
                assertThat(values.of(Measure.LANDING_DISTANCE)).as(arrangement).isPositive();
            }
        }
    }

    @Test
    void whatIsThrownOrHasNoHedgeHasNoObstacleDistance() {
        MeasureValues open = run("tail wheel", mission(0, 0));
        assertThat(open.of(Measure.OBSTACLE_DISTANCE)).isNaN();
        assertThat(open.of(Measure.LANDING_DISTANCE)).isNaN();
        assertThat(open.of(Measure.LANDING_ROLL)).isPositive();
    }

    @Test
    void scoresAreThoseOfTheAppraisal() {
        Mission mission = mission(2, 1.5);
        for (String arrangement : List.of("tail wheel", "tricycle", "flaps")) {
            Score score = appraiser.score(Arrangements.of(arrangement), mission, Factors.NOMINAL);
            MeasureValues values = run(arrangement, mission);
            for (int i = 0; i < DISTANCES.size(); i++) {
                assertThat(score.value(i)).isEqualTo(values.of(DISTANCES.get(i)));
            }
        }
    }

    @Test
    void aHedgeAtTheRunwaysEndsLimitsBothWays() {
        Site site = mission(2, 0).site();
        Limits closed = Limits.standing().on(site);
        assertThat(closed.of(Measure.OBSTACLE_DISTANCE)).isNotNull().returns(site.runway(), b -> b.high());
        assertThat(closed.of(Measure.LANDING_DISTANCE)).isNotNull().returns(site.runway(), b -> b.high());
        Limits open = Limits.standing().on(Records.with(site, "obstacle", 0.0));
        assertThat(open.of(Measure.OBSTACLE_DISTANCE)).isNull();
        assertThat(open.of(Measure.LANDING_DISTANCE)).isNull();
    }
}
