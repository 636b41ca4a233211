package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Control;
import foamfront.model.airframe.Surface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What trims a flying wing - twist and elevons - at the default resolution against a fine one of the same method. */
class FlyingWingConvergenceTest {
    private static final Resolution FINE = new Resolution(4, 32, 4);

    /** Of the moment at no lift, and of elevon power: eight strips of which a part covers an elevon's end. */
    private static final double TRIM = 0.02;

    /** Of the mean chord. */
    private static final double NEUTRAL_POINT = 0.01;

    @ParameterizedTest(name = "aspect ratio {0}, taper {1}, sweep {2}")
    @CsvSource({"5, 0.9, 20", "6, 0.6, 25", "7, 0.5, 30", "5, 0.7, 35"})
    void twistAndElevonsTrimAlike(double aspectRatio, double taper, double sweep) {
        Surface twisted = TestWings.twisted(TestWings.wing(aspectRatio, taper, sweep), 0, -0.1);
        Surface wing = TestWings.with(twisted, new Control(Control.Kind.ELEVON, 0.2, 0.3, 1));
        LiftingSystem coarse = TestWings.solved(wing);
        LiftingSystem fine = TestWings.solved(FINE, wing);

        assertThat((coarse.neutralPoint() - fine.neutralPoint()) / fine.referenceChord())
                .isCloseTo(0, within(NEUTRAL_POINT));
        double x = fine.neutralPoint();
        assertThat(coarse.fixedMoment(coarse.neutralPoint()) / fine.fixedMoment(x))
                .isCloseTo(1, within(TRIM));
        assertThat(coarse.elevatorMomentSlope(coarse.neutralPoint()) / fine.elevatorMomentSlope(x))
                .isCloseTo(1, within(TRIM));
        assertThat(coarse.lateral().aileronPower() / fine.lateral().aileronPower())
                .isCloseTo(1, within(TRIM));
    }

    /** The cosine series at a hinge of three quarters of the chord, θ = 120 degrees: 2 sin θ. */
    @Test
    void anElevonMovesMaximumLiftByLessThanHalfOfWhatItMovesLift() {
        assertThat(PlainFlap.maximumLiftSlope(0.25)).isCloseTo(Math.sqrt(3), within(1e-12));
        assertThat(PlainFlap.maximumLiftSlope(0.25) / (2 * Math.PI * PlainFlap.effectiveness(0.25)))
                .isBetween(0.4, 0.6);
    }
}
