package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Small parts of a delta come out of what its wing leaves of the sheet. */
class OffcutsTest {
    /** Rounding of coordinates of a metre. */
    private static final double ROUNDING = 1e-9;

    private static PartsList parts(Design design) {
        return FlatPatterns.of(Airframe.of(design));
    }

    private static Design small() {
        Design narrow = Records.with(Arrangements.of("delta"), "wing.planform.rootChord", 0.36);
        return Records.with(narrow, "body.height", 0.05);
    }

    /** Wing, profile board and nothing else fill the sheet's rectangle: doublers, mount and gussets go into the corners. */
    @Test
    void theyMayTurnTwoSheetsIntoOne() {
        Design design = small();
        PartsList parts = parts(design);
        RectanglePacker packer = new RectanglePacker();
        new SheetItems().load(packer, parts.cut(), design.board());
        double boxes = new OrderSearch(packer).quick(packer.bound());

        assertThat(Math.ceil(boxes - ROUNDING)).as("by bounding rectangles").isEqualTo(2);
        assertThat(new SheetNester().sheets(parts, design.board())).isEqualTo(1);
        SheetPlan plan = ThoroughNesting.of(parts, design.board(), 1, 2000);
        assertThat(plan.sheets()).isEqualTo(1);
        assertThat(plan.placements()).hasSize(parts.pieces());
        NestingLawsTest.disjoint(parts, plan.placements());
    }

    /** Points at random in each piece laid are no points of wing or fins nor of another piece. */
    @Test
    void nothingLaidTouchesTheWing() {
        for (int seed = 0; seed < 40; seed++) {
            Design design = Arrangements.near(Arrangements.of("delta"), seed);
            PartsList parts = parts(design);
            Offcuts offcuts = Objects.requireNonNull(Offcuts.of(parts.cut()));
            Outline wing = parts.cut().get(offcuts.host()).pattern().outline();
            List<Offcuts.Laid> laid = offcuts.laid();
            Random random = new Random(seed);
            for (int i = 0; i < laid.size(); i++) {
                double[] box = box(parts, laid.get(i));
                for (int k = 0; k < 400; k++) {
                    double x = box[0] + random.nextDouble() * box[2];
                    double y = box[1] + random.nextDouble() * box[3];
                    assertThat(x).isBetween(0.0, wing.length());
                    assertThat(y).isBetween(0.0, wing.width());
                    assertThat(inside(wing, wing.left() + x, wing.low() + y)).isFalse();
                }
                for (int j = 0; j < i; j++) {
                    double[] other = box(parts, laid.get(j));
                    boolean apart = box[0] + box[2] <= other[0] + ROUNDING
                            || other[0] + other[2] <= box[0] + ROUNDING
                            || box[1] + box[3] <= other[1] + ROUNDING
                            || other[1] + other[3] <= box[1] + ROUNDING;
                    assertThat(apart)
                            .as("pieces %d and %d, seed %d", i, j, seed)
                            .isTrue();
                }
            }
        }
    }

    /** Corner, extent along and across. */
    private static double[] box(PartsList parts, Offcuts.Laid piece) {
        Pattern pattern = parts.cut().get(piece.part()).pattern();
        double along = piece.turned() ? pattern.width() : pattern.length();
        double across = piece.turned() ? pattern.length() : pattern.width();
        return new double[] {piece.along(), piece.across(), along, across};
    }

    private static boolean inside(Outline o, double x, double y) {
        boolean in = false;
        for (int i = 0, k = o.size() - 1; i < o.size(); k = i++) {
            if ((o.y(i) > y) != (o.y(k) > y) && x < (o.x(k) - o.x(i)) * (y - o.y(i)) / (o.y(k) - o.y(i)) + o.x(i)) {
                in = !in;
            }
        }
        return in;
    }

    @Test
    void grainedPiecesAreNotTurnedAndNonePiecesLieTwice() {
        PartsList parts = parts(Arrangements.of("delta"));
        Offcuts offcuts = Objects.requireNonNull(Offcuts.of(parts.cut()));
        int[] count = new int[parts.cut().size()];
        for (Offcuts.Laid piece : offcuts.laid()) {
            assertThat(piece.turned() && parts.cut().get(piece.part()).grained())
                    .isFalse();
            count[piece.part()]++;
        }
        for (int i = 0; i < count.length; i++) {
            assertThat(count[i])
                    .isEqualTo(offcuts.taken(i))
                    .isLessThanOrEqualTo(parts.cut().get(i).count());
        }
        assertThat(Offcuts.of(parts(Arrangements.of("trainer")).cut())).isNull();
    }
}
