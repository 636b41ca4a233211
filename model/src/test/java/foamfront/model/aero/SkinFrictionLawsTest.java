package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SkinFrictionLawsTest {
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest(name = "transition at {0}")
    @ValueSource(doubles = {5e4, 1e5, 3e5, 5e5, 1e6})
    void mixedFrictionLiesBetweenLaminarAndTurbulentAndIsNeverNegative(double transition) {
        for (double reynolds = 2e4; reynolds < 1e7; reynolds *= 1.1) {
            assertThat(SkinFriction.withTransition(reynolds, transition))
                    .isPositive()
                    .isGreaterThanOrEqualTo(SkinFriction.laminar(reynolds) * (1 - ROUNDING))
                    .isLessThanOrEqualTo(SkinFriction.turbulent(reynolds));
        }
    }

    @Test
    void frictionIsContinuousAtTransition() {
        assertThat(SkinFriction.withTransition(5e5 * (1 + ROUNDING), 5e5))
                .isCloseTo(SkinFriction.laminar(5e5), within(ROUNDING));
    }

    @Test
    void frictionFallsWithReynoldsNumberInEachRegime() {
        for (double reynolds = 2e4; reynolds < 1e7; reynolds *= 1.1) {
            assertThat(SkinFriction.laminar(1.1 * reynolds)).isLessThan(SkinFriction.laminar(reynolds));
            assertThat(SkinFriction.turbulent(1.1 * reynolds)).isLessThan(SkinFriction.turbulent(reynolds));
            assertThat(SkinFriction.schoenherr(1.1 * reynolds)).isLessThan(SkinFriction.schoenherr(reynolds));
        }
    }

    @Test
    void schoenherrSatisfiesHisOwnEquation() {
        for (double reynolds = 2e4; reynolds < 1e8; reynolds *= 2) {
            double friction = SkinFriction.schoenherr(reynolds);
            assertThat(0.242 / Math.sqrt(friction)).isCloseTo(StrictMath.log10(reynolds * friction), within(ROUNDING));
        }
    }
}
