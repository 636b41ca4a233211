package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Surface;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Induced drag near the ground against the image integral, Wieselsberger's fit and the lifting system's own image. */
class GroundEffectExternalTest {
    /** Half the last digit of the published column. */
    private static final double PRINTED = 5e-5;

    /** C. Wieselsberger's fit where it holds, as its own departure from the integral. */
    private static final double FIT = 0.0015;

    /** A nearly elliptic wing and its image, both solved, against two ellipses. */
    private static final double NEARLY_ELLIPTIC = 0.01;

    private static final Validation GROUND = Validation.of(
            Subject.LIFT,
            "Induced drag near the ground",
            "L. Prandtl, NACA R-116, 1921: interference with the image, from the integral (derived); C. Wieselsberger, NACA"
                    + " TM-77, 1922 (from memory).");

    @ParameterizedTest(name = "h/b = {0}")
    @CsvSource({
        "0.05, 0.3435",
        "0.10, 0.5158",
        "0.15, 0.6295",
        "0.20, 0.7095",
        "0.30, 0.8114",
        "0.50, 0.9065",
        "1.00, 0.9713"
    })
    void isThatOfAnEllipseAndItsImage(double height, double share) {
        GROUND.value(
                String.format(Locale.ROOT, "share of free-air induced drag, h/b = %.2f", height),
                share,
                GroundEffect.inducedShare(height, 1),
                PRINTED,
                "");
    }

    @ParameterizedTest(name = "h/b = {0}")
    @CsvSource({"0.05", "0.1", "0.15", "0.2"})
    void agreesWithWieselsbergersFit(double height) {
        double fit = 1 - (1 - 1.32 * height) / (1.05 + 7.4 * height);
        assertThat(GroundEffect.inducedShare(height, 1)).isCloseTo(fit, within(FIT));
    }

    /** σ of biplanes from the same integral: gap over span 0.05 to 1. */
    @ParameterizedTest(name = "G/b = {0}")
    @CsvSource({
        "0.05, 0.7845",
        "0.10, 0.6565",
        "0.15, 0.5604",
        "0.20, 0.4842",
        "0.25, 0.4221",
        "0.30, 0.3705",
        "0.40, 0.2905",
        "0.50, 0.2322",
        "1, 0.0935"
    })
    void interferenceIsPrandtls(double gap, double sigma) {
        GROUND.value(
                String.format(Locale.ROOT, "σ of two ellipses, gap %.2f of the span", gap),
                sigma,
                GroundEffect.interference(gap),
                PRINTED,
                "");
    }

    /** The image as a second wing of opposite incidence below: its lift is equal and opposite. */
    @ParameterizedTest(name = "h/b = {0}")
    @CsvSource({"0.1", "0.2", "0.3"})
    void theLiftingSystemsOwnImageSaysTheSame(double height) {
        Surface wing = TestWings.surface(Surface.Role.WING, 8, 0.4, 0, 0.125, 0, 0, 0);
        Surface above = TestWings.twisted(
                TestWings.surface(Surface.Role.WING, 8, 0.4, 0, 0.125, 0, 2 * height * wing.span(), 0), 0.1, 0.1);
        Surface image =
                TestWings.twisted(TestWings.surface(Surface.Role.SECOND_WING, 8, 0.4, 0, 0.125, 0, 0, 0), -0.1, -0.1);
        LiftingSystem near = TestWings.solved(above, image);
        LiftingSystem free = TestWings.solved(wing);
        double lift = near.surfaceLift(0, 0, 0, 0);
        double alone = free.surfaceLiftSlope(0);
        double drag = 0.5 * near.inducedDrag(0, 0, 0) * near.referenceArea() / (lift * lift);
        double freeDrag = free.inducedDrag(1, 0, 0) * free.referenceArea() / (alone * alone);
        assertThat(drag / freeDrag).isCloseTo(GroundEffect.inducedShare(height, 1), within(NEARLY_ELLIPTIC));
    }

    @Test
    void vanishesFarAboveAndTakesAllOnTheGround() {
        assertThat(GroundEffect.inducedShare(10, 1)).isEqualTo(1);
        assertThat(GroundEffect.inducedShare(0, 1)).isZero();
    }
}
