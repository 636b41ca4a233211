package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What wind and gust do: closed forms beside them, and which way they go. */
class WindStageTest {
    private static final double ROUNDING = 1e-12;
    private static final Design WHEELS = Arrangements.of("tail wheel");

    private static MeasureValues run(Design design, Mission mission) {
        return new Appraiser(List.of())
                .appraise(design, mission, Factors.NOMINAL)
                .measures();
    }

    private static Mission gust(double gust) {
        return Records.with(Samples.mission(), "site.gust", gust);
    }

    @Test
    void headwayIsWhatTheWindLeaves() {
        MeasureValues values = run(WHEELS, Samples.mission());
        assertThat(values.of(Measure.HEADWAY))
                .isCloseTo(
                        values.of(Measure.CRUISE_SPEED)
                                - Samples.mission().site().wind(),
                        within(ROUNDING));
    }

    /** Δn goes with the gust; a hall has none. */
    @Test
    void gustsBounceInProportionAndNotInAHall() {
        double once = run(WHEELS, gust(2)).of(Measure.GUST_LOAD);
        assertThat(run(WHEELS, gust(4)).of(Measure.GUST_LOAD)).isCloseTo(2 * once, within(1e-9));
        assertThat(run(WHEELS, gust(0)).of(Measure.GUST_LOAD)).isNaN();
        assertThat(run(WHEELS, gust(0)).of(Measure.GUST_MARGIN)).isNaN();
    }

    /** Of two like aeroplanes the heavier rides a gust more quietly: μ grows and Δn / μ falls (NACA R-1206). */
    @Test
    void loadQuietensTheRide() {
        MeasureValues light = run(WHEELS, gust(4));
        MeasureValues heavy = run(Records.with(WHEELS, "loads[0].mass", 0.4), gust(4));
        double perSpeedLight = light.of(Measure.GUST_LOAD) / light.of(Measure.CRUISE_SPEED);
        double perSpeedHeavy = heavy.of(Measure.GUST_LOAD) / heavy.of(Measure.CRUISE_SPEED);
        assertThat(perSpeedHeavy).isLessThan(perSpeedLight);
    }

    /** A sharp gust of the margin's size brings the wing to its stall: (V / V_s)² g, by the same slope. */
    @Test
    void theGustOfTheMarginsSizeStalls() {
        Workbench w = new Workbench(WHEELS, gust(4), Factors.NOMINAL);
        for (int stage = 0; stage < Stages.count(); stage++) {
            w.run(stage);
        }
        double cruise = w.get(Measure.CRUISE_SPEED);
        double angle = w.get(Measure.GUST_MARGIN) * Math.atan2(4, cruise);
        double level = w.flight.liftCoefficient(cruise);
        double ratio = (level + w.lifting.liftSlope() * angle) / level;
        double stall = w.get(Measure.STALL_SPEED);
        // The stall speed's lift stands at its own Reynolds number.
        assertThat(ratio).isCloseTo(cruise * cruise / (stall * stall), within(0.02 * ratio));
        assertThat(w.get(Measure.GUST_MARGIN)).isBetween(0.1, 1.0);
    }

    @Test
    void aLargerRudderStandsMoreCrosswindAndLargerFinsLess() {
        double sample = run(WHEELS, Samples.mission()).of(Measure.CROSSWIND);
        assertThat(sample).isPositive();
        assertThat(run(Records.with(WHEELS, "controls.rudderChord", 0.2), Samples.mission())
                        .of(Measure.CROSSWIND))
                .isLessThan(sample);
        assertThat(run(Samples.trainer(), Samples.mission()).of(Measure.CROSSWIND))
                .isNaN();
    }

    @Test
    void tokenRuddersAreRefusedAloneByTheirCrosswind() {
        Design token = Records.with(WHEELS, "controls.rudderChord", 0.1);
        assertThat(new Appraiser(List.of())
                        .appraise(token, Samples.mission(), Factors.NOMINAL).limits().stream()
                                .filter(check -> !check.holds())
                                .map(check -> check.bound().measure()))
                .contains(Measure.CROSSWIND);
    }
}
