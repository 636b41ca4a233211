package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.design.PowerPlant;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Propeller;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold between two equilibria, over two hundred combinations of the catalogue's parts. */
class PowerRelationsLawsTest {
    private static final int CASES = 200;

    /** An equilibrium is solved for to about the square of 1e-7 of its rotation. */
    private static final double SOLVED = 1e-7;

    /** Sums of a few terms. */
    private static final double ROUNDING = 1e-12;

    /**
     * No part gives more than it takes: shaft over motor input, motor input over battery power, thrust power over shaft
     * power.
     */
    @Test
    void everyEfficiencyIsAShare() {
        for (int seed = 0; seed < CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            PowerTrain train = PowerTrain.of(Plants.random(seed), 1, Factors.NOMINAL, Plants.DENSITY, 0);
            double speed = random.nextDouble(3, 15);
            double most = train.fullThrottle(speed, 0.7).thrust();
            OperatingPoint p = most > 0
                    ? train.holding(random.nextDouble(0.05, 0.99) * most, speed, 0.7)
                    : train.fullThrottle(speed, 0.7);
            assertThat(p.shaftPower() / p.motorInput()).isBetween(0.0, 1.0);
            assertThat(p.motorInput() / p.electricalPower()).isBetween(0.0, 1.0);
            assertThat(Math.max(0, p.thrust()) * speed).isLessThanOrEqualTo(p.shaftPower());
        }
    }

    /**
     * At one advance ratio twice the rotation gives four times the thrust for eight times the power. Above the measured speeds
     * the coefficients' speed term stands still, so the law is exact there.
     */
    @Test
    void twiceTheRotationIsFourTimesTheThrustAndEightTimesThePower() {
        for (int seed = 0; seed < CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Propeller propeller = Plants.random(seed).propeller();
            double n = random.nextDouble(1.01, 1.5) * propeller.curves().highestSpeed();
            double advance = random.nextDouble(0, 0.35);
            OperatingPoint slow = turning(propeller, n, advance, Plants.DENSITY);
            OperatingPoint fast = turning(propeller, 2 * n, advance, Plants.DENSITY);
            assertThat(fast.thrust() / slow.thrust()).isCloseTo(4, within(SOLVED));
            assertThat(fast.shaftPower() / slow.shaftPower()).isCloseTo(8, within(SOLVED));
        }
    }

    /** In air k times as dense a propeller turning as fast pulls k times as hard for k times the power. */
    @Test
    void forcesGrowWithTheDensityOfTheAir() {
        for (int seed = 0; seed < CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Propeller propeller = Plants.random(seed).propeller();
            double n = random.nextDouble(0.5, 1.5) * propeller.curves().highestSpeed();
            double advance = random.nextDouble(0, 0.35);
            double k = random.nextDouble(0.6, 1.3);
            OperatingPoint thick = turning(propeller, n, advance, Plants.DENSITY);
            OperatingPoint thin = turning(propeller, n, advance, k * Plants.DENSITY);
            assertThat(thin.thrust() / thick.thrust()).isCloseTo(k, within(SOLVED));
            assertThat(thin.shaftPower() / thick.shaftPower()).isCloseTo(k, within(SOLVED));
        }
    }

    /** With a motor and a battery strong enough for any speed, so that only the propeller is looked at. */
    private static OperatingPoint turning(Propeller propeller, double n, double advance, double density) {
        var curves = propeller.curves();
        double d = propeller.diameter();
        double thrust = density * n * n * d * d * d * d * curves.thrustCoefficient(advance, curves.speedTerm(n));
        PowerTrain train = PowerTrain.of(Plants.strong(propeller), 1, Factors.NOMINAL, density, 0);
        OperatingPoint point = train.holding(thrust, advance * n * d, 0.8);
        assertThat(point.reached()).isTrue();
        assertThat(point.rotation() / n).isCloseTo(1, within(SOLVED));
        return point;
    }

    /** An ideal battery of twice the charge and no more mass, down to the same state of charge, holds a thrust twice as long. */
    @Test
    void twiceTheChargeLastsTwiceAsLong() {
        for (int seed = 0; seed < CASES; seed++) {
            PowerPlant plant = Plants.random(seed);
            PowerPlant larger = new PowerPlant(
                    plant.motor(),
                    plant.propeller(),
                    Plants.withCapacity(plant.battery(), 2 * plant.battery().capacity()),
                    plant.controller());
            double speed = new SplittableRandom(seed).nextDouble(4, 12);
            PowerTrain train = PowerTrain.of(plant, 1, Factors.NOMINAL, Plants.DENSITY, 0.3);
            train.solveFullThrottle(speed, 0.05);
            double thrust = 0.5 * train.thrust();
            double once = Discharge.endurance(train, thrust, speed, 1, 0.05);
            PowerTrain more = PowerTrain.of(larger, 1, Factors.NOMINAL, Plants.DENSITY, 0.3);
            double twice = Discharge.endurance(more, thrust, speed, 1, 0.05);
            assertThat(twice).isCloseTo(2 * once, within(ROUNDING * twice));
        }
    }
}
