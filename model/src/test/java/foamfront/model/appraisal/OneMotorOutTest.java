package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.design.Power;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import java.util.List;
import org.junit.jupiter.api.Test;

class OneMotorOutTest {
    /** Leads grow with the station and with them the weight and the stall speed. */
    private static final double LEADS = 0.05;

    /** Ten full rudders say that there is none. */
    private static final double NO_RUDDER = 10;

    @Test
    void motorsTwiceAsFarOutTakeTwiceTheRudder() {
        double near = of(new Power.TwinTractor(Samples.plant(), 0.16, false));
        double far = of(new Power.TwinTractor(Samples.plant(), 0.32, false));
        assertThat(near).isPositive();
        assertThat(far / near).isCloseTo(2, within(2 * LEADS));
    }

    @Test
    void onlyATwinHasAMotorToLose() {
        assertThat(of(new Power.NoseTractor(Samples.plant()))).isNaN();
        assertThat(value(Arrangements.of("fan"))).isNaN();
    }

    /** Both halves of a V-tail steer; elevons cannot. */
    @Test
    void aVTailHoldsATwinStraightAndAWingWithoutRudderDoesNot() {
        Power twin = new Power.TwinTractor(Samples.plant(), 0.2, false);
        double upright = value(Arrangements.of("twin"));
        assertThat(value(Records.with(Arrangements.of("V-tail"), "power", twin)))
                .isBetween(0.3 * upright, 3 * upright);
        assertThat(value(Records.with(Arrangements.of("flying wing"), "power", twin)))
                .isEqualTo(NO_RUDDER);
    }

    private static double of(Power power) {
        return value(Records.with(Arrangements.of("trainer"), "power", power));
    }

    private static double value(Design design) {
        return new Appraiser(List.of())
                .appraise(design, Samples.mission(), Factors.NOMINAL)
                .measures()
                .of(Measure.ONE_MOTOR_OUT);
    }
}
