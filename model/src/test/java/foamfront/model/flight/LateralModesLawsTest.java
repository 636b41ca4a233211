package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.atmosphere.Atmosphere;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Every root found makes the determinant of the equations of motion vanish, and where none is found it is said. */
class LateralModesLawsTest {
    private static final int AEROPLANES = 2000;

    /** 85 of these are lost; a solver that gave up more often would fail here. */
    private static final int MOST_LOST = 100;

    private static final double PRESSURE = 30;
    private static final double SPAN = 1.2;
    private static final double SPEED = 11;
    private static final double MASS = 0.8;
    private static final double INERTIA_X = 0.03;
    private static final double INERTIA_Z = 0.06;

    /** Of the largest product in the determinant; Newton's last step is 1e-10. */
    private static final double VANISHES = 1e-7;

    @Test
    void rootsSatisfyTheEquationsOfMotionOrAreNotGiven() {
        SplittableRandom random = new SplittableRandom(5);
        int lost = 0;
        for (int i = 0; i < AEROPLANES; i++) {
            LateralDerivatives k = new LateralDerivatives(
                    -random.nextDouble(0.05, 0.8),
                    random.nextDouble(-0.4, 0.1),
                    -random.nextDouble(0.01, 0.6),
                    random.nextDouble(0, 0.4),
                    random.nextDouble(-0.05, 0.2),
                    random.nextDouble(-0.15, 0.1),
                    -random.nextDouble(0, 0.2));
            LateralModes modes = LateralModes.of(k, PRESSURE, SPAN, SPEED, MASS, INERTIA_X, INERTIA_Z);
            if (!modes.settled()) {
                lost++;
                assertThat(modes.spiralDoubling()).isNaN();
                continue;
            }
            assertThat(Math.abs(determinant(k, modes.rollRate()))).isLessThan(VANISHES);
            assertThat(Math.abs(determinant(k, modes.spiralRate()))).isLessThan(VANISHES);
            assertThat(modes.rollRate()).isNotEqualTo(modes.spiralRate());
        }
        // Little damping in roll and much dihedral merge both roots into a pair.
        assertThat(lost).isBetween(1, MOST_LOST);
    }

    /** Of s X = A X for sideslip, rates of roll and yaw, and bank, over the size of its terms. */
    private static double determinant(LateralDerivatives k, double s) {
        double y = k.sideForce() * PRESSURE / (MASS * SPEED);
        double l = PRESSURE * SPAN / INERTIA_X;
        double n = PRESSURE * SPAN / INERTIA_Z;
        double rate = SPAN / (2 * SPEED);
        double[][] m = {
            {s - y, 0, 1, -Atmosphere.GRAVITY / SPEED},
            {-l * k.rollSideslip(), s - l * rate * k.rollDamping(), -l * rate * k.rollYaw(), 0},
            {-n * k.yawStiffness(), -n * rate * k.yawRoll(), s - n * rate * k.yawDamping(), 0},
            {0, -1, 0, s}
        };
        double size = 1;
        for (double[] row : m) {
            double largest = 0;
            for (double v : row) {
                largest = Math.max(largest, Math.abs(v));
            }
            size *= largest;
        }
        return determinant(m) / size;
    }

    private static double determinant(double[][] m) {
        if (m.length == 1) {
            return m[0][0];
        }
        double sum = 0;
        for (int column = 0; column < m.length; column++) {
            double[][] minor = new double[m.length - 1][m.length - 1];
            for (int row = 1; row < m.length; row++) {
                for (int c = 0, to = 0; c < m.length; c++) {
                    if (c != column) {
                        minor[row - 1][to++] = m[row][c];
                    }
                }
            }
            sum += (column % 2 == 0 ? 1 : -1) * m[0][column] * determinant(minor);
        }
        return sum;
    }
}
