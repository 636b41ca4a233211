package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.parts.Board;
import foamfront.model.parts.Provenance;
import org.junit.jupiter.api.Test;

class StripTestTest {
    private static final Board BOARD =
            new Board("strip", 4.8e-3, 0.3, 0.762, 0.508, 0.15e-3, 3e9, 12e6, 10e6, 3e6, 1, Provenance.INVENTED);
    private static final StripTest TEST = new StripTest(0.05, 0.3, 0.1);

    /** Closed form worked by hand with g = 9.81: 2.233 mm of bending and 0.102 mm of shear. */
    @Test
    void aStripOf50MillimetresSags2335Micrometres() {
        assertThat(TEST.sag(BOARD)).isCloseTo(2.335e-3, within(2e-6));
    }

    @Test
    void theSagGivesThePapersModulusBack() {
        assertThat(TEST.faceModulus(BOARD, TEST.sag(BOARD))).isCloseTo(3e9, within(1.0));
        assertThat(TEST.faceModulus(BOARD, 1.4 * TEST.sag(BOARD))).isBetween(1.8e9, 2.3e9);
    }

    @Test
    void aSagThatShearAloneExplainsIsRefused() {
        assertThatThrownBy(() -> TEST.faceModulus(BOARD, 0.1e-3)).hasMessageContaining("no paper explains");
        assertThatThrownBy(() -> TEST.faceModulus(BOARD, 0.5)).hasMessageContaining("no paper explains");
    }
}
