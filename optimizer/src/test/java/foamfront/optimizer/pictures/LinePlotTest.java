package foamfront.optimizer.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LinePlotTest {
    private static String svg(double[] x, double[] y) {
        return new LinePlot("t", "across", "up", List.of(new LinePlot.Line("one", x, y))).svg();
    }

    @Test
    void pointsThatAreNoNumbersAreLeftOut() {
        assertThat(svg(new double[] {0, 1, 2, 3}, new double[] {5, Double.NaN, 7, Double.POSITIVE_INFINITY}))
                .isEqualTo(svg(new double[] {0, 2}, new double[] {5, 7}))
                .doesNotContain("NaN");
    }

    @Test
    void aLineWithoutPointsLeavesItsWords() {
        LinePlot.Line none = new LinePlot.Line("one", new double[] {1}, new double[] {Double.NaN});
        LinePlot.Line some = new LinePlot.Line("two", new double[] {1, 2}, new double[] {3, 4});
        assertThat(new LinePlot("t", "across", "up", List.of(none, some)).svg())
                .contains("a one", "b two")
                .doesNotContain("NaN")
                .doesNotContain("Infinity");
        assertThat(svg(new double[] {1}, new double[] {Double.NaN}))
                .contains("t</text>")
                .doesNotContain("a one", "NaN", "Infinity");
    }
}
