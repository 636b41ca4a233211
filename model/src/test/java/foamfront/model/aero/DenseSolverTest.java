package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DenseSolverTest {
    /** Random matrices of this size lose three or four digits. */
    private static final double ROUNDING = 1e-10;

    @ParameterizedTest(name = "{0} unknowns")
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 16, 28, 33})
    void solvesForSeveralRightHandSides(int n) {
        Random random = new Random(n);
        int stride = n + 3;
        double[] a = new double[n * stride];
        double[] solution = new double[n * 3];
        for (int i = 0; i < solution.length; i++) {
            solution[i] = random.nextDouble() - 0.5;
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                // The zero corner makes exchanges necessary.
                a[i * stride + j] = i + j < n / 2 ? 0 : random.nextDouble() - 0.5;
                for (int b = 0; b < 3; b++) {
                    a[i * stride + n + b] += a[i * stride + j] * solution[j * 3 + b];
                }
            }
        }
        DenseSolver.solve(a, n, stride);
        for (int i = 0; i < n; i++) {
            for (int b = 0; b < 3; b++) {
                assertThat(a[i * stride + n + b]).isCloseTo(solution[i * 3 + b], within(ROUNDING));
            }
        }
    }
}
