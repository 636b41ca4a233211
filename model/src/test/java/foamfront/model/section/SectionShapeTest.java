package foamfront.model.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.design.WingSection;
import foamfront.model.design.WingSection.CurvedPlate;
import foamfront.model.design.WingSection.FlatPlate;
import foamfront.model.design.WingSection.FoldedFlatBottom;
import foamfront.model.design.WingSection.FoldedSymmetrical;
import foamfront.model.design.WingSection.SteppedPlate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SectionShapeTest {
    private static final double ROUNDING = 1e-12;
    private static final double BOARD = 0.005;
    private static final double CHORD = 0.2;

    /** Half the last printed digit of the worked example, m. */
    private static final double WORKED_EXAMPLE = 5e-6;

    /** An arc of 24 facets against the parabola, relative. */
    private static final double FACETED = 0.005;

    @Test
    void theWorkedFoldDevelopsToItsFacets() {
        // (0,0) (15,18) (60,24) (200,0) mm over a flat bottom: 23.43 + 45.40 + 142.04 + 200 = 410.87 mm
        SectionShape shape = SectionShape.of(new FoldedFlatBottom(0.12), 1e-12, CHORD);

        assertThat(shape.developedLength()).isCloseTo(0.41087, within(WORKED_EXAMPLE));
    }

    @ParameterizedTest(name = "thickness {0}")
    @ValueSource(doubles = {0.06, 0.09, 0.12, 0.15})
    void aFoldTakesTwoToTwoAndAnEighthChords(double thickness) {
        for (WingSection section :
                new WingSection[] {new FoldedFlatBottom(thickness), new FoldedSymmetrical(thickness)}) {
            assertThat(SectionShape.of(section, BOARD, CHORD).developedLength() / CHORD)
                    .isBetween(2.0, 2.15);
        }
    }

    @Test
    void platesTakeTheirBoards() {
        assertThat(SectionShape.of(new FlatPlate(), BOARD, CHORD).developedLength())
                .isEqualTo(CHORD);
        assertThat(SectionShape.of(new SteppedPlate(0.4), BOARD, CHORD).developedLength())
                .isCloseTo(1.4 * CHORD, within(ROUNDING));
        assertThat(SectionShape.of(new CurvedPlate(0.06), BOARD, CHORD).developedLength() / CHORD)
                .isBetween(1.009, 1.010); // 1 + 8/3 f² = 1.0096
    }

    @Test
    void thicknessAndTrailingEdgeAreAsFolded() {
        SectionShape fold = SectionShape.of(new FoldedFlatBottom(0.12), BOARD, CHORD);
        assertThat(fold.thickness()).isCloseTo(0.12, within(ROUNDING));
        assertThat(fold.trailingEdgeThickness()).isCloseTo(BOARD / CHORD, within(ROUNDING));
        assertThat(fold.upper(fold.stations() - 1) - fold.lower(fold.stations() - 1))
                .isCloseTo(fold.trailingEdgeThickness(), within(ROUNDING));

        SectionShape symmetrical = SectionShape.of(new FoldedSymmetrical(0.10), BOARD, CHORD);
        assertThat(symmetrical.thickness()).isCloseTo(0.10, within(ROUNDING));
        for (int i = 0; i < symmetrical.stations(); i++) {
            assertThat(symmetrical.meanLine(i)).isZero();
        }
        assertThat(SectionShape.of(new SteppedPlate(0.5), BOARD, CHORD).thickness())
                .isCloseTo(2 * BOARD / CHORD, within(ROUNDING));
    }

    @Test
    void aFoldIsNeverThinnerThanItsTwoBoards() {
        assertThat(SectionShape.of(new FoldedFlatBottom(0.06), BOARD, 0.1).thickness())
                .isCloseTo(0.10, within(ROUNDING));
    }

    static Stream<WingSection> everySection() {
        return Stream.of(
                new FlatPlate(),
                new SteppedPlate(0.4),
                new CurvedPlate(0),
                new CurvedPlate(0.06),
                new FoldedFlatBottom(0.12),
                new FoldedFlatBottom(0.03),
                new FoldedSymmetrical(0.12),
                new FoldedSymmetrical(0.03));
    }

    /** 0.03 of this chord is less than two boards. */
    @ParameterizedTest
    @MethodSource("everySection")
    void itsHeightIsItsOutlines(WingSection section) {
        SectionShape shape = SectionShape.of(section, BOARD, CHORD);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < shape.stations(); i++) {
            low = Math.min(low, shape.lower(i));
            high = Math.max(high, shape.upper(i));
        }
        assertThat(SectionShape.height(section, BOARD, CHORD)).isCloseTo(CHORD * (high - low), within(ROUNDING));
    }

    @Test
    void aCurvedPlateLiftsAsItsParabola() {
        ThinAerofoil theory =
                SectionShape.of(new CurvedPlate(0.06), BOARD, CHORD).thinAerofoil();

        assertThat(theory.zeroLiftAngle()).isCloseTo(-0.12, within(0.12 * FACETED));
        assertThat(theory.quarterChordMoment()).isCloseTo(-0.06 * Math.PI, within(0.06 * Math.PI * FACETED));
    }
}
