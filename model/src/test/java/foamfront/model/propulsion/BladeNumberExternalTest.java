package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.CurveShape;
import foamfront.model.parts.PropellerCurves;
import foamfront.model.parts.PropellerRegression;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Three and four blades over two, on which the correction for blades was calibrated. */
class BladeNumberExternalTest {
    /** Half of what the two planforms lie apart, rounded up. */
    private static final double THRUST = 0.045;

    private static final double POWER = 0.095;

    private static final Validation BLADES = Validation.of(
            Subject.PROPULSION,
            "Number of blades",
            "UIUC Propeller Database, volume 2: research planforms of constant chord (9x6.75) and tapered (5x3.75), each with 2, 3"
                    + " and 4 blades. One factor serves both.");

    @ParameterizedTest(name = "{0}, {1} blades")
    @CsvSource({
        "constant chord, 3, 1.354, 1.467",
        "tapered, 3, 1.294, 1.339",
        "constant chord, 4, 1.633, 1.918",
        "tapered, 4, 1.504, 1.606"
    })
    void moreBladesPullMoreAndTakeMoreStill(String planform, int blades, double thrust, double power) {
        PropellerRegression regression = new PropellerRegression(Plants.PROPELLERS);
        PropellerCurves two = regression.predict(BladeFamily.SPORT, 0.2286, 0.1715, 2);
        PropellerCurves more = regression.predict(BladeFamily.SPORT, 0.2286, 0.1715, blades);
        double pull = more.thrustCoefficient(0, 0) / two.thrustCoefficient(0, 0);
        double load = more.powerCoefficient(0, 0) / two.powerCoefficient(0, 0);
        String what = planform + ", " + blades + " blades over two, ";
        BLADES.relative(what + "C_T at rest", thrust, pull, THRUST, "")
                .relative(what + "C_P at rest", power, load, POWER, "");
        assertThat(load).isGreaterThan(pull);
    }

    /**
     * More blades cost efficiency: 0.675, 0.644 and 0.621 measured at their best with two, three and four, and 0.633, 0.576, 0.505 of
     * the tapered planform. One factor cannot serve both at four blades: it lies between them, nearer the wider chord.
     */
    @ParameterizedTest(name = "{0}, {1} blades")
    @CsvSource({
        "constant chord, 3, 0.675, 0.644, 0.04",
        "tapered, 3, 0.633, 0.576, 0.04",
        "constant chord, 4, 0.675, 0.621, 0.1",
        "tapered, 4, 0.633, 0.505, 0.1"
    })
    void moreBladesCostEfficiency(String planform, int blades, double two, double more, double apart) {
        PropellerRegression regression = new PropellerRegression(Plants.PROPELLERS);
        double before = best(regression.predict(BladeFamily.SPORT, 0.2286, 0.1715, 2));
        double after = best(regression.predict(BladeFamily.SPORT, 0.2286, 0.1715, blades));
        BLADES.value(
                planform + ", best efficiency of " + blades + " blades over 2", more / two, after / before, apart, "");
        assertThat(after).isLessThan(before);
    }

    private static double best(PropellerCurves curves) {
        return CurveShape.at(curves, 83).peakEfficiency();
    }
}
