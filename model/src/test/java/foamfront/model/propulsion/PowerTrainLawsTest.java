package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.design.PowerPlant;
import foamfront.model.factors.Factors;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for any motor, propeller, controller and battery, over catalogue combinations by seed. */
class PowerTrainLawsTest {
    /** Newton's last step leaves about the square of 1e-7 of n; balances are differences of like numbers. */
    private static final double BALANCE = 1e-9;

    private static final int COMBINATIONS = 500;
    private static final double AUXILIARY = 0.4;
    private static final double[] SPEEDS = {0, 3, 8, 14, 25, 40};
    private static final double[] STATES = {1, 0.6, 0.3, 0.2, 0.05};

    private static PowerTrain train(long seed) {
        return PowerTrain.of(Plants.random(seed), 1 + (int) (seed % 2), Factors.NOMINAL, Plants.DENSITY, AUXILIARY);
    }

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @Test
    void fiveHundredCombinationsRunOrNameTheirFailure() {
        int reached = 0;
        int named = 0;
        for (long seed = 0; seed < COMBINATIONS; seed++) {
            PowerTrain train = train(seed);
            SplittableRandom random = new SplittableRandom(seed);
            for (double speed : SPEEDS) {
                for (double state : STATES) {
                    OperatingPoint full = train.fullThrottle(speed, state);
                    assertFinite(full);
                    assertThat(full.outcome()).isEqualTo(Outcome.REACHED);
                    OperatingPoint held = train.holding(random.nextDouble(0.01, 12), speed, state);
                    assertFinite(held);
                    if (held.reached()) {
                        reached++;
                        assertThat(held.throttle()).isBetween(0.0, 1.0);
                    } else {
                        named++;
                        assertThat(held.outcome().words()).isNotEmpty();
                        assertThat(held.thrust()).isEqualTo(full.thrust());
                    }
                }
            }
        }
        assertThat(reached).isGreaterThan(COMBINATIONS);
        assertThat(named).isGreaterThan(COMBINATIONS);
    }

