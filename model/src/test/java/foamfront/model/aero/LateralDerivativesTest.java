package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The interpolation against the Fourier series, and the series against its own published elliptic case. */
class LateralDerivativesTest {
    /** What the class promises inside aspect ratios 4 to 16 and tapers 0.3 to 1. */
    private static final double INTERPOLATION = 0.02;

    /** The table's stated accuracy. */
    private static final double TABLE = 0.005;

    /** What the class promises for ailerons on the outer half. */
    private static final double AILERON = 0.06;

    @ParameterizedTest(name = "aspect ratio {0}, taper {1}")
    @CsvSource({"4, 1, 0.4264", "6, 1, 0.5233", "6, 0.5, 0.4866", "8, 1, 0.5914", "8, 0.5, 0.5438"})
    void theSeriesGivesTheTabledDamping(double aspectRatio, double taper, double damping) {
        assertThat(series(aspectRatio, taper, 2 * Math.PI)).isCloseTo(damping, within(TABLE * damping));
        assertThat(-LateralDerivatives.rollDamping(aspectRatio, taper, 1)).isCloseTo(damping, within(1e-9));
    }

    @ParameterizedTest(name = "aspect ratio {0}, taper {1}")
    @CsvSource({"4, 1, 0.701", "6, 1, 0.8515", "6, 0.5, 0.8095", "8, 1, 0.955", "8, 0.5, 0.901"})
    void theSeriesGivesTheTabledDihedralEffect(double aspectRatio, double taper, double effect) {
        double roll =
                FourierLiftingLine.tapered(aspectRatio, taper, Math::signum).roll();
        assertThat(roll).isCloseTo(effect, within(TABLE * effect));
        assertThat(-LateralDerivatives.dihedralEffect(aspectRatio, taper, 1)).isCloseTo(effect, within(1e-9));
    }

    @ParameterizedTest(name = "aspect ratio {0}, taper {1}, slope ratio {2}")
    @CsvSource({"4, 0.5, 1", "5, 0.7, 0.9", "7, 0.3, 1", "9, 0.8, 0.95", "10, 0.4, 0.9", "12, 1, 1", "16, 0.6, 0.9"})
    void interpolatesBetween(double aspectRatio, double taper, double ratio) {
        double damping = series(aspectRatio, taper, 2 * Math.PI * ratio);
        assertThat(-LateralDerivatives.rollDamping(aspectRatio, taper, ratio) / damping)
                .isCloseTo(1, within(INTERPOLATION));
        double dihedral = new FourierLiftingLine(
                        aspectRatio, 2 * Math.PI * ratio, FourierLiftingLine.taperedChord(taper), Math::signum)
                .roll();
        assertThat(-LateralDerivatives.dihedralEffect(aspectRatio, taper, ratio) / dihedral)
                .isCloseTo(1, within(INTERPOLATION));
    }

    @ParameterizedTest(name = "aspect ratio {0}, taper {1}, from {2}")
    @CsvSource({"6, 1, 0.5", "8, 0.6, 0.5", "6, 0.5, 0.4", "10, 0.8, 0.6"})
    void aileronPowerIsNearTheSeries(double aspectRatio, double taper, double from) {
        double roll = FourierLiftingLine.tapered(
                        aspectRatio, taper, eta -> Math.abs(eta) > from ? 0.5 * Math.signum(eta) : 0)
                .roll();
        assertThat(LateralDerivatives.aileronPower(aspectRatio, taper, 1, 0.5, from, 1) / roll)
                .isCloseTo(1, within(AILERON));
    }

    @Test
    void doublingTheAileronAngleDoublesTheRoll() {
        double one = LateralDerivatives.aileronPower(6, 0.5, 1, 0.4, 0.5, 1);
        assertThat(LateralDerivatives.aileronPower(6, 0.5, 1, 0.8, 0.5, 1)).isCloseTo(2 * one, within(1e-12));
    }

    private static double series(double aspectRatio, double taper, double slope) {
        return new FourierLiftingLine(aspectRatio, slope, FourierLiftingLine.taperedChord(taper), eta -> eta).roll();
    }
}
