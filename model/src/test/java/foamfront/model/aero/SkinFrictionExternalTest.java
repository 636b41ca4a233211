package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Flat-plate friction, H. Schlichting, Boundary-Layer Theory, ch. VII and XXI: tabulated from the formulas to five digits. */
class SkinFrictionExternalTest {
    private static final double HALF_DIGIT = 5e-6;

    /** The books' A is printed to four digits. */
    private static final double HALF_UNIT = 0.5;

    @ParameterizedTest(name = "Re {0}")
    @CsvSource({
        "4e4, 0.00664, 0.00886, 0.00897",
        "1e5, 0.00420, 0.00716, 0.00718",
        "2e5, 0.00297, 0.00615, 0.00614",
        "3e5, 0.00242, 0.00566, 0.00562",
        "5e5, 0.00188, 0.00511, 0.00506",
        "1e6, 0.00133, 0.00447, 0.00441",
        "1e7, 0.00042, 0.00300, 0.00293",
    })
    void oneSideOfAFlatPlate(double reynolds, double blasius, double prandtlSchlichting, double schoenherr) {
        assertThat(SkinFriction.laminar(reynolds)).isCloseTo(blasius, within(HALF_DIGIT));
        assertThat(SkinFriction.turbulent(reynolds)).isCloseTo(prandtlSchlichting, within(HALF_DIGIT));
        assertThat(SkinFriction.schoenherr(reynolds)).isCloseTo(schoenherr, within(HALF_DIGIT));
    }

    @Test
    void transitionAtHalfAMillion() {
        double saved = (SkinFriction.turbulent(1e6) - SkinFriction.withTransition(1e6, 5e5)) * 1e6;

        assertThat(saved).isCloseTo(1614, within(HALF_UNIT));
        assertThat(SkinFriction.withTransition(1e6, 5e5)).isCloseTo(0.00286, within(HALF_DIGIT));
    }
}
