package foamfront.model.fabrication;

import foamfront.model.design.WingSection;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Worked examples of boards, tape, glue and folds, figured by hand or weighed before the model was written. */
class FoldingExternalTest {
    private static final double BOARD = 0.005;

    @Test
    void foldsOfFiveMillimetreBoard() {
        Validation check = Validation.of(
                Subject.STRUCTURE, "Folds of 5 mm board", "Geometry of a bend, worked by hand (derived).");
        double[][] grooves = {{30, 2.68}, {45, 4.14}, {60, 5.77}, {90, 10.00}, {120, 17.32}};
        for (double[] row : grooves) {
            double width = 1000 * Folding.bevelWidth(BOARD, row[0] * Math.PI / 180);
            check.value("groove of a bend of " + (int) row[0] + " degrees", row[1], width, 0.005, "mm");
        }
        double[][] arcs = {{50, 1.00}, {30, 1.67}, {100, 0.50}};
        for (double[] row : arcs) {
            double kerf = 1000 * Folding.closingKerf(BOARD, row[0] / 1000, 0.010);
            check.value("kerf that closes scores 10 mm apart on radius " + (int) row[0], row[1], kerf, 0.005, "mm");
        }
        Tube tube = new Tube(0.5, 0.070, 0.060, BOARD, false, 0);
        check.value("groove of a control's hinge for 30 degrees", 2.7, 2000 * HingeGroove.WALL * BOARD, 0.05, "mm")
                .value("paper round a square nose", 10, 1000 * Folding.doubledAllowance(BOARD), 1e-9, "mm")
                .value(
                        "wrap on its outer over one on its inner paper",
                        40,
                        1000 * (tube.width() - Tube.TAB - 2 * (tube.side() + tube.height() - 4 * BOARD)),
                        1e-9,
                        "mm")
                .value("chord where a 12 % fold has no inside left", 83.33, 1000 * leastChord(), 0.01, "mm")
                .band("glue tab of a tube", 10, 15, 1000 * Tube.TAB, "mm")
                .band("strip laid flat in a fold", 15, 35, 1000 * Folding.FLAT_STRIP, "mm")
                .band("gap between parts, 2 mm at most, no knife wider", 0.3, 2, 1000 * SheetMargins.GAP, "mm")
                .band("rim of a sheet left unused", 3, 5, 1000 * SheetMargins.RIM, "mm");
        FoldedSection section = Objects.requireNonNull(FoldedSection.of(new WingSection.FoldedFlatBottom(0.12)));
        check.value(
                        "wrap of a tube 70 x 60 mm outside, without its tab",
                        260,
                        1000 * (tube.width() - Tube.TAB),
                        0.005,
                        "mm")
                .value("skins of a 12 % fold of 200 mm chord", 410.87, 200 * section.developed(), 0.005, "mm");
    }

    /** Inside height is straight in chord: where it is nothing. */
    private static double leastChord() {
        double low = Folding.insideHeight(0, 0.12, BOARD);
        double high = Folding.insideHeight(1, 0.12, BOARD);
        return -low / (high - low);
    }

    @Test
    void whatBoardAndBeadsWeigh() {
        CutPart whole = new CutPart(
                "sheet", Assembly.BODY, 1, false, true, new Rectangle(0.762, 0.508), 0, 0, 0, 0, 0, 0, false);
        Validation.of(
                        Subject.STRUCTURE,
                        "Weighed sheet, 20 x 30 in",
                        "Hobby article on foam boards, rcspaceflight, 15 June 2013, kitchen scale of 1 g.")
                .value(
                        "light sheet of 297.1 g/m2",
                        115,
                        1000 * PartsList.mass(whole, TestAeroplanes.BOARD, TestAeroplanes.WORKSHOP),
                        0.5,
                        "g");
        Validation.of(
                        Subject.STRUCTURE,
                        "Board of a pair of half-wings",
                        "Two trapezia head to tail need (root + tip) x span, worked by hand (derived).")
                .value(
                        "chords 280 and 200 mm, straight trailing edge",
                        480,
                        1000
                                * new Plate(0.28, 0.20, 0.08, 0.6, false, BOARD, 0, List.of())
                                        .outline()
                                        .pairWidth(),
                        0.5,
                        "mm");
    }
}
