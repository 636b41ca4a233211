package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GrainAndPairsTest {
    private static CutPart part(Pattern pattern, int count, boolean grained) {
        return new CutPart("p", Assembly.WING, count, false, grained, pattern, 0, 0, 0, 0.3, 0.1, 0, false);
    }

    /** Half-wings c_r, c_t of breadth s lie in (c_r + c_t) by s head to tail, plus what the slanted edge leans (derived). */
    @ParameterizedTest(name = "tip chord {0} m")
    @ValueSource(doubles = {0.10, 0.14, 0.18})
    void taperedHalvesLieHeadToTail(double tip) {
        Plate plate = Plate.of(0.20, tip, 0.50, 0.0045);
        double lean = plate.length() / 0.50;
        assertThat(plate.pairWidth()).isBetween((0.20 + tip) / lean, (0.20 + tip) * lean * 1.02);
        assertThat(plate.pairWidth()).isLessThan(2 * plate.width());
    }

    @Test
    void aPairTakesOneSheetWhereTwoBoxesTakeTwo() {
        // two boxes of 0.27 m are wider than the usable sheet of 0.50 m, the pair of 0.40 m is not
        Plate plate = Plate.of(0.27, 0.13, 0.70, 0.0045);
        PartsList parts = new PartsList(List.of(part(plate, 2, true)), List.of());
        assertThat(2 * plate.width()).isGreaterThan(SheetMargins.usable(TestAeroplanes.BOARD.width()));
        assertThat(new SheetNester().sheets(parts, TestAeroplanes.BOARD)).isEqualTo(1);
    }

    /** 450 mm along the grain and 700 mm across it leave a sheet of 762 by 508 mm only when turned. */
    @Test
    void grainForbidsTurning() {
        Rectangle across = new Rectangle(0.45, 0.70);
        PartsList grained = new PartsList(List.of(part(across, 1, true)), List.of());
        PartsList free = new PartsList(List.of(part(across, 1, false)), List.of());
        assertThat(grained.sheetFit(TestAeroplanes.BOARD)).isGreaterThan(1);
        assertThat(free.sheetFit(TestAeroplanes.BOARD)).isLessThan(1);
    }

    @ParameterizedTest(name = "span {0} m")
    @ValueSource(doubles = {0.8, 1.0, 1.2, 1.4})
    void noGrainedPieceIsTurnedInAnyPlan(double span) {
        PartsList parts = FlatPatterns.of(Airframe.of(TestAeroplanes.trainer(span)));
        SheetPlan plan = ThoroughNesting.of(parts, TestAeroplanes.BOARD, 3, 500);
        assertThat(plan.sheets()).isGreaterThanOrEqualTo(plan.bound());
        for (Placement place : plan.placements()) {
            if (parts.cut().get(place.part()).grained()) {
                assertThat(place.turned()).isFalse();
            }
        }
    }

    /** What the nest is measured against: area over usable sheet, rounded up. */
    @Test
    void theBoundCountsAreaOverUsableSheet() {
        double usable = SheetMargins.usable(0.762) * SheetMargins.usable(0.508);
        PartsList parts = new PartsList(List.of(part(new Rectangle(0.2, 0.2), 20, false)), List.of());
        assertThat(parts.area()).isCloseTo(0.8, within(1e-12));
        assertThat(ThoroughNesting.of(parts, TestAeroplanes.BOARD, 1, 500).bound())
                .isEqualTo((int) Math.ceil(0.8 / usable));
    }
}
