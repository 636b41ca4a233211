package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Pieces lie apart and on the sheet, whatever the aeroplane, and the count does not depend on the order of the list. */
class NestingLawsTest {
    private static final int TRIES = 400;

    /** Rounding of coordinates of a metre. */
    private static final double ROUNDING = 1e-9;

    static Stream<Design> all() {
        return TestAeroplanes.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void piecesLieOnTheirSheetInsideTheRim(Design design) {
        PartsList parts = FlatPatterns.of(Airframe.of(design));
        SheetPlan plan = ThoroughNesting.of(parts, design.board(), 1, TRIES);
        assertThat(plan.placements()).hasSize(parts.pieces());
        for (Placement place : plan.placements()) {
            double[][] corners = corners(parts, place);
            for (int i = 0; i < corners[0].length; i++) {
                assertThat(corners[0][i])
                        .isBetween(SheetMargins.RIM - ROUNDING, design.board().length() - SheetMargins.RIM + ROUNDING);
                assertThat(corners[1][i])
                        .isBetween(SheetMargins.RIM - ROUNDING, design.board().width() - SheetMargins.RIM + ROUNDING);
            }
            assertThat(place.sheet()).isBetween(0, plan.sheets() - 1);
            assertThat(place.turned() && parts.cut().get(place.part()).grained())
                    .isFalse();
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void noTwoPiecesOverlap(Design design) {
        PartsList parts = FlatPatterns.of(Airframe.of(design));
        disjoint(parts, ThoroughNesting.of(parts, design.board(), 1, TRIES).placements());
    }

    /** The outlines of pieces on one sheet do not overlap. */
    static void disjoint(PartsList parts, List<Placement> places) {
        for (int i = 0; i < places.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (places.get(i).sheet() == places.get(j).sheet()) {
                    assertThat(apart(corners(parts, places.get(i)), corners(parts, places.get(j))))
                            .as(parts.cut().get(places.get(i).part()).name() + " and "
                                    + parts.cut().get(places.get(j).part()).name())
                            .isTrue();
                }
            }
        }
    }

    private static double[][] corners(PartsList parts, Placement place) {
        Outline outline = parts.cut().get(place.part()).pattern().outline();
        double[][] xy = new double[2][outline.size()];
        for (int i = 0; i < outline.size(); i++) {
            xy[0][i] = place.along(outline, outline.x(i), outline.y(i));
            xy[1][i] = place.across(outline, outline.x(i), outline.y(i));
        }
        return xy;
    }

    /** No edges cross and neither holds a corner of the other. */
    private static boolean apart(double[][] a, double[][] b) {
        for (int i = 0, k = a[0].length - 1; i < a[0].length; k = i++) {
            for (int j = 0, l = b[0].length - 1; j < b[0].length; l = j++) {
                double d1 = side(a, k, a, i, b, l);
                double d2 = side(a, k, a, i, b, j);
                double d3 = side(b, l, b, j, a, k);
                double d4 = side(b, l, b, j, a, i);
                if (d1 * d2 < 0 && d3 * d4 < 0) {
                    return false;
                }
            }
        }
        return !inside(a, b[0][0], b[1][0]) && !inside(b, a[0][0], a[1][0]);
    }

    private static double side(double[][] p, int i, double[][] q, int j, double[][] r, int k) {
        return (q[0][j] - p[0][i]) * (r[1][k] - p[1][i]) - (q[1][j] - p[1][i]) * (r[0][k] - p[0][i]);
    }

    private static boolean inside(double[][] p, double x, double y) {
        boolean in = false;
        for (int i = 0, k = p[0].length - 1; i < p[0].length; k = i++) {
            if ((p[1][i] > y) != (p[1][k] > y)
                    && x < (p[0][k] - p[0][i]) * (y - p[1][i]) / (p[1][k] - p[1][i]) + p[0][i]) {
                in = !in;
            }
        }
        return in;
    }

    @ParameterizedTest
    @MethodSource("all")
    void countsRespectTheBoundAndTheThoroughPlanIsNeverWorse(Design design) {
        PartsList parts = FlatPatterns.of(Airframe.of(design));
        int quick = new SheetNester().sheets(parts, design.board());
        SheetPlan plan = ThoroughNesting.of(parts, design.board(), 1, TRIES);
        assertThat(plan.bound()).isPositive().isLessThanOrEqualTo(plan.sheets());
        assertThat(plan.sheets()).isLessThanOrEqualTo(quick);
        assertThat(plan.usedArea()).isBetween(0.2, 1.0);
    }

    @ParameterizedTest
    @MethodSource("all")
    void orderOfTheListAndEarlierWorkDoNotMatter(Design design) {
        PartsList parts = FlatPatterns.of(Airframe.of(design));
        SheetNester used = new SheetNester();
        int first = used.sheets(parts, design.board());
        List<CutPart> shuffled = new ArrayList<>(parts.cut());
        Random random = new Random(5);
        for (int i = 0; i < 5; i++) {
            Collections.shuffle(shuffled, random);
            assertThat(used.sheets(new PartsList(shuffled, parts.stock()), design.board()))
                    .isEqualTo(first);
        }
    }

    /** Upright passes alone, and with those from the side. */
    @ParameterizedTest(name = "seed {0}, {1} passes")
    @CsvSource({"1, 20", "2, 20", "3, 20", "4, 20", "5, 2000", "6, 2000", "7, 2000"})
    void randomRectanglesNeverOverlap(long seed, int tries) {
        Random random = new Random(seed);
        RectanglePacker packer = new RectanglePacker();
        packer.clear(100, 80);
        int n = 120;
        for (int i = 0; i < n; i++) {
            packer.add(1 + random.nextInt(50), 1 + random.nextInt(50), random.nextBoolean());
        }
        double before = new OrderSearch(packer).quick(0);
        double score = new OrderSearch(packer).thorough(seed, tries);
        assertThat(score).isLessThanOrEqualTo(before).isEqualTo(packer.score());
        laidApart(packer, 100, 80);
    }

    /** A strip and two sheets whose packings come from the side. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"hopper-turton-c3-2, 60, 30", "sheet-508x762-c, 508, 762"})
    void whatIsFilledFromTheSideLiesApartToo(String name, double width, double height) {
        RectanglePacker packer = NestingInstances.load().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow()
                .packer();
        double score = new OrderSearch(packer).thorough(1, 16_000);
        assertThat(score).isEqualTo(packer.score());
        assertThat(packer.strip() ? packer.top() : packer.bins()).isEqualTo(packer.strip() ? height : 2);
        laidApart(packer, width, height);
    }

    /** Nothing lies lower than what may not be turned is high, however little area there is. */
    @Test
    void aTallPieceOnAWideStripStands() {
        RectanglePacker packer = new RectanglePacker();
        packer.clear(10, Double.POSITIVE_INFINITY);
        packer.add(1, 5, false);
        packer.add(1, 1, false);
        packer.add(7, 2, true);
        assertThat(packer.goal()).isEqualTo(5);
        assertThat(new OrderSearch(packer).thorough(1, 400)).isEqualTo(5);
        laidApart(packer, 10, 5);
    }

    private static void laidApart(RectanglePacker packer, double width, double height) {
        for (int i = 0; i < packer.size(); i++) {
            double w = packer.turned[i] ? packer.height(i) : packer.width(i);
            double h = packer.turned[i] ? packer.width(i) : packer.height(i);
            assertThat(packer.atX[i]).isBetween(-ROUNDING, width - w + ROUNDING);
            assertThat(packer.atY[i]).isBetween(-ROUNDING, height - h + ROUNDING);
            assertThat(packer.turned[i] && !packer.turnable(i)).isFalse();
            for (int j = 0; j < i; j++) {
                double w2 = packer.turned[j] ? packer.height(j) : packer.width(j);
                double h2 = packer.turned[j] ? packer.width(j) : packer.height(j);
                boolean beside =
                        packer.atX[i] + w <= packer.atX[j] + ROUNDING || packer.atX[j] + w2 <= packer.atX[i] + ROUNDING;
                boolean above =
                        packer.atY[i] + h <= packer.atY[j] + ROUNDING || packer.atY[j] + h2 <= packer.atY[i] + ROUNDING;
                assertThat(packer.bin[i] != packer.bin[j] || beside || above).isTrue();
            }
        }
    }

    @Test
    void aPieceTooLargeForTheSheetTakesOneOfItsOwn() {
        CutPart large = part(0.9, 0.3);
        CutPart small = part(0.3, 0.2);
        assertThat(new SheetNester().sheets(new PartsList(List.of(large, small), List.of()), TestAeroplanes.BOARD))
                .isEqualTo(2);
    }

    @Test
    void wholeSheetsHoldNoMoreThanTheirArea() {
        double length = SheetMargins.usable(TestAeroplanes.BOARD.length());
        double width = SheetMargins.usable(TestAeroplanes.BOARD.width());
        PartsList three = new PartsList(List.of(part(length, width), part(length, width), part(0.01, 0.01)), List.of());
        assertThat(new SheetNester().sheets(three, TestAeroplanes.BOARD)).isEqualTo(3);
    }

    private static CutPart part(double length, double width) {
        return new CutPart(
                "board", Assembly.BODY, 1, false, true, new Rectangle(length, width), 0, 0, 0, 0, 0, 0, false);
    }
}
