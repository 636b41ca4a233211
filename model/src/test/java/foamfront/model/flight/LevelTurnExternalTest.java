package foamfront.model.flight;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import org.junit.jupiter.api.Test;

/** The level turn against its closed form. */
class LevelTurnExternalTest {
    private static final Validation TURN = Validation.of(
            Subject.FLIGHT,
            "Level turn",
            "r = V² / (g tan φ) (J. D. Anderson, Introduction to Flight, ch. 6; derived).");

    @Test
    void twelveMetresASecondAtFortyFiveDegrees() {
        double load = Math.sqrt(2);
        double stall = 12 / (Performance.SAFE * Math.sqrt(load));

        TURN.value("radius at 12 m/s and 45 deg", 14.684, LevelTurn.radius(stall, load), 5e-4, "m");
    }
}
