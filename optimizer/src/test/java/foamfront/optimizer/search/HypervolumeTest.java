package foamfront.optimizer.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Closed forms, derived as integrals of the fronts. */
class HypervolumeTest {
    private static final double ROUNDING = 1e-12;

    /** The staircase of n points falls short of a curve by about its two sides over 2 n. */
    private static final double SAMPLING = 2e-4;

    private static final int SAMPLES = 10_000;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 9, 100})
    void theBestPointsOnALineCoverTheirShare(int n) {
        double[][] points = IntStream.rangeClosed(1, n)
                .mapToObj(i -> new double[] {i / (n + 1.0), 1 - i / (n + 1.0)})
                .toArray(double[][]::new);
        assertThat(Hypervolume.of(points, new double[] {1, 1})).isCloseTo(n / (2.0 * (n + 1)), within(ROUNDING));
    }

    @Test
    void aSquareRootFrontCoversItsIntegral() {
        double[][] points = IntStream.rangeClosed(0, SAMPLES)
                .mapToDouble(k -> (double) k / SAMPLES)
                .mapToObj(f -> new double[] {f * f, 1 - f})
                .toArray(double[][]::new);
        assertThat(Hypervolume.of(points, new double[] {1, 1})).isCloseTo(2.0 / 3, within(SAMPLING));
        assertThat(Hypervolume.of(points, new double[] {1.1, 1.1})).isCloseTo(0.876667, within(SAMPLING));
    }

    @Test
    void aSphereLeavesAnEighthOfItsVolume() {
        int n = 120;
        double[][] points = IntStream.range(0, n * n)
                .mapToObj(k -> {
                    double a = 0.5 * Math.PI * Math.floorDiv(k, n) / (n - 1);
                    double b = 0.5 * Math.PI * (k % n) / (n - 1);
                    return new double[] {Math.cos(a) * Math.cos(b), Math.cos(a) * Math.sin(b), Math.sin(a)};
                })
                .toArray(double[][]::new);
        double gridding = 1.5 * Math.PI / n / 2; // steps of a quarter circle over n on either angle
        assertThat(Hypervolume.of(points, new double[] {1.1, 1.1, 1.1})).isCloseTo(0.807401, within(gridding));
        assertThat(Hypervolume.of(points, new double[] {1.1, 1.1, 1.1})).isLessThan(0.807401);
    }

    @Test
    void boxesInFourAndFiveObjectivesAddUp() {
        double[][] apart = {{0, 0.5, 0.5, 0.5}, {0.5, 0, 0.5, 0.5}, {0.5, 0.5, 0, 0.5}, {0.5, 0.5, 0.5, 0}};
        // Each box has 1/2^3, the common corner 1/2^4 counts once: 4 (1/8 - 1/16) + 1/16.
        assertThat(Hypervolume.of(apart, new double[] {1, 1, 1, 1})).isCloseTo(5.0 / 16, within(ROUNDING));
        assertThat(Hypervolume.of(new double[][] {{0.5, 0.5, 0.5, 0.5, 0.5}}, new double[] {1, 1, 1, 1, 1}))
                .isCloseTo(1.0 / 32, within(ROUNDING));
    }

    @Test
    void pointsOnOrBeyondTheReferenceCountNothing() {
        assertThat(Hypervolume.of(new double[][] {{1, 0}, {0, 2}}, new double[] {1, 1}))
                .isZero();
        assertThat(Hypervolume.of(new double[0][], new double[] {1, 1})).isZero();
    }
}
