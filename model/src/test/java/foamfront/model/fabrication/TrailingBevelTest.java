package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.design.WingSection;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the top of a folded wing is bevelled towards its trailing edge. */
class TrailingBevelTest {
    private static final double BOARD = 0.005;
    private static final double ROUNDING = 1e-12;

    /**
     * Worked by hand: a chord of 200 mm is 24 mm high at 60 mm and 5 mm at 200 mm, a slope of 19 / 140. Seen from the top, whose inside
     * lies 5 mm deep, the bottom's inside comes up from the edge at that slope and is as deep 5 · 140 / 19 = 36.842 mm ahead of it.
     */
    private static final double AHEAD = 0.005 * 140 / 19;

    private static FoldedPanel panel(FoldedPanel.Skins skins, Hinge... hinges) {
        FoldedSection section = Objects.requireNonNull(FoldedSection.of(new WingSection.FoldedFlatBottom(0.12)));
        return new FoldedPanel(section, skins, 0.2, 0.2, 0, 0.5, BOARD, List.of(hinges));
    }

    /** What is bevelled that far from the edge of a top. */
    private static List<PatternLine> bevels(FoldedPanel top) {
        return top.lines().stream()
                .filter(line -> line.kind() == PatternLine.Kind.BEVEL)
                .filter(line -> Math.abs(top.width() - line.y1() - AHEAD) < ROUNDING && line.y1() == line.y2())
                .toList();
    }

    @Test
    void itBeginsWhereTheInsidesMeet() {
        FoldedPanel top = panel(FoldedPanel.Skins.TOP);
        assertThat(bevels(top)).hasSize(1);
        assertThat(bevels(top).get(0).length()).isCloseTo(0.5, within(ROUNDING));
        assertThat(top.bevels()).isEqualTo(1);
    }

    /** Behind a hinge further ahead than 36.8 mm there is no bottom to close on; a shallower control is bevelled through. */
    @ParameterizedTest(name = "control of {0} of the chord: {1} stretches, {2} m")
    @CsvSource({"0.25, 2, 0.2", "0.15, 3, 0.5"})
    void alongControlsOnlyAheadOfTheirHinge(double chord, int stretches, double length) {
        FoldedPanel top = panel(FoldedPanel.Skins.TOP, new Hinge(chord, 0.2, 0.8));
        assertThat(bevels(top)).hasSize(stretches);
        assertThat(bevels(top).stream().mapToDouble(PatternLine::length).sum()).isCloseTo(length, within(ROUNDING));
    }

    @Test
    void theBottomHasNone() {
        assertThat(panel(FoldedPanel.Skins.BOTTOM).lines()).noneMatch(line -> line.kind() == PatternLine.Kind.BEVEL);
    }
}
