package foamfront.model.section;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.design.WingSection;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What pictures show past the stall: every section becomes a plate. Flight stops where the stall begins. */
class BeyondStallExternalTest {
    /** Of the normal force, as its source scatters. */
    private static final double SCATTER = 0.15;

    private static final Validation STALLED = Validation.of(
            Subject.SECTION,
            "Beyond the stall",
            "S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. 3 (from memory): normal force of a plate across two dimensions, 2 sin α.");

    @ParameterizedTest(name = "{0} degrees")
    @ValueSource(doubles = {30, 45, 60, 80})
    void normalForceOfAPlate(double degrees) {
        double alpha = Math.toRadians(degrees);
        SectionPolar plate = Sections.polar(new WingSection.FlatPlate());
        double normal = plate.lift(alpha, StrictMath.log(100e3)) / Math.cos(alpha);
        STALLED.relative(
                String.format(Locale.ROOT, "normal force at %.0f degrees", degrees),
                2 * Math.sin(alpha),
                normal,
                SCATTER,
                "");
        SectionPolar fold = Sections.polar(new WingSection.FoldedFlatBottom(0.11));
        assertThat(fold.lift(alpha, StrictMath.log(100e3)) / Math.cos(alpha)).isEqualTo(normal);
    }
}
