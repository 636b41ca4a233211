package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.design.PowerPlant;
import foamfront.model.factors.Factors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DischargeTest {
    /** What three Gauss points leave against 2000 steps, down to the usual reserve. */
    private static final double QUADRATURE = 1e-3;

    private static final double ROUNDING = 1e-12;
    private static final double SPEED = 9;

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    private static PowerTrain train(PowerPlant plant) {
        return PowerTrain.of(plant, 1, Factors.NOMINAL, Plants.DENSITY, 0.3);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void threePointsFollowTheDischarge(long seed) {
        PowerTrain train = train(Plants.random(seed));
        train.solveFullThrottle(SPEED, Discharge.RESERVE);
        double thrust = 0.6 * train.thrust();
        int steps = 2000;
        double used = 1 - Discharge.RESERVE;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            train.solveHolding(thrust, SPEED, Discharge.RESERVE + used * (i + 0.5) / steps);
            sum += 1 / train.batteryCurrent();
        }
        double fine = train.capacity() * used * sum / steps;
        assertThat(Discharge.endurance(train, thrust, SPEED, 1, Discharge.RESERVE))
                .isCloseTo(fine, within(QUADRATURE * fine));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void twiceTheCapacityLastsTwiceAsLong(long seed) {
        PowerPlant plant = Plants.random(seed);
        PowerPlant larger = new PowerPlant(
                plant.motor(),
                plant.propeller(),
                Plants.withCapacity(plant.battery(), 2 * plant.battery().capacity()),
                plant.controller());
        PowerTrain train = train(plant);
        train.solveFullThrottle(SPEED, 0.05);
        double thrust = 0.5 * train.thrust();
        double once = Discharge.endurance(train, thrust, SPEED, 1, 0.05);
        double twice = Discharge.endurance(train(larger), thrust, SPEED, 1, 0.05);
        assertThat(twice).isCloseTo(2 * once, within(ROUNDING * twice));
    }

    @Test
    void capacityFactorLengthensFlight() {
        Factors more = new Factors(1, 1, 1, 1, 1, 1, 1, 1.05, 1, 1, 1, 1, 1, 1, 1);
        PowerPlant plant = Plants.everyday();
        double nominal = Discharge.endurance(train(plant), 1, SPEED, 1, 0.2);
        PowerTrain better = PowerTrain.of(plant, 1, more, Plants.DENSITY, 0.3);
        assertThat(Discharge.endurance(better, 1, SPEED, 1, 0.2)).isCloseTo(1.05 * nominal, within(ROUNDING * nominal));
    }

    @Test
    void whatCannotBeHeldLastsNoTimeAndSaysWhy() {
        PowerTrain train = train(Plants.everyday());
        assertThat(Discharge.endurance(train, 50, SPEED, 1, 0.2)).isZero();
        assertThat(train.outcome()).isEqualTo(Outcome.BEYOND_FULL_THROTTLE);
        assertThat(Discharge.endurance(train, 1, SPEED, 0.2, 0.2)).isZero();
    }

    @Test
    void fullThrottleTakesItsChargeInTime() {
        PowerTrain train = train(Plants.everyday());
        double state = 1;
        double step = 0.1;
        for (int i = 0; i < 300; i++) {
            train.solveFullThrottle(SPEED, state);
            state -= train.batteryCurrent() * step / train.capacity();
        }
        assertThat(Discharge.afterFullThrottle(train, SPEED, 30, 1)).isCloseTo(state, within(1e-4));
        assertThat(state).isBetween(0.85, 0.97);
    }

    /**
     * With Peukert exponent 1: L.W. Traub, "Range and Endurance Estimates for Battery-Powered Aircraft",
     * Journal of Aircraft 48(2), 2011, 703-707, inputs from memory, figures derived. A lossless train at constant voltage
     * is the closed form t = η V C / P; the integral reduces to it where current does not change.
     */
    @Test
    void constantPowerGivesTheClosedFormOfEndurance() {
        double weight = 9.34;
        double area = 0.32;
        double k = 0.13;
        double drag = 0.015;
        double root = 2 * weight * Math.sqrt(k / 3);
        double power = 2 / Math.sqrt(Plants.DENSITY * area) * Math.sqrt(Math.sqrt(drag)) * root * Math.sqrt(root);
        assertThat(power).isCloseTo(8.572, within(5.1e-4));
        double hours = 0.5 * 11.1 * 1 / power;
        assertThat(hours).isCloseTo(0.6474, within(5.1e-5));

        PowerTrain train = train(Plants.everyday());
        train.solveHolding(1, SPEED, 0.5);
        double constant = train.capacity() * 0.02 / train.batteryCurrent();
        assertThat(Discharge.endurance(train, 1, SPEED, 0.51, 0.49)).isCloseTo(constant, within(1e-5 * constant));
    }
}
