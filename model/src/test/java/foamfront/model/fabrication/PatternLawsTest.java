package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Design;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold for every part of every arrangement. */
class PatternLawsTest {
    private static final Offset<Double> ROUNDING = within(1e-10);

    static Stream<Design> all() {
        return TestAeroplanes.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void lengthsAreTheSumsOfTheDrawnLines(Design design) {
        for (CutPart part : FlatPatterns.of(Airframe.of(design)).cut()) {
            Pattern pattern = part.pattern();
            assertThat(pattern.cut()).as(part.name() + " cut").isCloseTo(sum(pattern, PatternLine.Kind.CUT), ROUNDING);
            assertThat(pattern.scored())
                    .as(part.name() + " scored")
                    .isCloseTo(sum(pattern, PatternLine.Kind.SCORE), ROUNDING);
            assertThat(pattern.grooved())
                    .as(part.name() + " grooved")
                    .isCloseTo(sum(pattern, PatternLine.Kind.GROOVE), ROUNDING);
            assertThat(pattern.bevelled())
                    .as(part.name() + " bevelled")
                    .isCloseTo(sum(pattern, PatternLine.Kind.BEVEL), ROUNDING);
            assertThat(pattern.folded())
                    .as(part.name() + " folded")
                    .isCloseTo(sum(pattern, PatternLine.Kind.FOLD), ROUNDING);
            assertThat(pattern.taped())
                    .as(part.name() + " taped")
                    .isCloseTo(sum(pattern, PatternLine.Kind.TAPE), ROUNDING);
        }
    }

    private static double sum(Pattern pattern, PatternLine.Kind kind) {
        return pattern.lines().stream()
                .filter(line -> line.kind() == kind)
                .mapToDouble(PatternLine::length)
                .sum();
    }

    @ParameterizedTest
    @MethodSource("all")
    void countOfFoldsIsTheCountOfTheirLines(Design design) {
        for (CutPart part : FlatPatterns.of(Airframe.of(design)).cut()) {
            long drawn = part.pattern().lines().stream()
                    .filter(line -> line.kind() == PatternLine.Kind.FOLD || line.kind() == PatternLine.Kind.SCORE)
                    .count();
            assertThat((long) part.pattern().folds()).as(part.name()).isEqualTo(drawn);
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void countOfBevelsIsTheCountOfTheirLines(Design design) {
        for (CutPart part : FlatPatterns.of(Airframe.of(design)).cut()) {
            long drawn = part.pattern().lines().stream()
                    .filter(line -> line.kind() == PatternLine.Kind.BEVEL)
                    .count();
            assertThat((long) part.pattern().bevels()).as(part.name()).isEqualTo(drawn);
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void outlineHasThePatternsSizeAndArea(Design design) {
        for (CutPart part : FlatPatterns.of(Airframe.of(design)).cut()) {
            Pattern pattern = part.pattern();
            Outline outline = pattern.outline();
            assertThat(pattern.length()).as(part.name()).isCloseTo(outline.length(), ROUNDING);
            assertThat(pattern.width()).as(part.name()).isCloseTo(outline.width(), ROUNDING);
            assertThat(pattern.area()).as(part.name()).isCloseTo(outline.area(), ROUNDING);
            assertThat(pattern.pairWidth()).isLessThanOrEqualTo(2 * pattern.width());
            assertThat(2 * pattern.area())
                    .as(part.name())
                    .isLessThanOrEqualTo(pattern.pairWidth() * pattern.length() + 1e-12);
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void everythingDrawnLiesOnThePiece(Design design) {
        for (CutPart part : FlatPatterns.of(Airframe.of(design)).cut()) {
            Outline o = part.pattern().outline();
            for (PatternLine line : part.pattern().lines()) {
                // the walls of a slanted groove end square to it, up to a board or two over the edge
                double slack = switch (line.kind()) {
                    case BEVEL -> design.board().thickness();
                    case GROOVE -> 2 * design.board().thickness();
                    default -> 1e-9;
                };
                assertThat(line.x1()).as(part.name()).isBetween(o.left() - slack, o.left() + o.length() + slack);
                assertThat(line.y1()).as(part.name()).isBetween(o.low() - slack, o.low() + o.width() + slack);
                assertThat(line.x2()).as(part.name()).isBetween(o.left() - slack, o.left() + o.length() + slack);
                assertThat(line.y2()).as(part.name()).isBetween(o.low() - slack, o.low() + o.width() + slack);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void handedPartsComeInPairs(Design design) {
        PartsList parts = FlatPatterns.of(Airframe.of(design));
        int pieces = 0;
        for (CutPart part : parts.cut()) {
            assertThat(part.mirrored() && part.count() % 2 != 0).as(part.name()).isFalse();
            assertThat(part.count()).isPositive();
            pieces += part.count();
        }
        assertThat(parts.pieces()).isEqualTo(pieces);
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyPartComesOutOfTheSheetAndLiesWithinTheAeroplane(Design design) {
        Airframe airframe = Airframe.of(design);
        PartsList parts = FlatPatterns.of(airframe);
        assertThat(parts.sheetFit(design.board())).isBetween(0.2, 1.0);
        // a pusher's motor stands behind the trailing edge by the propeller's clearance
        double furthest = Math.max(airframe.body().length(), furthest(airframe)) + 0.02;
        for (CutPart part : parts.cut()) {
            double x = part.x() + (part.fromBalancePoint() ? airframe.chordX() + 0.3 * airframe.chord() : 0);
            assertThat(x).as(part.name()).isBetween(-0.05, furthest);
            assertThat(part.y()).as(part.name()).isBetween(0.0, 0.5 * airframe.span() + 1e-9);
            assertThat(part.glue()).isNotNegative();
        }
    }

    private static double furthest(Airframe airframe) {
        double aft = 0;
        for (Surface surface : airframe.surfaces()) {
            for (Panel panel : surface.panels()) {
                aft = Math.max(aft, Math.max(panel.rootX() + panel.rootChord(), panel.tipX() + panel.tipChord()));
            }
        }
        return aft;
    }

    @ParameterizedTest
    @MethodSource("all")
    void boardMassIsAreaTimesArealDensity(Design design) {
        PartsList parts = FlatPatterns.of(Airframe.of(design));
        double mass = 0;
        double consumables = 0;
        for (CutPart part : parts.cut()) {
            mass += PartsList.mass(part, design.board(), TestAeroplanes.WORKSHOP);
            consumables += part.glueLength() * TestAeroplanes.WORKSHOP.glueLinearMass()
                    + (part.tapeLength() + part.coveringLength()) * TestAeroplanes.WORKSHOP.tapeLinearMass();
        }
        double board = parts.area() * design.board().arealDensity();
        assertThat(mass).isCloseTo(board + consumables, ROUNDING);
        double stated = parts.glue() * TestAeroplanes.WORKSHOP.glueLinearMass()
                + parts.tape() * TestAeroplanes.WORKSHOP.tapeLinearMass();
        assertThat(consumables).isCloseTo(stated, ROUNDING);
    }

    @Test
    void aLongerWingTakesMoreBoardAndNeverFewerSheets() {
        SheetNester nester = new SheetNester();
        double area = 0;
        int sheets = 0;
        for (double span = 0.8; span < 1.5; span += 0.05) {
            Design design = TestAeroplanes.trainer(span);
            PartsList parts = FlatPatterns.of(Airframe.of(design));
            assertThat(parts.area()).isGreaterThan(area);
            int needed = nester.sheets(parts, design.board());
            assertThat(needed).isGreaterThanOrEqualTo(sheets);
            area = parts.area();
            sheets = needed;
        }
    }

    /** Bending at 2y/b 0.24 is half the root's under an elliptic load. */
    @ParameterizedTest(name = "span {0} m")
    @ValueSource(doubles = {1.6, 2.2, 3.0, 4.0, 5.0})
    void splicesStandWhereBendingIsBelowHalfTheRoots(double span) {
        PartsList parts = FlatPatterns.of(Airframe.of(TestAeroplanes.trainer(span)));
        List<CutPart> splices = parts.cut().stream()
                .filter(part -> part.name().equals("wing splice doubler"))
                .toList();
        assertThat(splices).isNotEmpty();
        for (CutPart splice : splices) {
            assertThat(splice.y() / (0.5 * span)).isGreaterThan(0.24);
        }
    }

    @Test
    void splitSkinsTogetherAreTheWholeLessTheNoseBand() {
        double band = 0.01 * Math.sqrt(0.6 * 0.6 + 0.02 * 0.02);
        double whole = skins(FoldedPanel.Skins.BOTH).area();
        double bottom = skins(FoldedPanel.Skins.BOTTOM).area();
        double top = skins(FoldedPanel.Skins.TOP).area();
        assertThat(whole).isCloseTo(bottom + top + band, ROUNDING);
        double notch = 0.2 * 0.5 * (0.24 + 0.2) * 0.3; // a fifth of the chord over the outer half
        assertThat(bottom).isCloseTo(0.5 * (0.28 + 0.2) * 0.6 - notch, ROUNDING);
    }

    private static FoldedPanel skins(FoldedPanel.Skins skins) {
        FoldedSection section = Objects.requireNonNull(FoldedSection.of(TestAeroplanes.FOLDED));
        return new FoldedPanel(section, skins, 0.28, 0.2, 0.02, 0.6, 0.005, List.of(new Hinge(0.2, 0.5, 1)));
    }

    /** Edges keep their true lengths in space when laid flat, and so do the ends. */
    @Test
    void layingFlatKeepsTheOuterEdges() {
        Outline o = skins(FoldedPanel.Skins.TOP).outline();
        double end = 0.08 * 0.005 / 0.24; // the edge is a board high on the mean chord and shrinks with the chord
        double trailing = Math.sqrt(0.6 * 0.6 + Math.pow(0.02 - 0.08, 2) + end * end);
        double last = distance(o, o.size() / 2, o.size() / 2 + 1);
        assertThat(last).isCloseTo(trailing, ROUNDING);
    }

    private static double distance(Outline o, int i, int j) {
        return Outline.distance(o.x(i), o.y(i), o.x(j), o.y(j));
    }
}
