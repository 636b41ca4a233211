package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import org.junit.jupiter.api.Test;

/** The roll to rest against its closed form, s = (m / 2K) ln(1 + K V² / μ W), K = ½ρ (S (C_D − μ C_L) + idle drag area), derived. */
class LandingRollTest {
    /** Of eight steps of Simpson's rule. */
    private static final double STEPS = 1e-3;

    private static final double WEIGHT = 10; // N
    private static final GroundSetting SETTING = new GroundSetting(6, 0.5, 0.12);

    private final TrimmedFlight flight = Flights.of(Arrangements.of("tail wheel"), WEIGHT).flight;

    private double closed(double idle, double friction) {
        double k =
                0.5 * flight.density() * (flight.referenceArea() * (SETTING.drag() - friction * SETTING.lift()) + idle);
        double v = 1.15 * SETTING.stallSpeed();
        return WEIGHT / 9.80665 / (2 * k) * Math.log(1 + k * v * v / (friction * WEIGHT));
    }

    @Test
    void grassAndAirStopIt() {
        for (double friction : new double[] {0.05, 0.10, 0.18}) {
            double exact = closed(0.002, friction);
            assertThat(GroundAndHand.landingRoll(flight, SETTING, 0.002, friction, 0))
                    .isCloseTo(exact, within(STEPS * exact));
        }
    }

    @Test
    void windAndRougherGroundShortenIt() {
        double calm = GroundAndHand.landingRoll(flight, SETTING, 0, 0.10, 0);
        assertThat(GroundAndHand.landingRoll(flight, SETTING, 0, 0.10, 2)).isLessThan(0.6 * calm);
        assertThat(GroundAndHand.landingRoll(flight, SETTING, 0, 0.18, 0)).isLessThan(calm);
        assertThat(GroundAndHand.landingRoll(flight, SETTING, 0.01, 0.10, 0)).isLessThan(calm);
    }

    @Test
    void aFlatterGlideComesInFartherFromTheHedge() {
        assertThat(GroundAndHand.approach(6, 8, 2, 0)).isGreaterThan(GroundAndHand.approach(6, 4, 2, 0));
    }
}
