package foamfront.model.propulsion;

import static foamfront.model.units.Unit.REVOLUTION_PER_MINUTE;
import static foamfront.model.units.Unit.RPM_PER_VOLT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.factors.Factors;
import foamfront.model.parts.Motor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Closed forms of the three-constant motor, with a no-load current that does not grow; figures derived. */
class MotorLawTest {
    /** Half the last digit of the coarsest printed figure. */
    private static final double CURRENT = 5e-4;

    private static final double EFFICIENCY = 5e-5;
    private static final double TORQUE = 5.1e-5;
    private static final double POWER = 0.051;

    /** Speeds are printed to 1 rpm. */
    private static final double SPEED = 0.51;

    private static final double ROUNDING = 1e-12;

    private static MotorLaw constant(double rpmPerVolt, double resistance, double noLoadCurrent) {
        return new MotorLaw(RPM_PER_VOLT.toSi(rpmPerVolt), resistance, noLoadCurrent, 0);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "1000, 0.090, 0.8, 11.1, 9.933, 0.8454, 10206, 0.0872, 93.2",
        "760, 0.045, 1.1, 11.1, 16.472, 0.8709, 7872.7, 0.1931, 159.2",
        "900, 0.142, 0.52, 11.1, 6.376, 0.8435, 9175, 0.0621, 59.7",
        "830, 0.042, 1.06, 14.8, 19.327, 0.8933, 11610, 0.2102, 255.5"
    })
    void bestEfficiencyIsWhereTheClosedFormSays(
            double kv,
            double r,
            double i0,
            double volts,
            double amperes,
            double efficiency,
            double rpm,
            double torque,
            double power) {
        MotorLaw motor = constant(kv, r, i0);
        double best = Math.sqrt(volts * i0 / r);
        double omega = motor.speed(volts, best);
        double root = 1 - Math.sqrt(i0 * r / volts);
        assertThat(best).isCloseTo(amperes, within(CURRENT));
        assertThat(motor.efficiency(volts, best))
                .isCloseTo(root * root, within(ROUNDING))
                .isCloseTo(efficiency, within(EFFICIENCY))
                .isGreaterThan(motor.efficiency(volts, 0.98 * best))
                .isGreaterThan(motor.efficiency(volts, 1.02 * best));
        assertThat(REVOLUTION_PER_MINUTE.fromSi(omega / (2 * Math.PI))).isCloseTo(rpm, within(SPEED));
        assertThat(motor.torque(best, omega)).isCloseTo(torque, within(TORQUE));
        assertThat(motor.torque(best, omega) * omega).isCloseTo(power, within(POWER));
    }

    @Test
    void shaftPowerIsGreatestHalfwayToStall() {
        MotorLaw motor = constant(1000, 0.09, 0.8);
        double current = 0.5 * (11.1 / 0.09 + 0.8);
        double power = motor.torque(current, motor.speed(11.1, current)) * motor.speed(11.1, current);
        assertThat(current).isCloseTo(62.07, within(0.0051));
        assertThat(power).isCloseTo(337.8, within(POWER));
        assertThat(motor.efficiency(11.1, current)).isCloseTo(0.490, within(5.1e-4));
        for (double other : new double[] {0.95 * current, 1.05 * current}) {
            assertThat(motor.torque(other, motor.speed(11.1, other)) * motor.speed(11.1, other))
                    .isLessThan(power);
        }
    }

    @Test
    void limitsHold() {
        MotorLaw motor = constant(1000, 0.09, 0.8);
        assertThat(motor.torque(0.8, 500)).isCloseTo(0, within(ROUNDING));
        assertThat(motor.speed(11.1, 0)).isCloseTo(motor.speedConstant() * 11.1, within(1e-9));
        assertThat(motor.efficiency(11.1, 0.8)).isCloseTo(0, within(ROUNDING));
        assertThat(motor.efficiency(11.1, 11.1 / 0.09)).isCloseTo(0, within(ROUNDING));
    }

    @Test
    void voltageAndCurrentUndoEachOther() {
        MotorLaw motor = MotorLaw.of(Plants.motor("2212-1000"), Factors.NOMINAL);
        double volts = motor.voltage(7, 600);
        assertThat(motor.current(volts, 600)).isCloseTo(7, within(1e-9));
        assertThat(motor.currentForTorque(motor.torque(7, 600), 600)).isCloseTo(7, within(1e-9));
        double unloaded = motor.unloadedSpeed(11.1);
        assertThat(motor.current(11.1, unloaded)).isCloseTo(motor.noLoadCurrent(unloaded), within(1e-9));
    }

    @Test
    void noLoadCurrentIsTheQuotedOneAtTheQuotedVoltageAndGrows() {
        Motor motor = Plants.motor("2212-1000");
        MotorLaw law = MotorLaw.of(motor, Factors.NOMINAL);
        double quoted = motor.speedConstant() * motor.noLoadVoltage();
        assertThat(law.noLoadCurrent(quoted)).isCloseTo(motor.noLoadCurrent(), within(ROUNDING));
        // Motors usually show 30 to 60 % from 8 V to 16 V, from memory.
        assertThat(law.noLoadCurrent(1.6 * quoted) / law.noLoadCurrent(0.8 * quoted))
                .isBetween(1.3, 1.6);
    }
}
