package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Intakes;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InstallationTest {
    private static final double ROUNDING = 1e-9;

    @Test
    void aBodyBehindThePropellerSlowsItsAirAndAPusherLosesThrust() {
        // 0.329 times body section over diameter squared.
        var trainer = Arrangements.of("trainer");
        double section = trainer.body().width() * trainer.body().height();
        assertThat(Installation.inflow(trainer)).isCloseTo(1 - 0.329 * section / (0.2286 * 0.2286), within(ROUNDING));
        assertThat(Installation.inflow(Arrangements.of("pusher"))).isEqualTo(1);
        assertThat(Installation.thrustShare(Airframe.of(Arrangements.of("pusher"))))
                .isBetween(0.95, 0.98);
        assertThat(Installation.noise(Arrangements.of("pusher").power())).isGreaterThan(1);
    }

    /** Two openings of 48 mm by half a diameter are more than the annulus; those of 10 mm are 0.24 of it. */
    @Test
    void aFanInALowBodyStarvesByDegrees() {
        Design design = Arrangements.of("fan");
        double diameter = Samples.fan().diameter();
        double annulus = Samples.fan().annulus();
        double wall = Airframe.of(design).body().wall();
        assertThat(thrustShare(design)).isEqualTo(1);
        double last = 1;
        for (double inside = 0.06; inside > 0.02; inside -= 0.002) {
            Design lower = Records.with(design, "body.height", inside + 2 * wall);
            double ratio = Math.min(1, (inside - 0.02) * diameter / annulus);
            assertThat(Intakes.ratio(Airframe.of(lower).body(), Samples.fan())).isCloseTo(ratio, within(ROUNDING));
            assertThat(thrustShare(lower)).isLessThanOrEqualTo(last).isPositive();
            assertThat(ratio < 0.9).isEqualTo(thrustShare(lower) < 1);
            last = thrustShare(lower);
        }
        assertThat(last).isLessThan(0.3);
    }

    private static double thrustShare(Design design) {
        return Installation.thrustShare(Airframe.of(design));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void slowerAirIsTheSameAsSlowerFlight(long seed) {
        PowerTrain bare = PowerTrain.of(Plants.random(seed), 1, Factors.NOMINAL, Plants.DENSITY, 0.3);
        PowerTrain fitted = PowerTrain.of(Plants.random(seed), 1, Factors.NOMINAL, Plants.DENSITY, 0.3);
        fitted.install(0.9, 0.95);
        OperatingPoint alone = bare.fullThrottle(9.5, 0.7);
        OperatingPoint installed = fitted.fullThrottle(10, 0.7);
        assertThat(installed.thrust()).isCloseTo(0.9 * alone.thrust(), within(ROUNDING));
        assertThat(installed.batteryCurrent()).isCloseTo(alone.batteryCurrent(), within(ROUNDING));
    }

    @Test
    void coldSagsMoreAndHoldsLess() {
        assertThat(Cold.resistance(288.15)).isEqualTo(1);
        assertThat(Cold.capacity(288.15)).isEqualTo(1);
        // The pack at its freezing point, 10 K above the air.
        assertThat(Cold.resistance(263.15)).isCloseTo(2, within(ROUNDING));
        assertThat(Cold.capacity(268.15)).isCloseTo(0.9, within(ROUNDING));
        PowerTrain warm = PowerTrain.of(Plants.everyday(), 1, Factors.NOMINAL, Plants.DENSITY, 0);
        PowerTrain cold = PowerTrain.of(Plants.everyday(), 1, Factors.NOMINAL, Plants.DENSITY, 0);
        cold.chill(273.15);
        assertThat(cold.fullThrottle(0, 0.5).batteryVoltage())
                .isLessThan(warm.fullThrottle(0, 0.5).batteryVoltage());
        assertThat(cold.capacity()).isLessThan(warm.capacity());
    }

    @Test
    void packsSideBySideSagHalfAsMuchAndHoldTwice() {
        var one = Plants.battery("3S 2200");
        var two = one.parallel(2);
        assertThat(two.capacity()).isEqualTo(2 * one.capacity());
        assertThat(two.cellResistance()).isEqualTo(one.cellResistance() / 2);
        assertThat(Loads.battery(two, 20)).isCloseTo(0.5 * Loads.battery(one, 20), within(ROUNDING));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aThrottleGivesTheThrustThatHoldsIt(long seed) {
        PowerTrain train = PowerTrain.of(Plants.random(seed), 2, Factors.NOMINAL, Plants.DENSITY, 0.3);
        train.solveThrottle(0.6, 3, 0.7);
        double current = train.batteryCurrent();
        double thrust = train.thrust();
        train.solveHolding(thrust, 3, 0.7);
        // Both solve to 1e-7 in speed; current goes with its square and more.
        assertThat(train.throttle()).isCloseTo(0.6, within(1e-6));
        assertThat(train.batteryCurrent()).isCloseTo(current, within(1e-5 * current));
    }
}
