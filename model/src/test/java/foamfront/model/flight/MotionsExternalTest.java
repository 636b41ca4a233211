package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import org.junit.jupiter.api.Test;

/** A published four-seat light aeroplane at 176 ft/s at sea level: its derivatives in, its modes out. */
class MotionsExternalTest {
    private static final double FOOT = 0.3048;
    private static final double SLUG_FOOT = 1.3558179;
    private static final double SPEED = 176 * FOOT;
    private static final double SPAN = 33.4 * FOOT;
    private static final double MASS = 2750 * 0.45359237;
    private static final double PRESSURE = 0.5 * 1.225 * SPEED * SPEED * 184 * FOOT * FOOT;

    private static final LateralDerivatives PUBLISHED =
            new LateralDerivatives(-0.564, -0.074, -0.410, 0.107, 0.071, -0.0575, -0.125);

    /** The book rounds its derivatives per second to three digits. */
    private static final double ROUNDED = 0.01;

    /** The two-degree approximation against the fourth-order equation. */
    private static final double APPROXIMATE = 0.02;

    /** The spiral hangs on a small difference of products: its derivatives, rounded to three digits, leave 8 % of it open. */
    private static final double DIFFERENCE = 7e-4;

    private static final Validation BOOK = Validation.of(
            Subject.STABILITY,
            "Motions of a published light aeroplane",
            "R. C. Nelson, Flight Stability and Automatic Control, 2nd ed., 1998, examples 4.3 and 5.3 (inputs and results from"
                    + " memory).");

    @Test
    void swingsInPitchAsPublished() {
        ShortPeriod pitch =
                ShortPeriod.of(PRESSURE, 5.7 * FOOT, SPEED, MASS, 3000 * SLUG_FOOT, 4.44, 0.05, -0.683, -9.96, -4.36);
        BOOK.relative("short period, frequency", 3.607, pitch.frequency(), APPROXIMATE, "rad/s")
                .relative("short period, damping", 0.696, pitch.damping(), APPROXIMATE, "");
    }

    @Test
    void rollsAndYawsAsPublished() {
        LateralModes modes = modes(PUBLISHED);
        BOOK.relative("Dutch roll, frequency", 2.385, modes.dutchFrequency(), ROUNDED, "rad/s")
                .relative("Dutch roll, damping", 0.204, modes.dutchDamping(), ROUNDED, "")
                .relative("rolling", -8.435, modes.rollRate(), ROUNDED, "1/s")
                .value("spiral", -0.00877, modes.spiralRate(), DIFFERENCE, "1/s");
    }

    private static LateralModes modes(LateralDerivatives k) {
        return LateralModes.of(k, PRESSURE, SPAN, SPEED, MASS, 1048 * SLUG_FOOT, 3530 * SLUG_FOOT);
    }

    @Test
    void theSpiralDiesOutWhereItsCriterionSaysSo() {
        for (double roll = -0.15; roll < 0; roll += 0.01) {
            LateralDerivatives k = new LateralDerivatives(-0.564, roll, -0.410, 0.107, 0.071, -0.0575, -0.125);
            assertThat(Math.signum(-modes(k).spiralRate())).isEqualTo(Math.signum(k.spiralCriterion()));
        }
    }

    @Test
    void withoutStiffnessItDoesNotSwing() {
        ShortPeriod pitch =
                ShortPeriod.of(PRESSURE, 5.7 * FOOT, SPEED, MASS, 3000 * SLUG_FOOT, 4.44, 0.05, 2, -9.96, -4.36);
        assertThat(pitch.frequency()).isNaN();
        assertThat(pitch.stable()).isFalse();
        // Behind the neutral point by less than damping makes up for: it settles quickly, and drifts all the same.
        ShortPeriod damped =
                ShortPeriod.of(PRESSURE, 5.7 * FOOT, SPEED, MASS, 3000 * SLUG_FOOT, 4.44, 0.05, 0.05, -9.96, -4.36);
        assertThat(damped.frequency()).isPositive();
        assertThat(damped.stable()).isFalse();
        ShortPeriod stiff =
                ShortPeriod.of(PRESSURE, 5.7 * FOOT, SPEED, MASS, 3000 * SLUG_FOOT, 4.44, 0.05, -2, -9.96, -4.36);
        assertThat(stiff.period() * stiff.frequency() * Math.sqrt(1 - stiff.damping() * stiff.damping()))
                .isCloseTo(2 * Math.PI, within(1e-12));
    }
}
