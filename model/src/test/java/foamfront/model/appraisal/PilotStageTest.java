package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Turning, letting a load go, and who can fly it. */
class PilotStageTest {
    private static final double ROUNDING = 1e-9;

    private final Appraiser appraiser = new Appraiser(List.of(Measure.values()));

    private double of(Measure measure, Design design, Mission mission) {
        return appraiser.appraise(design, mission, Factors.NOMINAL).measures().of(measure);
    }

    private double of(Measure measure, Design design) {
        return of(measure, design, Samples.mission());
    }

    private static Design dropping(double descent) {
        Load seed = new Load("seed", 0.1, 0.06, 0.04, 0.04, Place.BALANCE_POINT, true, descent, 0, 0);
        return Records.with(Samples.trainer(), "loads", List.of(seed));
    }

    @Test
    void whatDropsNothingHasNoDrop() {
        assertThat(of(Measure.DROP_DRIFT, Samples.trainer())).isNaN();
        assertThat(of(Measure.DROP_SPEED, Samples.trainer())).isNaN();
        assertThat(of(Measure.CANOPY, Samples.trainer())).isNaN();
        assertThat(of(Measure.RELEASE_TRIM, Samples.trainer())).isNaN();
    }

    @Test
    void aFreeFallIsFastAndDriftsLittle() {
        assertThat(of(Measure.CANOPY, dropping(0))).isNaN();
        assertThat(of(Measure.DROP_SPEED, dropping(0))).isGreaterThan(15);
        assertThat(of(Measure.DROP_DRIFT, dropping(0))).isLessThan(of(Measure.DROP_DRIFT, dropping(4)));
    }

    /** 0.1 kg at 4 m/s on C_D 0.75: S = 2 m g / (rho C_D v^2). */
    @Test
    void aParachuteComesDownAsAskedAndDriftsWithTheWind() {
        double density = Samples.mission().site().elevation() == 2 ? 1.2247 : Double.NaN;
        double area = 2 * 0.1 * 9.80665 / (density * 0.75 * 16);

        assertThat(of(Measure.DROP_SPEED, dropping(4))).isCloseTo(4, within(ROUNDING));
        assertThat(of(Measure.CANOPY, dropping(4))).isCloseTo(Math.sqrt(4 * area / Math.PI), within(1e-4));
        // 30 m at 4 m/s in 4 m/s of wind, the start of the fall a little slower.
        assertThat(of(Measure.DROP_DRIFT, dropping(4))).isBetween(30.0, 31.5);
    }

    @Test
    void aHigherReleaseDriftsFurther() {
        Mission high = Records.with(
                Samples.mission(), "site", Records.with(Samples.mission().site(), "releaseHeight", 60.0));

        assertThat(of(Measure.DROP_DRIFT, dropping(4), high)).isGreaterThan(1.9 * of(Measure.DROP_DRIFT, dropping(4)));
    }

    @Test
    void aLoadDroppedFromTheNoseAsksMoreOfTheElevatorThanOneFromTheBalancePoint() {
        Load nose = new Load("seed", 0.1, 0.06, 0.04, 0.04, Place.NOSE, true, 0, 0);
        Design front = Records.with(Samples.trainer(), "loads", List.of(nose));

        assertThat(of(Measure.RELEASE_TRIM, front)).isGreaterThan(2 * of(Measure.RELEASE_TRIM, dropping(0)));
    }

    /** r g = V² at 45 degrees, V = 1.2 V_s 2^(1/4). */
    @Test
    void theTrainerTurnsAsTightAsFortyFiveDegreesAllow() {
        double stall = of(Measure.STALL_SPEED, Samples.trainer());

        assertThat(of(Measure.TURN_RADIUS, Samples.trainer()))
                .isCloseTo(1.44 * Math.sqrt(2) * stall * stall / 9.80665, within(1e-9));
    }

    @Test
    void theWorstPartDecidesWhoCanFlyIt() {
        double easy = of(Measure.PILOT_LEVEL, Samples.trainer());
        Load lead = new Load("lead", 0.5, 0.06, 0.04, 0.04, Place.BALANCE_POINT, false, 0, 0);
        Design heavy = Records.with(Samples.trainer(), "loads", List.of(lead));

        assertThat(of(Measure.STALL_SPEED, heavy)).isGreaterThan(7.5);
        assertThat(of(Measure.PILOT_LEVEL, heavy)).isGreaterThan(easy);
        assertThat(of(Measure.PILOT_LEVEL, Arrangements.of("fan"))).isGreaterThanOrEqualTo(2);
    }
}
