package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.validation.ErrorStatistics;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The oracle itself against published and independently derived values of straight wings. */
class FourierLiftingLineExternalTest {
    /** Half a digit in the table's third or fourth decimal, as its source states. */
    private static final double RECTANGULAR = 0.0005;

    private static final double TAPERED = 0.001;

    /** Collocation noise of an exact solution. */
    private static final double ROUNDING = 1e-9;

    private static final Validation ORACLE = Validation.of(
            Subject.LIFT,
            "The tests' own lifting line",
            "H. Glauert, Elements of Aerofoil and Airscrew Theory, ch. XI (derived); H. Multhopp's seven points (from memory); J. D."
                    + " Anderson, Fundamentals of Aerodynamics, example 5.1 (inputs from memory).");
    private static final ErrorStatistics slopes = new ErrorStatistics();
    private static final ErrorStatistics taus = new ErrorStatistics();
    private static final ErrorStatistics deltas = new ErrorStatistics();
    private static final ErrorStatistics loads = new ErrorStatistics();

    @AfterAll
    static void recordTables() {
        assertThat(slopes.count()).isPositive();
        ORACLE.set("lift slope", slopes, TAPERED, TAPERED, "1/rad")
                .set("τ", taus, TAPERED, TAPERED, "")
                .set("δ", deltas, TAPERED, TAPERED, "")
                .set("span load of straight and tapered wings, c_l / C_L", loads, 0.003, 0.003, "");
    }

    @ParameterizedTest(name = "aspect ratio {0}, taper {1}")
    @CsvFileSource(resources = "straight-wings.csv", numLinesToSkip = 1)
    void reproducesGlauertsFactors(double aspectRatio, double taper, double slope, double tau, double delta) {
        FourierLiftingLine line = FourierLiftingLine.tapered(aspectRatio, taper, eta -> 1);
        slopes.add(line.lift() - slope);
        taus.add(line.tau() - tau);
        deltas.add(line.delta() - delta);
        double tolerance = taper == 1 ? RECTANGULAR : TAPERED;
        assertThat(line.lift()).isCloseTo(slope, within(tolerance));
        assertThat(line.tau()).isCloseTo(tau, within(tolerance));
        assertThat(line.delta()).isCloseTo(delta, within(tolerance));
    }

    /** The taper that comes nearest to an ellipse: 0.36 to 0.03 (derived). */
    @ParameterizedTest(name = "aspect ratio {0}")
    @ValueSource(doubles = {6, 8, 10})
    void leastInducedDragLiesNearATaperOfAThird(double aspectRatio) {
        double best = Double.NaN;
        double least = Double.POSITIVE_INFINITY;
        for (double taper = 0.2; taper < 0.6; taper += 0.01) {
            double delta =
                    FourierLiftingLine.tapered(aspectRatio, taper, eta -> 1).delta();
            best = delta < least ? taper : best;
            least = Math.min(least, delta);
        }
        ORACLE.band(
                String.format(Locale.ROOT, "taper of least induced drag, aspect ratio %.0f", aspectRatio),
                0.33,
                0.39,
                best,
                "");
    }

    /** L. Prandtl, NACA R-116, 1921: a = 2π / (1 + 2/A), C_Di = C_L² / (π A). */
    @ParameterizedTest(name = "elliptic, aspect ratio {0}")
    @CsvSource({"4, 4.18879", "6, 4.71239", "8, 5.02655"})
    void solvesTheEllipticWingExactly(double aspectRatio, double slope) {
        FourierLiftingLine line = new FourierLiftingLine(
                aspectRatio, 2 * Math.PI, eta -> 4 / Math.PI * Math.sqrt(1 - eta * eta), eta -> 1);
        ORACLE.value(
                String.format(Locale.ROOT, "lift slope of an elliptic wing, aspect ratio %.0f", aspectRatio),
                slope,
                line.lift(),
                5e-6,
                "1/rad");
        assertThat(line.delta()).isCloseTo(0, within(ROUNDING));
    }

