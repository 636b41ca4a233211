package foamfront.model.aero;

import foamfront.model.airframe.Surface;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The influence of bound vortex and trailing legs themselves: one horseshoe of the whole span, by two strips whose circulation is
 * made equal, against w s / Γ = (1/2π) [(s/x) / √(1 + x²/s²) + 1 + (x/s) / √(1 + x²/s²)] on the centre line (Biot-Savart).
 */
class HorseshoeExternalTest {
    /** Half the last printed digit. */
    private static final double EXACT = 5.1e-6;

    private static final double FORMULA = 1e-12;

    private static final Validation HORSESHOE =
            Validation.of(Subject.LIFT, "One horseshoe", "Biot-Savart's law on the centre line behind it (derived).");

    @ParameterizedTest(name = "x/s = {0}")
    @CsvSource({"0.5, 0.51504", "1, 0.38423", "2, 0.33710", "4, 0.32321"})
    void downwashOnTheCentreLine(double x, double published) {
        double ours = downwash(x);
        double root = Math.sqrt(1 + x * x);
        double closed = (root / x + 1) / (2 * Math.PI);
        String words = String.format(Locale.ROOT, "w s / Γ at x/s = %.1f", x);
        HORSESHOE.value(words, published, ours, EXACT, "").relative(words + ", formula", closed, ours, FORMULA, "");
    }

    /**
     * One horseshoe of span πb/4, which carries an ellipse's lift at its root circulation: ε A / C_L = (16/π²) w s / Γ at
     * x / s = 8x / πb (derived), a fifth short of the ellipse itself at a tail.
     */
    @ParameterizedTest(name = "x/b = {0}")
    @CsvSource({
        "0.2, 0.8265",
        "0.3, 0.6830",
        "0.4, 0.6196",
        "0.5, 0.5861",
        "0.6, 0.5664",
        "0.75, 0.5493",
        "1, 0.5352",
        "2, 0.5210"
    })
    void aLoneHorseshoeForAnEllipse(double x, double published) {
        HORSESHOE.value(
                String.format(Locale.ROOT, "in place of an ellipse, downwash over C_L / A, %.2f spans behind", x),
                published,
                16 / (Math.PI * Math.PI) * downwash(8 * x / Math.PI),
                5.1e-5,
                "");
    }

    /** w s / Γ on the centre line, x semispans behind. */
    private static double downwash(double x) {
        // One chordwise row at x = 0; the point lies in the sheet between two nodes, so nothing is singular.
        Resolution resolution = new Resolution(1, 4, 2);
        Surface wing = TestWings.wing(6, 1, 0);
        double s = 0.5 * wing.span();
        Lattice lattice = new Lattice(resolution, 1);
        lattice.fill(List.of(wing), TestWings.PLATE, 1);
        Influence influence = new Influence(resolution, lattice, lattice.strips);
        double[] matrix = new double[lattice.strips * lattice.strips];
        influence.fill(matrix, lattice.strips, new double[lattice.strips * lattice.strips], lattice.strips);
        double[] unit = new double[lattice.strips];
        Arrays.fill(unit, 1);
        return -influence.upwash(unit, 0, 1, x * s, 0, 0) * s;
    }
}
