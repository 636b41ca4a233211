package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class ParasiteDragTest {
    private static final double ROUNDING = 1e-15;
    private static final double VISCOSITY = 1.46e-5; // m²/s

    /** The parabola in log speed against the parts over a sixfold range; most of it is the corners of the wire's table. */
    private static final double PARABOLA_PERCENT = 0.25;

    private static double parts(double speed) {
        double legs = 2 * WireDrag.dragArea(0.002, 0.12, speed, VISCOSITY);
        double wheels = 2 * WheelDrag.dragArea(0.06, 0.018);
        return new BoxBody(0.9, 0.07, 0.08, 0.01, 0.002).dragArea(speed, VISCOSITY) + legs + wheels;
    }

    @Test
    void raisesTheSumByInterferenceAndRoughBuild() {
        ParasiteDrag drag = ParasiteDrag.of(speed -> 0.004, 5, 30);

        assertThat(drag.dragArea(StrictMath.log(11))).isCloseTo(0.004 * 1.05 * 1.20, within(ROUNDING));
    }

    @Test
    void followsTheSumOfThePartsBetweenItsThreeSpeeds() {
        ParasiteDrag drag = ParasiteDrag.of(ParasiteDragTest::parts, 5, 30);

        for (double speed = 5; speed <= 30; speed += 0.5) {
            assertThat(drag.dragArea(StrictMath.log(speed)))
                    .isCloseTo(1.26 * parts(speed), withinPercentage(PARABOLA_PERCENT));
        }
    }

    @Test
    void isHeldAtItsEnds() {
        ParasiteDrag drag = ParasiteDrag.of(ParasiteDragTest::parts, 5, 30);

        assertThat(drag.dragArea(StrictMath.log(3))).isCloseTo(1.26 * parts(5), within(ROUNDING));
        assertThat(drag.dragArea(StrictMath.log(60))).isCloseTo(1.26 * parts(30), within(ROUNDING));
    }
}
