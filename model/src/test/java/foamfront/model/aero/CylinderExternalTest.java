package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A second source against the tables: 1.0 at Re 1000 and 1.2 from 10 000 to 100 000 across the stream, 1.17 for a disc and about
 * 0.82 at two diameters along it: S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. 3, all from memory.
 */
class CylinderExternalTest {
    private static final double SCATTER = 0.05;
    private static final double ROUNDING = 1e-12;

    private static final Validation RODS = Validation.of(
            Subject.DRAG, "Round rods and discs", "S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. 3 (from memory).");

    @ParameterizedTest(name = "Re {0}")
    @CsvSource({"1e3, 1.0", "2e4, 1.2", "1e5, 1.2"})
    void rodsAcrossTheStream(double reynolds, double coefficient) {
        RODS.relative(
                String.format(Locale.ROOT, "across the stream at Re %.0f", reynolds),
                coefficient,
                Cylinder.across(reynolds),
                SCATTER,
                "");
    }

    @ParameterizedTest(name = "{0} diameters")
    @CsvSource({"0, 1.17", "2, 0.82"})
    void bluntRodsAlongTheStream(double fineness, double coefficient) {
        RODS.relative(
                String.format(Locale.ROOT, "along the stream, %.0f diameters long", fineness),
                coefficient,
                Cylinder.along(fineness),
                SCATTER,
                "");
    }

    @Test
    void freeEndsRelieveAndAnEndlessRodHasNone() {
        assertThat(Cylinder.endRelief(0)).isCloseTo(1, within(ROUNDING));
        assertThat(Cylinder.endRelief(0.1)).isCloseTo(0.82 / 1.19, within(SCATTER * 0.82 / 1.19));
        assertThat(Cylinder.endRelief(2)).isBetween(0.5, 0.55);
    }

    @Test
    void coefficientsAreContinuousAndHeldOutside() {
        for (double reynolds = 5; reynolds < 1e6; reynolds *= 1.01) {
            // the crisis is the steepest: 0.35 over a quarter of a unit of log Re
            assertThat(Cylinder.across(1.01 * reynolds)).isCloseTo(Cylinder.across(reynolds), within(0.015));
        }
        assertThat(Cylinder.across(1)).isEqualTo(Cylinder.across(17.7));
        assertThat(Cylinder.across(1e7)).isEqualTo(Cylinder.across(503_000));
        assertThat(Cylinder.along(50)).isEqualTo(Cylinder.along(4.4));
    }
}