    private static void assertFinite(OperatingPoint p) {
        double[] figures = {
            p.thrust(),
            p.rotation(),
            p.throttle(),
            p.motorCurrent(),
            p.motorVoltage(),
            p.batteryCurrent(),
            p.batteryVoltage(),
            p.shaftPower(),
            p.torque(),
            p.advanceRatio()
        };
        for (double figure : figures) {
            assertThat(figure).isFinite();
        }
        assertThat(p.shaftPower()).isNotNegative();
        assertThat(p.batteryVoltage()).isPositive();
        assertThat(p.motorCurrent()).isNotNegative();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void torquesBalance(long seed) {
        PowerPlant plant = Plants.random(seed);
        MotorLaw motor = MotorLaw.of(plant.motor(), Factors.NOMINAL);
        PowerTrain train = train(seed);
        for (double speed : SPEEDS) {
            OperatingPoint p = train.fullThrottle(speed, 0.7);
            double omega = 2 * Math.PI * p.rotation();
            double scale = motor.torque(2 * p.motorCurrent(), omega);
            assertThat(motor.torque(p.motorCurrent(), omega)).isCloseTo(p.torque(), within(BALANCE * scale));
            assertThat(motor.voltage(p.motorCurrent(), omega))
                    .isCloseTo(p.motorVoltage(), within(BALANCE * p.batteryVoltage()));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void batteryPowerIsShaftPowerAndLosses(long seed) {
        PowerPlant plant = Plants.random(seed);
        int motors = 1 + (int) (seed % 2);
        MotorLaw motor = MotorLaw.of(plant.motor(), Factors.NOMINAL);
        PowerTrain train = train(seed);
        double most = train.fullThrottle(6, 0.6).thrust();
        for (double share : new double[] {0.05, 0.3, 0.7, 0.98}) {
            OperatingPoint p = train.holding(share * most, 6, 0.6);
            double omega = 2 * Math.PI * p.rotation();
            double current = p.motorCurrent();
            double copper = current * current * motor.resistance();
            double idle = motor.noLoadCurrent(omega) * omega / motor.speedConstant();
            double switches = current * current * plant.controller().resistance();
            double through = (p.motorVoltage() + current * plant.controller().resistance()) * current;
            double chopping = PowerTrain.PART_THROTTLE_LOSS * (1 - p.throttle()) * through;
            double radio = AUXILIARY * p.batteryVoltage();
            assertThat(p.reached()).isTrue();
            assertThat(p.electricalPower())
                    .isCloseTo(
                            p.shaftPower() + motors * (copper + idle + switches + chopping) + radio,
                            within(BALANCE * p.electricalPower()));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void moreThrustTakesMoreOfEverything(long seed) {
        PowerTrain train = train(seed);
        for (double speed : new double[] {0, 7, 12}) {
            double most = train.fullThrottle(speed, 0.8).thrust();
            OperatingPoint before = train.holding(0.04 * most, speed, 0.8);
            for (int i = 2; i <= 25 && most > 0; i++) {
                OperatingPoint now = train.holding(0.0399 * i * most, speed, 0.8);
                assertThat(now.reached()).isTrue();
                assertThat(now.rotation()).isGreaterThan(before.rotation());
                assertThat(now.throttle()).isGreaterThan(before.throttle());
                assertThat(now.batteryCurrent()).isGreaterThan(before.batteryCurrent());
                before = now;
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void holdingFullThrottlesThrustIsFullThrottle(long seed) {
        PowerTrain train = train(seed);
        OperatingPoint full = train.fullThrottle(5, 0.9);
        OperatingPoint held = train.holding(full.thrust() * (1 - BALANCE), 5, 0.9);
        assertThat(held.reached()).isTrue();
        assertThat(held.throttle()).isCloseTo(1, within(1e-7));
        assertThat(held.batteryCurrent()).isCloseTo(full.batteryCurrent(), within(1e-7 * full.batteryCurrent()));
        assertThat(train.holding(full.thrust() * 1.001, 5, 0.9).outcome()).isEqualTo(Outcome.BEYOND_FULL_THROTTLE);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void twiceTheSpeedAtOneAdvanceRatioIsFourTimesTheThrustAndEightTimesThePower(long seed) {
        var plant = Plants.random(seed);
        // Above the measured speeds the speed term stands still, so the law is exact there.
        double n = 1.01 * plant.propeller().curves().highestSpeed();
        OperatingPoint slow = atRotation(plant, n, 0.3);
        OperatingPoint fast = atRotation(plant, 2 * n, 0.3);
        assertThat(fast.thrust() / slow.thrust()).isCloseTo(4, within(1e-7));
        assertThat(fast.shaftPower() / slow.shaftPower()).isCloseTo(8, within(1e-7));
    }

    private static OperatingPoint atRotation(PowerPlant plant, double n, double j) {
        // A motor and battery strong enough for any speed: only the propeller is looked at.
        var curves = plant.propeller().curves();
        double d = plant.propeller().diameter();
        double thrust = Plants.DENSITY * n * n * d * d * d * d * curves.thrustCoefficient(j, curves.speedTerm(n));
        var strong = PowerTrain.of(Plants.strong(plant.propeller()), 1, Factors.NOMINAL, Plants.DENSITY, 0);
        OperatingPoint point = strong.holding(thrust, j * n * d, 0.8);
        assertThat(point.reached()).isTrue();
        assertThat(point.advanceRatio()).isCloseTo(j, within(1e-9));
        return point;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void resultsDoNotDependOnEarlierCalls(long seed) {
        PowerTrain used = train(seed);
        used.fullThrottle(20, 0.2);
        used.holding(3, 4, 0.5);
        used.prepare(Plants.everyday(), 1, Factors.NOMINAL, 1.1, 0.1);
        used.fullThrottle(1, 0.9);
        used.prepare(Plants.random(seed), 1 + (int) (seed % 2), Factors.NOMINAL, Plants.DENSITY, AUXILIARY);
        assertThat(used.fullThrottle(9, 0.9)).isEqualTo(train(seed).fullThrottle(9, 0.9));
        assertThat(used.holding(1, 9, 0.9)).isEqualTo(train(seed).holding(1, 9, 0.9));
    }

    @Test
    void noThrustIsSpuriousPastThePitchSpeed() {
        for (var propeller : Plants.PROPELLERS) {
            var curves = propeller.curves();
            for (double n : new double[] {20, 60, 100, 200}) {
                double l = curves.speedTerm(n);
                double far = curves.furthestAdvance();
                double before = curves.thrustCoefficient(far, l);
                for (double j = far + 0.01; j < 6; j += 0.05) {
                    double now = curves.thrustCoefficient(j, l);
                    assertThat(now).as(propeller.name()).isLessThan(before);
                    assertThat(curves.powerCoefficient(j, l)).isNotNegative();
                    before = now;
                }
                assertThat(before).isNegative();
            }
        }
    }

    /** What makes each equilibrium the only one: at any airspeed thrust and torque rise with rotation. */
    @Test
    void thrustAndTorqueRiseWithRotation() {
        for (var propeller : Plants.PROPELLERS) {
            var curves = propeller.curves();
            for (double speed : SPEEDS) {
                double thrust = 0;
                double torque = 0;
                for (double n = 5; n < 400; n += 0.5) {
                    double j = speed / (n * propeller.diameter());
                    double l = curves.speedTerm(n);
                    double nextThrust = n * n * curves.thrustCoefficient(j, l);
                    double nextTorque = n * n * curves.powerCoefficient(j, l);
                    assertThat(nextTorque).as(propeller.name()).isGreaterThanOrEqualTo(torque);
                    if (nextThrust > 0) {
                        assertThat(nextThrust).as(propeller.name()).isGreaterThan(thrust);
                    } else {
                        assertThat(thrust).as(propeller.name()).isLessThanOrEqualTo(0);
                    }
                    thrust = Math.max(0, nextThrust);
                    torque = nextTorque;
                }
            }
        }
    }

    @Test
    void withoutNeedOfThrustOnlyTheRadioDraws() {
        PowerTrain train = train(3);
        OperatingPoint still = train.holding(0, 10, 0.7);
        assertThat(still.reached()).isTrue();
        assertThat(still.batteryCurrent()).isEqualTo(AUXILIARY);
        assertThat(train.holding(-2, 10, 0.7)).isEqualTo(still);
    }

    @Test
    void everyFactorMovesWhatItShould() {
        PowerPlant plant = Plants.everyday();
        double thrust = full(plant, Factors.NOMINAL).thrust();
        assertThat(full(plant, factors(1.05, 1, 1, 1)).thrust()).isGreaterThan(thrust);
        assertThat(full(plant, factors(1, 1.05, 1, 1)).thrust()).isLessThan(thrust);
        assertThat(full(plant, factors(1, 1, 1.05, 1)).thrust()).isLessThan(thrust);
        assertThat(full(plant, factors(1, 1, 1, 1.05)).thrust()).isLessThan(thrust);
    }

    private static OperatingPoint full(PowerPlant plant, Factors factors) {
        return PowerTrain.of(plant, 1, factors, Plants.DENSITY, AUXILIARY).fullThrottle(0, 0.8);
    }

    private static Factors factors(double thrust, double power, double motor, double battery) {
        return new Factors(1, 1, 1, 1, thrust, power, motor, 1, battery, 1, 1, 1, 1, 1, 1);
    }
}
