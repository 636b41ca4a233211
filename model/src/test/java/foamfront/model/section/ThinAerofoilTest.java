package foamfront.model.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Closed forms of thin-aerofoil theory: parabola and circular arc exactly, mean lines of two parabolas as given by I. H. Abbott,
 * A. E. von Doenhoff and L. S. Stivers, NACA R-824 (1945).
 */
class ThinAerofoilTest {
    /** The polygon of {@link #PIECES} pieces is this close to the curve; also the published digits. */
    private static final double CLOSE = 1e-4;

    /** A straight line has no pieces to err with. */
    private static final double ROUNDING = 1e-12;

    private static final int PIECES = 2000;

    @ParameterizedTest(name = "{0} at 0.4")
    @CsvSource({
        "0.02, -2.0772, -0.05312, 0.2574",
        "0.04, -4.1545, -0.10624, 0.5148",
        "0.06, -6.2317, -0.15936, 0.7723",
    })
    void meanLinesOfTwoParabolas(double camber, double zeroLiftDegrees, double moment, double idealDegrees) {
        ThinAerofoil theory = twoParabolas(camber);

        assertThat(Math.toDegrees(theory.zeroLiftAngle())).isCloseTo(zeroLiftDegrees, within(CLOSE));
        assertThat(theory.quarterChordMoment()).isCloseTo(moment, within(CLOSE));
        assertThat(Math.toDegrees(theory.idealAngle())).isCloseTo(idealDegrees, within(CLOSE));
    }

    @ParameterizedTest(name = "camber {0}")
    @CsvSource({"0.03", "0.05", "0.06"})
    void parabolicCamber(double camber) {
        ThinAerofoil theory = of(x -> 4 * camber * x * (1 - x));

        assertThat(theory.zeroLiftAngle()).isCloseTo(-2 * camber, within(CLOSE));
        assertThat(theory.quarterChordMoment()).isCloseTo(-Math.PI * camber, within(CLOSE));
        assertThat(theory.idealAngle()).isCloseTo(0, within(CLOSE));
    }

    @Test
    void aTiltedStraightLineIsOnlyTurned() {
        ThinAerofoil theory = ThinAerofoil.of(new double[] {0, 0.2, 1}, new double[] {0.3, 0.32, 0.4});

        assertThat(theory.zeroLiftAngle()).isCloseTo(0.1, within(ROUNDING));
        assertThat(theory.quarterChordMoment()).isCloseTo(0, within(ROUNDING));
    }

    @Test
    void aPlainFlapFollowsGlauert() {
        // hinge cosine 1 - 2 * 0.8; tau = 1 - (theta - sin theta) / pi = 0.5498 and dCm/ddelta = -0.640 at c_f/c 0.2
        ThinAerofoil theory = ThinAerofoil.of(new double[] {0, 0.8, 1}, new double[] {0, 0, -0.2});

        assertThat(theory.zeroLiftAngle()).isCloseTo(-0.5498, within(CLOSE));
        assertThat(theory.quarterChordMoment()).isCloseTo(-0.640, within(CLOSE));
    }

    /** A mean line of two parabolas that meet at 0.4. */
    static ThinAerofoil twoParabolas(double camber) {
        double p = 0.4;
        return of(x -> x < p
                ? camber / (p * p) * (2 * p * x - x * x)
                : camber / ((1 - p) * (1 - p)) * (1 - 2 * p + 2 * p * x - x * x));
    }

    static ThinAerofoil of(DoubleUnaryOperator line) {
        double[] x = new double[PIECES + 1];
        double[] z = new double[PIECES + 1];
        for (int i = 0; i <= PIECES; i++) {
            x[i] = i == PIECES ? 1 : 0.5 * (1 - StrictMath.cos(Math.PI * i / PIECES));
            z[i] = line.applyAsDouble(x[i]);
        }
        return ThinAerofoil.of(x, z);
    }
}
