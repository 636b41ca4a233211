package foamfront.model.aero;

import foamfront.model.airframe.Surface;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Downwash in the sheet behind an elliptic load, ε = C_L / (π A) (1 + (2/π) √(1 + X²) / X E(m)), derived from
 * Biot-Savart's law with the load on one straight line.
 */
class DownwashExternalTest {
    /** So slender that its load is an ellipse on one line; the point is half-way between two wake vortices. */
    private static final double ASPECT_RATIO = 300;

    /** The closed form's stated tolerance. */
    private static final double SHEET = 0.002;

    private static final Validation ELLIPSE = Validation.of(
            Subject.LIFT, "Downwash behind an elliptic load", "Biot-Savart's law on one straight line (derived).");

    @ParameterizedTest(name = "x/b = {0}")
    @CsvSource({
        "0.2, 0.93730",
        "0.3, 0.79892",
        "0.4, 0.73778",
        "0.5, 0.70538",
        "0.6, 0.68621",
        "0.75, 0.66948",
        "1, 0.65567",
        "2, 0.64154",
        "50, 0.63662" // as good as endless: 2/π
    })
    void fallsBehindTheWingAsTheClosedFormSays(double x, double factor) {
        Surface wing = TestWings.elliptic(1, 1 / ASPECT_RATIO, 128);
        LiftingSystem system = TestWings.solved(new Resolution(1, 128, 4), wing);
        double loading = system.liftCoefficient(0.1, 0, 0) / ASPECT_RATIO;
        double first = system.upwash(0.1, 0, 0, x, system.stripY(0), 0);
        ELLIPSE.relative(
                String.format(Locale.ROOT, "downwash over C_L / A, %.2f spans behind", x),
                factor,
                -first / loading,
                SHEET,
                "");
    }
}
