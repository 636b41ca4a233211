package foamfront.model.aero;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Flat-plate friction, H. Schlichting, Boundary-Layer Theory, ch. VII and XXI: tabulated from the formulas to five digits. */
class SkinFrictionExternalTest {
    private static final double HALF_DIGIT = 5e-6;

    /** The books' A is printed to four digits. */
    private static final double HALF_UNIT = 0.5;

    private static final Validation PLATE = Validation.of(
            Subject.DRAG,
            "Friction of a flat plate",
            "H. Schlichting, Boundary-Layer Theory, ch. VII and XXI; tabulated from its formulas (derived).");

    @ParameterizedTest(name = "Re {0}")
    @CsvSource({
        "4e4, 0.00664, 0.00886, 0.00897",
        "1e5, 0.00420, 0.00716, 0.00718",
        "2e5, 0.00297, 0.00615, 0.00614",
        "3e5, 0.00242, 0.00566, 0.00562",
        "5e5, 0.00188, 0.00511, 0.00506",
        "1e6, 0.00133, 0.00447, 0.00441",
        "1e7, 0.00042, 0.00300, 0.00293",
    })
    void oneSideOfAFlatPlate(double reynolds, double blasius, double prandtlSchlichting, double schoenherr) {
        String at = String.format(Locale.ROOT, " at Re %.0f", reynolds);
        PLATE.value("laminar" + at, blasius, SkinFriction.laminar(reynolds), HALF_DIGIT, "")
                .value("turbulent" + at, prandtlSchlichting, SkinFriction.turbulent(reynolds), HALF_DIGIT, "")
                .value("Schoenherr" + at, schoenherr, SkinFriction.schoenherr(reynolds), HALF_DIGIT, "");
    }

    @Test
    void transitionAtHalfAMillion() {
        double saved = (SkinFriction.turbulent(1e6) - SkinFriction.withTransition(1e6, 5e5)) * 1e6;

        PLATE.value("Prandtl's A, transition at Re 500000", 1614, saved, HALF_UNIT, "")
                .value(
                        "transition at Re 500000, whole plate 1000000",
                        0.00286,
                        SkinFriction.withTransition(1e6, 5e5),
                        HALF_DIGIT,
                        "");
    }
}
