package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What must hold of the sheets of two hundred designs of every arrangement. */
class NestingRelationsLawsTest {
    private static final int CASES = 200;

    /** Whether pieces lie apart does not depend on how hard the search tries. */
    private static final int TRIES = 2;

    /** Rounding of coordinates of a metre. */
    private static final double ROUNDING = 1e-9;

    /** Upright boxes round two pieces are apart, or the pieces are the two of a pair, which interlock, or lie in a delta's offcuts. */
    @Test
    void placedPiecesAreDisjointAndInside() {
        for (int seed = 0; seed < CASES; seed++) {
            Design design = Arrangements.near(seed);
            PartsList parts = FlatPatterns.of(Airframe.of(design));
            List<Placement> places =
                    ThoroughNesting.of(parts, design.board(), 1, TRIES).placements();
            assertThat(places).hasSize(parts.pieces());
            List<double[]> boxes = new ArrayList<>();
            for (Placement place : places) {
                double[] box = box(parts, place);
                boolean large = parts.sheetFit(design.board()) > 1;
                assertThat(large || inside(box, design)).as("seed %d", seed).isTrue();
                boxes.add(box);
            }
            for (int i = 0; i < places.size(); i++) {
                for (int j = 0; j < i; j++) {
                    boolean pair = places.get(i).part() == places.get(j).part();
                    boolean offcut = delta(parts, places.get(i)) || delta(parts, places.get(j));
                    boolean elsewhere = places.get(i).sheet() != places.get(j).sheet();
                    assertThat(pair || offcut || elsewhere || apart(boxes.get(i), boxes.get(j)))
                            .as("seed %d", seed)
                            .isTrue();
                }
            }
        }
    }

    private static boolean delta(PartsList parts, Placement place) {
        return parts.cut().get(place.part()).name().equals("delta");
    }

    private static double[] box(PartsList parts, Placement place) {
        Outline outline = parts.cut().get(place.part()).pattern().outline();
        double[] box = {1e9, 1e9, -1e9, -1e9};
        for (int i = 0; i < outline.size(); i++) {
            double along = place.along(outline, outline.x(i), outline.y(i));
            double across = place.across(outline, outline.x(i), outline.y(i));
            box[0] = Math.min(box[0], along);
            box[1] = Math.min(box[1], across);
            box[2] = Math.max(box[2], along);
            box[3] = Math.max(box[3], across);
        }
        return box;
    }

    private static boolean inside(double[] box, Design design) {
        double length = design.board().length() - SheetMargins.RIM;
        double width = design.board().width() - SheetMargins.RIM;
        return box[0] > SheetMargins.RIM - ROUNDING
                && box[1] > SheetMargins.RIM - ROUNDING
                && box[2] < length + ROUNDING
                && box[3] < width + ROUNDING;
    }

    private static boolean apart(double[] a, double[] b) {
        return a[2] <= b[0] + ROUNDING || b[2] <= a[0] + ROUNDING || a[3] <= b[1] + ROUNDING || b[3] <= a[1] + ROUNDING;
    }

    /** However the list of parts is ordered, it takes as many sheets, as much board and as much of every line. */
    @Test
    void theOrderOfPartsDoesNotMatter() {
        SheetNester nester = new SheetNester();
        for (int seed = 0; seed < CASES; seed++) {
            Design design = Arrangements.near(seed);
            PartsList parts = FlatPatterns.of(Airframe.of(design));
            List<CutPart> shuffled = new ArrayList<>(parts.cut());
            Collections.shuffle(shuffled, new Random(seed));
            PartsList other = new PartsList(shuffled, parts.stock());
            assertThat(nester.sheets(other, design.board())).isEqualTo(nester.sheets(parts, design.board()));
            assertThat(other.pieces()).isEqualTo(parts.pieces());
            assertThat(Math.abs(other.area() - parts.area())).isLessThan(ROUNDING);
            assertThat(other.sheetFit(design.board())).isEqualTo(parts.sheetFit(design.board()));
        }
    }
}
