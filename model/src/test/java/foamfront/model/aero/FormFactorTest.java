package foamfront.model.aero;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormFactorTest {
    private static final double HALF_DIGIT = 5e-5;

    private static final Validation FORM = Validation.of(
            Subject.DRAG,
            "Form factors",
            "S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. 6; D. P. Raymer, Aircraft Design, section 12.5 (formulas from memory,"
                    + " figures derived). Square-cornered bodies do not use them.");

    private static String name(String what, double of) {
        return String.format(Locale.ROOT, "%s %.2f", what, of);
    }

    @ParameterizedTest(name = "t/c {0}")
    @CsvSource({"0.04, 1.0802", "0.10, 1.2060", "0.12, 1.2524"})
    void surfaces(double thickness, double hoerner) {
        FORM.value(name("surface by Hoerner, t/c", thickness), hoerner, FormFactor.surface(thickness), HALF_DIGIT, "");
    }

    @ParameterizedTest(name = "t/c {0}")
    @CsvSource({"0.04, 1.0803", "0.10, 1.2100", "0.12, 1.2607"})
    void surfacesThickestAtThreeTenths(double thickness, double raymer) {
        FORM.value(
                name("surface by Raymer, t/c", thickness), raymer, FormFactor.surface(thickness, 0.3), HALF_DIGIT, "");
    }

    @ParameterizedTest(name = "fineness {0}")
    @CsvSource({
        "4, 1.2969",
        "5, 1.1902",
        "6, 1.1345",
        "8, 1.0800",
        "10, 1.0544",
    })
    void bodies(double fineness, double hoerner) {
        FORM.value(name("body by Hoerner, fineness", fineness), hoerner, FormFactor.body(fineness), HALF_DIGIT, "");
    }
}