    /** H. Multhopp's seven-point example, rectangular, A = 6 (Schlichting and Truckenbrodt, from memory). */
    @ParameterizedTest(name = "2y/b = {0}")
    @CsvSource({"0, 0.4320", "0.3827, 0.4192", "0.7071, 0.3711", "0.9239, 0.2485"})
    void agreesWithMulthoppsExample(double eta, double circulation) {
        FourierLiftingLine seven =
                new FourierLiftingLine(7, 6, 2 * Math.PI, FourierLiftingLine.taperedChord(1), y -> 1);
        ORACLE.value(
                String.format(Locale.ROOT, "seven points, circulation at %.4f of the semispan", eta),
                circulation,
                seven.circulation(eta),
                0.0002,
                "");
        assertThat(seven.lift()).isCloseTo(4.52728, within(5e-6));
    }

    /** J. D. Anderson, Fundamentals of Aerodynamics, example 5.1 (inputs from memory) with its τ and δ derived. */
    @Test
    void keepsTauAndDeltaApart() {
        FourierLiftingLine line = FourierLiftingLine.tapered(8, 0.8, eta -> Math.toRadians(5));
        ORACLE.value("example 5.1, lift coefficient", 0.4269, line.lift(), 5e-5, "")
                .value("example 5.1, induced drag coefficient", 0.00757, line.inducedDrag(), 5e-6, "");
    }

    @Test
    void washoutShiftsTheZeroLiftAngleAndLeavesDrag() {
        FourierLiftingLine plain = FourierLiftingLine.tapered(8, 0.5, eta -> 1);
        FourierLiftingLine washed = FourierLiftingLine.tapered(8, 0.5, eta -> -Math.abs(eta));
        ORACLE.relative("zero-lift angle per washout", 0.4325, -washed.lift() / plain.lift(), 0.005, "");
        double zero = -washed.lift() / plain.lift();
        FourierLiftingLine unloaded = FourierLiftingLine.tapered(8, 0.5, eta -> zero - Math.abs(eta));
        ORACLE.relative("induced drag at no lift per squared washout", 0.1211, unloaded.inducedDrag(), 0.005, "1/rad²");
    }

    /** Span loading c_l / C_L, derived: a straight wing's stall starts at its root, a tapered one's near half the semispan. */
    @ParameterizedTest(name = "aspect ratio {0}, taper {1}, 2y/b = {2}")
    @CsvSource({
        "6, 1, 0, 1.1442", "6, 1, 0.2, 1.1357", "6, 1, 0.4, 1.1071", "6, 1, 0.6, 1.0442", "6, 1, 0.8, 0.8970",
        "6, 1, 0.9, 0.7276", "6, 1, 0.95, 0.5637", "8, 1, 0, 1.1255", "8, 1, 0.2, 1.1189", "8, 1, 0.4, 1.0962",
        "8, 1, 0.6, 1.0447", "8, 1, 0.8, 0.9170", "8, 1, 0.9, 0.7595", "8, 1, 0.95, 0.5983", "6, 0.5, 0, 0.9604",
        "6, 0.5, 0.2, 1.0259", "6, 0.5, 0.4, 1.0601", "6, 0.5, 0.6, 1.0636", "6, 0.5, 0.8, 0.9936",
                "6, 0.5, 0.9, 0.8599",
        "6, 0.5, 0.95, 0.6977"
    })
    void loadsAWing(double aspectRatio, double taper, double eta, double ratio) {
        FourierLiftingLine line = FourierLiftingLine.tapered(aspectRatio, taper, y -> 1);
        double chord = FourierLiftingLine.taperedChord(taper).applyAsDouble(eta) / aspectRatio;
        loads.add(2 * line.circulation(eta) / chord / line.lift() - ratio);
        assertThat(2 * line.circulation(eta) / chord / line.lift()).isCloseTo(ratio, within(0.003));
    }
}
