package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Panel;
import foamfront.model.design.WingSection;
import foamfront.model.section.SectionShape;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Closed forms of folds, tubes and folded sections, worked out by hand beforehand. */
class FoldingTest {
    /** Half the last printed digit of figures given to a hundredth of a millimetre. */
    private static final double PRINTED = 0.5e-5;

    private static final double ROUNDING = 1e-12;
    private static final double BOARD = 0.005;

    @ParameterizedTest(name = "{0} degrees")
    @CsvSource({"30,2.68", "45,4.14", "60,5.77", "90,10.00", "120,17.32"})
    void grooveOfOneFold(double degrees, double groove) {
        double bend = degrees * Math.PI / 180;
        assertThat(Folding.bevelWidth(BOARD, bend)).isCloseTo(groove / 1000, within(PRINTED));
    }

    @Test
    void wrappedTubeTakesItsOuterPerimeterAndEightThicknessesMoreThanTheInner() {
        Tube tube = new Tube(0.5, 0.070, 0.060, BOARD, false, 0);
        double outer = tube.width() - Tube.TAB;
        double inner = 2 * (tube.side() + tube.height() - 4 * BOARD);
        assertThat(outer).isCloseTo(0.260, within(ROUNDING));
        assertThat(inner).isCloseTo(0.220, within(ROUNDING));
        assertThat(outer - inner).isCloseTo(8 * BOARD, within(ROUNDING));
    }

    @Test
    void bendsOfAClosedTubeAddUpToAFullTurn() {
        assertThat(90 * new Tube(0.5, 0.07, 0.06, BOARD, false, 0).folds()).isEqualTo(360);
        assertThat(2 * 90 * new Tube(0.5, 0.07, 0.06, BOARD, true, 0).folds()).isEqualTo(360);
    }

    @ParameterizedTest(name = "radius {0} mm")
    @CsvSource({"50,1.00", "30,1.67", "100,0.50"})
    void parallelScoresCloseOnAnArc(double radius, double kerf) {
        assertThat(Folding.closingKerf(BOARD, radius / 1000, 0.010)).isCloseTo(kerf / 1000, within(PRINTED));
    }

    @Test
    void workedSectionDevelopsToItsHandSum() {
        FoldedSection section = Objects.requireNonNull(FoldedSection.of(new WingSection.FoldedFlatBottom(0.12)));
        assertThat(0.200 * section.developed()).isCloseTo(0.41087, within(PRINTED));
    }

    @ParameterizedTest(name = "thickness {0}")
    @ValueSource(doubles = {0.04, 0.08, 0.12, 0.15})
    void developedWidthLiesBetweenTwoAndTwoPointOneFiveChords(double thickness) {
        assertThat(Objects.requireNonNull(FoldedSection.of(new WingSection.FoldedFlatBottom(thickness)))
                        .developed())
                .isBetween(2.0, 2.15);
        assertThat(Objects.requireNonNull(FoldedSection.of(new WingSection.FoldedSymmetrical(thickness)))
                        .developed())
                .isBetween(2.0, 2.15);
    }

    /** The aerodynamic outline and the pattern end alike, one board thick. */
    @ParameterizedTest(name = "thickness {0}")
    @ValueSource(doubles = {0.08, 0.10, 0.12, 0.15})
    void patternsAndAerodynamicsFoldTheSameSection(double thickness) {
        WingSection flat = new WingSection.FoldedFlatBottom(thickness);
        WingSection both = new WingSection.FoldedSymmetrical(thickness);
        for (WingSection section : List.of(flat, both)) {
            double developed = 0.2
                    * Objects.requireNonNull(FoldedSection.of(section))
                            .ending(BOARD / 0.2)
                            .developed();
            assertThat(SectionShape.of(section, BOARD, 0.2).developedLength()).isCloseTo(developed, within(ROUNDING));
        }
    }

