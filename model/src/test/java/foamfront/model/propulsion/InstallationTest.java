package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
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
        assertThat(Installation.thrustShare(Arrangements.of("pusher").power())).isBetween(0.95, 0.98);
        assertThat(Installation.noise(Arrangements.of("pusher").power())).isGreaterThan(1);
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
