package foamfront.optimizer.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fast sort and the thinning against their plain meaning, on random sets with ties and copies. */
class FrontLawsTest {
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest(name = "{0} points, {1} objectives, seed {2}")
    @CsvSource({"1,2,1", "7,1,9", "60,2,2", "300,2,3", "60,3,4", "300,3,5", "200,4,6", "200,5,7"})
    void ranksAreThoseOfPeelingFrontAfterFront(int n, int objectives, long seed) {
        double[][] points = points(n, objectives, seed, 12);
        int[] ranks = new int[n];
        new FastSort().rank(IntStream.range(0, n).toArray(), n, points, ranks);
        assertThat(ranks).isEqualTo(peeled(points));
    }

    private static int[] peeled(double[][] points) {
        int n = points.length;
        int[] ranks = new int[n];
        Arrays.fill(ranks, -1);
        for (int i = 0; i < n; i++) {
            double[] point = points[i];
            if (Arrays.stream(points, 0, i).anyMatch(earlier -> Arrays.equals(earlier, point))) {
                ranks[i] = FastSort.COPY;
            }
        }
        for (int rank = 0; Arrays.stream(ranks).anyMatch(r -> r < 0); rank++) {
            int[] open = IntStream.range(0, n).filter(i -> ranks[i] < 0).toArray();
            int[] front = Arrays.stream(open)
                    .filter(i -> Arrays.stream(open).noneMatch(j -> NaiveFront.dominates(points[j], points[i])))
                    .toArray();
            for (int i : front) {
                ranks[i] = rank;
            }
        }
        return ranks;
    }

    @ParameterizedTest(name = "{0} objectives")
    @CsvSource({"2,1", "3,2", "4,3"})
    void thinningKeepsTheBestInEachObjectiveAndTheNumberAsked(int objectives, long seed) {
        double[][] points = points(150, objectives, seed, 1 << 20);
        int[] members = IntStream.range(0, points.length).toArray();
        int[] ranks = new int[points.length];
        new FastSort().rank(members, members.length, points, ranks);
        int[] front = Arrays.stream(members).filter(i -> ranks[i] == 0).toArray();
        int keep = Math.max(objectives, front.length / 2);
        double[] before = minima(points, front);
        new Thinning().thin(front, front.length, points, keep);
        int[] kept = Arrays.copyOf(front, keep);
        assertThat(Arrays.stream(kept).distinct().count()).isEqualTo(keep);
        assertThat(minima(points, kept)).containsExactly(before);
    }

    private static double[] minima(double[][] points, int[] members) {
        return IntStream.range(0, points[0].length)
                .mapToDouble(i -> Arrays.stream(members)
                        .mapToDouble(k -> points[k][i])
                        .min()
                        .orElseThrow())
                .toArray();
    }

    @ParameterizedTest(name = "{0} objectives")
    @CsvSource({"2", "3"})
    void thinningEvensOutALine(int objectives) {
        // 64 points crowd the left half of a line, 17 lie evenly over all of it: few of the crowd may stay.
        double[][] points = IntStream.range(0, 81)
                .mapToDouble(k -> k < 17 ? k / 16.0 : (k - 16.5) / 128)
                .mapToObj(t -> objectives == 2 ? new double[] {t, 1 - t} : new double[] {t, 1 - t, 0})
                .toArray(double[][]::new);
        int[] members = IntStream.range(0, 81).toArray();
        new Thinning().thin(members, 81, points, 17);
        double[] kept = Arrays.stream(members, 0, 17)
                .mapToDouble(k -> points[k][0])
                .sorted()
                .toArray();
        double widest = IntStream.range(1, 17)
                .mapToDouble(k -> kept[k] - kept[k - 1])
                .max()
                .orElseThrow();
        assertThat(kept[0]).isCloseTo(0, within(ROUNDING));
        assertThat(kept[16]).isCloseTo(1, within(ROUNDING));
        // Evenly 1/16; removal one at a time never leaves a gap of more than twice that where points were to be had.
        assertThat(widest).isLessThanOrEqualTo(2.0 / 16 + ROUNDING);
    }

    /** Coordinates on a grid, so that ties and copies occur. */
    static double[][] points(int n, int objectives, long seed, int grid) {
        RandomGenerator random = Generators.of(seed, n, objectives);
        return IntStream.range(0, n)
                .mapToObj(k -> IntStream.range(0, objectives)
                        .mapToDouble(i -> random.nextInt(grid))
                        .toArray())
                .toArray(double[][]::new);
    }
}