    @Test
    void noStripFitsATwelvePercentSectionBelowEightyThreeMillimetres() {
        assertThat(Folding.insideHeight(0.083, 0.12, BOARD)).isNegative();
        assertThat(Folding.insideHeight(0.084, 0.12, BOARD)).isPositive();
    }

    @Test
    void foldingAStraightPanelGivesBackChordAndThickness() {
        FoldedSection section = Objects.requireNonNull(FoldedSection.of(new WingSection.FoldedFlatBottom(0.12)));
        FoldedPanel panel = new FoldedPanel(section, FoldedPanel.Skins.BOTH, 0.2, 0.2, 0, 0.5, BOARD, List.of());
        double[] folds = panel.lines().stream()
                .filter(line -> line.kind() == PatternLine.Kind.FOLD || line.kind() == PatternLine.Kind.SCORE)
                .mapToDouble(PatternLine::y1)
                .sorted()
                .toArray();
        // nose, nose, first and second bend; facets rise by the slopes of the section
        double x = 0;
        double z = 0;
        double[] ends = {folds[2], folds[3], panel.width()};
        double[] slopes = {18.0 / 15, 6.0 / 45, (1000 * BOARD - 24) / 140};
        double at = folds[1];
        double top = 0;
        for (int i = 0; i < 3; i++) {
            double run = (ends[i] - at) / Math.sqrt(1 + slopes[i] * slopes[i]);
            x += run;
            z += run * slopes[i];
            top = Math.max(top, z);
            at = ends[i];
        }
        double halfMillimetre = 0.0005; // what a builder can fold to
        assertThat(folds[0]).isCloseTo(0.2, within(halfMillimetre));
        assertThat(x).isCloseTo(0.2, within(halfMillimetre));
        assertThat(z).isCloseTo(BOARD, within(halfMillimetre));
        assertThat(top).isCloseTo(0.024, within(halfMillimetre));
        assertThat(folds[1] - folds[0]).isCloseTo(2 * BOARD, within(ROUNDING));
    }

    @Test
    void foldingATubeGivesBackItsOutside() {
        Tube tube = new Tube(0.5, 0.075, 0.08, BOARD, false, 0.1);
        double[] folds = tube.lines().stream()
                .filter(line -> line.kind() == PatternLine.Kind.FOLD)
                .mapToDouble(PatternLine::y1)
                .toArray();
        assertThat(folds[0]).isCloseTo(0.075, within(ROUNDING));
        assertThat(folds[1] - folds[0]).isCloseTo(0.08, within(ROUNDING));
        assertThat(folds[2] - folds[1]).isCloseTo(0.075, within(ROUNDING));
        assertThat(folds[3] - folds[2]).isCloseTo(0.08, within(ROUNDING));
    }

    @Test
    void aSliceOfAPanelKeepsItsEdges() {
        Panel panel = new Panel(0, 0, 0, 0.2, 0, 0.05, 1, 0.1, 0.1, 0);
        Panel inner = Station.slice(panel, 0, 0.4);
        Panel outer = Station.slice(panel, 0.4, 1);
        assertThat(inner.area() + outer.area()).isCloseTo(panel.area(), within(ROUNDING));
        assertThat(inner.tipChord()).isEqualTo(outer.rootChord());
    }

    @Test
    void twoTaperedPiecesHeadToTailNeedBothChords() {
        Plate plate = Plate.of(0.2, 0.12, 0.6, BOARD);
        double lean = 0.08; // the trailing edge lies along the grain, so widths shrink by its slope
        double cosine = 0.6 / Math.sqrt(0.6 * 0.6 + lean * lean);
        // 4 parts in 1000: the slanted ends reach a little beyond the level part
        assertThat(plate.pairWidth()).isCloseTo((0.2 + 0.12) * cosine, within(0.004 + 0.012));
        assertThat(plate.pairWidth()).isLessThan(2 * plate.width());
    }
}
