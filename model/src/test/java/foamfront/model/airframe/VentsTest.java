package foamfront.model.airframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import org.junit.jupiter.api.Test;

class VentsTest {
    private static final double ROUNDING = 1e-12;

    @Test
    void twoSquareCentimetresForAHundredWatt() {
        // 20 A over 1.25 at 11.1 V: 177.6 W.
        Vents vents = Vents.of(Samples.trainer());
        assertThat(vents.inlet()).isCloseTo(1.776 * 2e-4, within(ROUNDING));
        assertThat(vents.cut()).isCloseTo(4 * Math.sqrt(3.552e-4) + 4 * Math.sqrt(5.328e-4), within(ROUNDING));
    }

    @Test
    void onlyAControllerInsideABodyNeedsThem() {
        assertThat(Vents.of(Arrangements.of("pusher"))).isEqualTo(Vents.of(Samples.trainer()));
        assertThat(Vents.of(Arrangements.of("twin")).inlet()).isZero();
        assertThat(Vents.of(Arrangements.of("profile")).cut()).isZero();
    }

    @Test
    void aLargerControllerBreathesMore() {
        double once = Vents.of(Samples.trainer()).inlet();
        double twice = Vents.of(Records.scaled(Samples.trainer(), "power.plant.controller.current", 2))
                .inlet();
        assertThat(twice).isCloseTo(2 * once, within(ROUNDING));
    }
}
