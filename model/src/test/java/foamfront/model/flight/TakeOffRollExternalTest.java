package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
                weight / 9.8, liftOff, 0, u -> 32485 - pressureArea * u * drag - 0.02 * (weight - pressureArea * u));

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
                10 / 9.80665, 9.2462, 0, u -> 6 - pressureArea * u * 0.07 - 0.08 * (10 - pressureArea * u * 0.40));

        MODEL.relative("roll", 8.8109, roll, CLOSED_FORM, "m");
    }

    /** s = V² / 2a, whichever way the speed changes. */
    @Test
    void aConstantForceGivesVSquaredOverTwoA() {
        assertThat(TakeOffRoll.distance(1.5, 10, 0, u -> 3)).isCloseTo(25, within(1e-12));
        assertThat(TakeOffRoll.distance(1.5, 10, 4, u -> 3)).isCloseTo(9, within(1e-12));
        assertThat(TakeOffRoll.distance(1.5, 10, 11, u -> 3)).isZero();
    }

    /**
     * With F = F₀ − K V², V the airspeed: s = (m / 2K) ln((F₀ − K W²) / (F₀ − K V²)) − (m W / √(F₀ K)) (artanh(V √(K / F₀)) − artanh(W
     * √(K / F₀))), derived.
     */
    @Test
    void aHeadwindsRoll() {
        double force = 5.2;
        double drag = 0.02;
        double end = 9;
        double wind = 3;
        double root = Math.sqrt(drag / force);
        double exact = 0.5 / drag * Math.log((force - drag * wind * wind) / (force - drag * end * end))
                - wind / Math.sqrt(force * drag) * (artanh(end * root) - artanh(wind * root));
        assertThat(TakeOffRoll.distance(1, end, wind, u -> force - drag * u))
                .isCloseTo(exact, within(CLOSED_FORM * exact));
    }

    private static double artanh(double x) {
        return 0.5 * Math.log((1 + x) / (1 - x));
    }

    @Test
    void noRollEndsWhereTheForceGivesOut() {
        assertThat(TakeOffRoll.distance(1, 10, 0, u -> 1 - u / 50)).isInfinite();
    }
}
