package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.atmosphere.Atmosphere;
import org.junit.jupiter.api.Test;

class LoadFactorTest {
    /** Half the last printed digit of three decimals. */
    private static final double PRINTED = 0.5e-3;

    /** The checks take g as 9.81 m/s², we as 9.80665: 0.034 %. */
    private static final double GRAVITY_DIGITS = 9.81 / Atmosphere.GRAVITY - 1;

    private static final double AREA = 0.25;
    private static final double MASS = 40 * AREA / Atmosphere.GRAVITY;

    private static FlightLoads loads(double stall, double cruise, double top, double gust, double slope) {
        return new FlightLoads(MASS, 0, 0, 1.225, stall, cruise, top, gust, slope, 0, 0);
    }

    /** 14 CFR 23.341 in its old form (from memory), 40 N/m² and 5 m/s of gust at 15 m/s; derived. */
    @Test
    void aGustAtFiveMetresPerSecond() {
        double mu = LoadFactor.massRatio(40, 1.225, 0.2, 4.5);
        assertThat(mu).isCloseTo(7.397, within(PRINTED + 7.397 * GRAVITY_DIGITS));
        assertThat(LoadFactor.alleviation(mu)).isCloseTo(0.5127, within(0.5e-4 + GRAVITY_DIGITS));
        // Slow stall, so that the wing could lift it.
        assertThat(LoadFactor.limit(loads(5, 15, 6, 5, 4.5), AREA, 0.2))
                .isCloseTo(3.649, within(PRINTED + 3.649 * GRAVITY_DIGITS));
    }

    /** K. G. Pratt and W. G. Walker, NACA R-1206, 1954 (from memory), 4 m/s of gust at 12 m/s; derived. */
    @Test
    void aGustAtFourMetresPerSecond() {
        double sharp = LoadFactor.sharpGust(40, 1.225, 12, 4, 4.2);
        double mu = LoadFactor.massRatio(40, 1.225, 0.2083, 4.2);
        assertThat(sharp).isCloseTo(3.087, within(PRINTED));
        assertThat(mu).isCloseTo(7.611, within(PRINTED + 7.611 * GRAVITY_DIGITS));
        assertThat(LoadFactor.alleviation(mu)).isCloseTo(0.5187, within(0.5e-4 + GRAVITY_DIGITS));
        assertThat(LoadFactor.alleviation(mu) * sharp).isCloseTo(1.601, within(PRINTED));
    }

    @Test
    void aPullUpOfFourWhereTheGustIsLess() {
        assertThat(LoadFactor.limit(loads(6, 10, 15, 2, 4.5), AREA, 0.2)).isEqualTo(4);
    }

    @Test
    void noMoreThanTheWingCanLift() {
        // Top 1.5, cruise 1.3 stall speeds: 2.25 g, although pull-up and gust would have more.
        assertThat(LoadFactor.limit(loads(10, 13, 15, 8, 4.5), AREA, 0.2)).isCloseTo(2.25, within(1e-12));
        assertThat(LoadFactor.limit(loads(10, 13, 9, 0, 4.5), AREA, 0.2)).isEqualTo(1);
    }

    @Test
    void aTouchDownAtOneMetrePerSecondIsThreeToFiveG() {
        // Hand-thrown models land at 3 to 5 g (common practice).
        assertThat(LoadFactor.landing()).isBetween(3.0, 5.0);
    }
}
