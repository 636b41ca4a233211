package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SlipstreamTest {
    private static final double ROUNDING = 1e-12;
    private static final double AREA = 0.05;

    @Test
    void thrustIsTheMomentumGiven() {
        for (double speed : new double[] {0, 4, 15}) {
            double w = Slipstream.atDisc(6, speed, AREA, Plants.DENSITY);
            assertThat(2 * Plants.DENSITY * AREA * (speed + w) * w).isCloseTo(6, within(6 * ROUNDING));
        }
    }

    @Test
    void streamStartsSlowAndDoublesFarBehind() {
        double disc = Slipstream.atDisc(6, 8, AREA, Plants.DENSITY);
        assertThat(Slipstream.behind(6, 8, AREA, Plants.DENSITY, 0)).isCloseTo(disc, within(ROUNDING));
        assertThat(Slipstream.behind(6, 8, AREA, Plants.DENSITY, 100)).isCloseTo(2 * disc, within(1e-5));
        double far = (8 + 2 * disc) / 8;
        assertThat(Slipstream.pressureGain(6, 8, AREA, Plants.DENSITY)).isCloseTo(far * far - 1, within(ROUNDING));
        assertThat(Slipstream.behind(6, 8, AREA, Plants.DENSITY, -100)).isCloseTo(0, within(1e-5));
    }

    @Test
    void streamNarrowsAsItSpeedsUp() {
        double disc = Slipstream.radius(6, 8, AREA, Plants.DENSITY, 0);
        assertThat(Math.PI * disc * disc).isCloseTo(AREA, within(ROUNDING));
        assertThat(Slipstream.radius(6, 0, AREA, Plants.DENSITY, 100)).isCloseTo(disc / Math.sqrt(2), within(1e-5));
        assertThat(Slipstream.radius(0, 0, AREA, Plants.DENSITY, 1)).isEqualTo(disc);
    }

    @Test
    void withoutThrustNothingIsAdded() {
        assertThat(Slipstream.atDisc(-1, 5, AREA, Plants.DENSITY)).isZero();
        assertThat(Slipstream.pressureGain(-1, 5, AREA, Plants.DENSITY)).isZero();
    }
}
