package foamfront.model.section;

import foamfront.model.design.WingSection.FoldedSymmetrical;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What friction leaves of frictionless angle, moment and slope, against smooth sections at Re 3 to 9 million. */
class HighReynoldsExternalTest {
    private static final Validation SMOOTH = Validation.of(
            Subject.SECTION,
            "Smooth sections at high Reynolds number",
            "I. H. Abbott, A. E. von Doenhoff and L. S. Stivers, NACA R-824 (1945), section charts (from memory); ours is the"
                    + " frictionless figure times the share that the model lets friction leave.");

    @ParameterizedTest(name = "camber {0}")
    @CsvSource({"0.02, -2.2, -1.8, -0.050, -0.045", "0.04, -4.1, -3.7, -0.095, -0.085"})
    void angleAndMoment(double camber, double low, double high, double leastMoment, double mostMoment) {
        FourDigitSection section = new FourDigitSection(camber, 0.4, 0.12);
        PanelMethod flow = PanelMethod.about(section.x(300), section.z(300));
        double angle = flow.zeroLiftAngle();
        String name = String.format(Locale.ROOT, ", camber %.0f %%", 100 * camber);
        SMOOTH.band(
                        "zero-lift angle" + name,
                        low,
                        high,
                        Math.toDegrees(SectionPolar.ZERO_LIFT_KEPT_OF_FLOW * angle),
                        "degrees")
                .band(
                        "moment" + name,
                        leastMoment,
                        mostMoment,
                        SectionPolar.MOMENT_KEPT_OF_FLOW * flow.moment(angle, 1, 0.25),
                        "");
        ThinAerofoil thin = ThinAerofoilTest.twoParabolas(camber);
        SMOOTH.band(
                        "zero-lift angle by the mean line" + name,
                        low,
                        high,
                        Math.toDegrees(SectionPolar.ZERO_LIFT_KEPT * thin.zeroLiftAngle()),
                        "degrees")
                .band(
                        "moment by the mean line" + name,
                        leastMoment,
                        mostMoment,
                        SectionPolar.MOMENT_KEPT * thin.quarterChordMoment(),
                        "");
    }

    @Test
    void slopeAtTheUpperEndOfTheTables() {
        double slope = 2
                * Math.PI
                * Sections.polar(new FoldedSymmetrical(0.12)).slopeRatio(StrictMath.log(400e3))
                / Math.toDegrees(1);
        SMOOTH.band("slope at Re 400000, without camber", 0.106, 0.110, slope, "1/degree");
    }
}
