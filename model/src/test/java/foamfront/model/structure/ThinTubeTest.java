package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Tubes by Bredt and Batho, derived; tolerances half the last printed digit. */
class ThinTubeTest {
    @Test
    void aBoardTube() {
        ThinTube tube = ThinTube.rectangle(0.065, 0.065, 0.0003);
        assertThat(tube.torsionConstant() * 1e12).isCloseTo(82_387, within(0.51));
        assertThat(180 / Math.PI / (1e9 * tube.torsionConstant())).isCloseTo(0.695, within(0.5e-3));
    }

    @Test
    void aRoundTubeAgainstTheExactRing() {
        double found = new ThinTube(Math.PI * 0.05 * 0.05, 2 * Math.PI * 0.05, 0.001).torsionConstant() * 1e12;
        assertThat(found).isCloseTo(785_398, within(0.5));
        assertThat(found).isCloseTo(785_477, withinPercentage(0.0101));
    }

    @Test
    void aSteelBox() {
        ThinTube box = ThinTube.rectangle(0.1, 0.05, 0.002);
        assertThat(box.torsionConstant() * 1e12).isCloseTo(666_667, within(0.5));
    }
}
