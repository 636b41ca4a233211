package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import org.junit.jupiter.api.Test;

/** The ground roll with constant thrust against its closed form. */
class TakeOffRollExternalTest {
    /** The stated tolerance of the check; eight steps of Simpson's rule do far better. */
    private static final double CLOSED_FORM = 1e-3;

    /** Half the last digit of forces printed to a newton. */
    private static final double HALF_NEWTON = 0.5;

    private static final Validation TEXTBOOK = Validation.of(
            Subject.FLIGHT,
            "Take-off roll of a jet",
            "J. D. Anderson, Introduction to Flight, take-off example (inputs read in a textbook companion); integral with constant"
                    + " thrust derived.");

    private static final Validation MODEL = Validation.of(
            Subject.FLIGHT,
            "Take-off roll of a model",
            "s = (m / 2K) ln(F / (F - K V²)) with constant thrust (derived).");

    @Test
    void theTextbooksRoll() {
        double weight = 88176.75;
        double height = 16 * 1.83 / 16.25;
        double ground = height * height / (1 + height * height);
        double aspect = 16.25 * 16.25 / 29.54;
        double drag = 0.02 + ground / (Math.PI * 0.81 * aspect);
        double pressureArea = 0.5 * 1.225 * 29.54;
        double liftOff = 1.2 * Math.sqrt(weight / pressureArea);
        double mean = 0.49 * liftOff * liftOff;

        double roll = TakeOffRoll.distance(
                weight / 9.8, liftOff, u -> 32485 - pressureArea * u * drag - 0.02 * (weight - pressureArea * u));

        TEXTBOOK.relative("roll", 1106.4, roll, CLOSED_FORM, "m")
                .value("ground effect on induced drag", 0.7645, ground, 5e-5, "")
                .value("lift-off speed", 83.77, liftOff, 5e-3, "m/s")
                .value("drag at 0.7 of lift-off speed", 3335, pressureArea * mean * drag, HALF_NEWTON, "N")
                .value("lift at 0.7 of lift-off speed", 62218, pressureArea * mean, HALF_NEWTON, "N");
    }

    @Test
    void aModelsRoll() {
        double pressureArea = 0.5 * 1.225 * 0.25;
        double roll = TakeOffRoll.distance(
                10 / 9.80665, 9.2462, u -> 6 - pressureArea * u * 0.07 - 0.08 * (10 - pressureArea * u * 0.40));

        MODEL.relative("roll", 8.8109, roll, CLOSED_FORM, "m");
    }

    @Test
    void noRollEndsWhereTheForceGivesOut() {
        assertThat(TakeOffRoll.distance(1, 10, u -> 1 - u / 50)).isInfinite();
    }
}
