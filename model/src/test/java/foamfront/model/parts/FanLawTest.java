package foamfront.model.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FanLawTest {
    private static final double ROUNDING = 1e-9;

    /** Quartics through five points of a smooth curve. */
    private static final double QUARTIC = 0.002;

    private static final double DENSITY = 1.225;

    @ParameterizedTest(name = "{0} m")
    @CsvSource({"0.050, 0.020, 0.78, 4.45, 667", "0.064, 0.026, 0.8, 7.1, 600", "0.070, 0.030, 0.83, 15.3, 600"})
    void theQuotedThrustComesBackAtTheQuotedSpeed(
            double diameter, double hub, double efficiency, double thrust, double rotation) {
        FanLaw law = new FanLaw(diameter, hub, 0.9, efficiency, thrust, rotation);
        double scale = DENSITY * rotation * rotation * StrictMath.pow(diameter, 4);
        assertThat(scale * law.thrustCoefficient(0)).isCloseTo(thrust, within(ROUNDING * thrust));
        // Air power T V_e / 2 over shaft power.
        double jet = Math.sqrt(thrust / (DENSITY * 0.9 * 0.25 * Math.PI * (diameter * diameter - hub * hub)));
        double shaft = scale * rotation * diameter * law.powerCoefficient(0);
        assertThat(0.5 * thrust * jet / shaft).isCloseTo(law.staticEfficiency(), within(ROUNDING));
    }

    @ParameterizedTest(name = "exit {0}")
    @CsvSource({"0.7", "0.8", "0.9", "1.0"})
    void theQuarticsFollowTheLaw(double exit) {
        FanLaw law = new FanLaw(0.064, 0.026, exit, 0.8, 7.1, 600);
        PropellerCurves curves = law.curves();
        for (double j = 0; j < curves.furthestAdvance(); j += 0.01) {
            assertThat(curves.thrustCoefficient(j, 0))
                    .isCloseTo(law.thrustCoefficient(j), within(QUARTIC * law.thrustCoefficient(0)));
            assertThat(curves.powerCoefficient(j, 0))
                    .isCloseTo(law.powerCoefficient(j), within(QUARTIC * law.powerCoefficient(0)));
        }
        assertThat(law.thrustCoefficient(curves.furthestAdvance())).isCloseTo(0, within(ROUNDING));
    }

    @ParameterizedTest(name = "J {0}")
    @CsvSource({"0.2", "0.5", "0.9"})
    void efficiencyIsFroudesTimesTheLosses(double j) {
        FanLaw law = new FanLaw(0.064, 0.026, 0.9, 0.8, 7.1, 600);
        double whole = j * law.thrustCoefficient(j) / law.powerCoefficient(j);
        double froude = 2 / (1 + law.jet(j) / j);
        // Duct losses take a share of jet and inlet energy: below the rotor's efficiency, above half of it.
        assertThat(whole / froude).isBetween(0.5 * 0.8, 0.8);
    }

    /** Thrust in flight is the jet's momentum less the ram drag of the same air: mass flow times airspeed. */
    @ParameterizedTest(name = "{0} m/s")
    @CsvSource({"5", "15", "30"})
    void ramDragIsCounted(double speed) {
        double exit = 0.9 * 0.25 * Math.PI * (0.064 * 0.064 - 0.026 * 0.026);
        FanLaw law = new FanLaw(0.064, 0.026, 0.9, 0.8, 7.1, 600);
        double tip = 600 * 0.064;
        double flow = DENSITY * exit * tip * law.jet(speed / tip);
        double gross = flow * tip * law.jet(speed / tip);
        double thrust = DENSITY * tip * tip * 0.064 * 0.064 * law.thrustCoefficient(speed / tip);
        assertThat(thrust).isCloseTo(gross - flow * speed, within(ROUNDING));
        assertThat(thrust).isLessThan(7.1);
    }

    /** T³ goes as the jet's power squared; intakes of half the annulus lose 0.5 (4 - 1/0.81) more of the pressure between the blades. */
    @Test
    void smallIntakesCostThrust() {
        FanLaw law = new FanLaw(0.064, 0.026, 0.9, 0.8, 7.1, 600);
        assertThat(law.thrustShare(1)).isEqualTo(1);
        assertThat(law.thrustShare(0.9)).isEqualTo(1);
        double whole = 0.8 / law.staticEfficiency();
        double starved = whole + 0.81 * 0.5 * (4 - 1 / 0.81);
        assertThat(StrictMath.pow(law.thrustShare(0.5), 1.5)).isCloseTo(whole / starved, within(ROUNDING));
        assertThat(law.thrustShare(0.8999)).isCloseTo(1, within(1e-3));
        assertThat(law.thrustShare(0)).isBetween(0.0, 0.1);
    }
}
