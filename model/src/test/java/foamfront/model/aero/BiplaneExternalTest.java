package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Surface;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Biplanes against Prandtl's interference factor and the best possible pair. */
class BiplaneExternalTest {
    /** Default strips of nearly elliptic wings: their own loads differ from two ellipses by about this. */
    private static final double NEARLY_ELLIPTIC = 0.01;

    /** The bound's own stated accuracy. */
    private static final double BOUND = 0.003;

    /** The theorem's tolerance in the check: span loads change their shape a little too. */
    private static final double MUNK = 0.005;

    private static final Validation PRANDTL = Validation.of(
            Subject.LIFT,
            "Biplane against two ellipses",
            "L. Prandtl, NACA R-116, 1921: interference factor σ, from the integral (derived).");

    private static final Validation BEST = Validation.of(
            Subject.LIFT,
            "Biplane under the best possible pair",
            "Least induced drag of two equal spans in the far wake, 200 panels a wing (derived; after M. M. Munk, NACA R-121, 1921).");

    private static LiftingSystem pair(double gap, double taper, double stagger) {
        Surface lower = TestWings.surface(Surface.Role.WING, 8, taper, 0, 0.125, 0, 0, 0);
        Surface upper =
                TestWings.surface(Surface.Role.SECOND_WING, 8, taper, 0, 0.125, -stagger, gap * lower.span(), 0);
        return TestWings.solved(lower, upper);
    }

    @ParameterizedTest(name = "gap {0}")
    @CsvFileSource(resources = "biplanes.csv", numLinesToSkip = 1)
    void gainsWhatTwoEllipsesGain(double gap, double sigma, double best) {
        LiftingSystem system = pair(gap, 0.4, 0);
        double single = TestWings.solved(TestWings.wing(8, 0.4, 0)).spanEfficiency(0.1, 0, 0);
        double gain = system.spanEfficiency(0.1, 0, 0) / single;
        PRANDTL.relative(
                String.format(Locale.ROOT, "gain in span efficiency, gap %.2f of the span", gap),
                2 / (1 + sigma),
                gain,
                NEARLY_ELLIPTIC,
                "");
    }

    @ParameterizedTest(name = "gap {0}")
    @CsvFileSource(resources = "biplanes.csv", numLinesToSkip = 1)
    void neverExceedsTheBestPossiblePair(double gap, double sigma, double best) {
        double most = 0;
        for (double taper : new double[] {0.2, 0.4, 0.6, 1}) {
            double efficiency = pair(gap, taper, 0.1).spanEfficiency(0.1, 0, 0);
            assertThat(efficiency).isLessThan(best * (1 + BOUND));
            most = Math.max(most, efficiency);
        }
        BEST.band(
                String.format(Locale.ROOT, "best of four tapers over the bound, gap %.2f of the span", gap),
                0.95,
                1 + BOUND,
                most / best,
                "");
    }

    /** A worked example: b 1 m, gap 0.2 m, both wings together 0.3 m², C_L 0.8; nearly elliptic wings for elliptic ones. */
    @Test
    void theWorkedExample() {
        Surface lower = TestWings.surface(Surface.Role.WING, 1 / 0.15, 0.4, 0, 0.15, 0, 0, 0);
        Surface upper = TestWings.surface(Surface.Role.SECOND_WING, 1 / 0.15, 0.4, 0, 0.15, 0, 0.2, 0);
        LiftingSystem system = TestWings.solved(lower, upper);
        PRANDTL.relative(
                "worked example, induced drag coefficient at C_L 0.8",
                0.04535,
                system.inducedDrag(system.incidence(0.8, 0, 0), 0, 0),
                NEARLY_ELLIPTIC,
                "");
    }

    /** M. M. Munk, NACA R-121, 1921: loads fore and aft of each other keep their drag; here each pair keeps its own. */
    @ParameterizedTest(name = "stagger {0}")
    @ValueSource(doubles = {-0.1, 0.05, 0.1})
    void dragOfTheLoadsThemselvesDoesNotKnowTheStagger(double stagger) {
        LiftingSystem system = pair(0.2, 0.6, stagger);
        double lower = system.surfaceLift(0, 0.1, 0, 0);
        double upper = system.surfaceLift(1, 0.1, 0, 0);
        double b = system.referenceSpan();
        LiftingSystem level = pair(0.2, 0.6, 0);
        double equal = level.surfaceLift(0, 0.1, 0, 0);
        double drag = level.inducedDrag(0.1, 0, 0) * level.referenceArea();
        // Of two equal loads L: D = 2 (1 + σ) s L² / (π b²), so s (1 + σ) is known; each wing alone gives s.
        double single = 1 / TestWings.solved(TestWings.wing(8, 0.6, 0)).spanEfficiency(0.1, 0, 0);
        double sigma = drag * Math.PI * b * b / (2 * single * equal * equal) - 1;
        double expected = single * (lower * lower + 2 * sigma * lower * upper + upper * upper) / (Math.PI * b * b);
        assertThat(system.inducedDrag(0.1, 0, 0) * system.referenceArea() / expected)
                .isCloseTo(1, within(MUNK));
    }

    /** Loads shift between the wings a little, and with them the efficiency. */
    @ParameterizedTest(name = "stagger {0}")
    @ValueSource(doubles = {-0.1, 0.05, 0.1})
    void staggerHardlyChangesTheEfficiency(double stagger) {
        double level = pair(0.2, 0.6, 0).spanEfficiency(0.1, 0, 0);
        assertThat(pair(0.2, 0.6, stagger).spanEfficiency(0.1, 0, 0) / level).isCloseTo(1, within(0.02));
    }
}
