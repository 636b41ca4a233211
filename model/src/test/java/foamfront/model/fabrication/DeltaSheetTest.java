package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.design.Design;
import org.junit.jupiter.api.Test;

/** The one sheet of a delta, cut and folded up again. */
class DeltaSheetTest {
    /** What a builder can fold to, m. */
    private static final double FOLDED = 0.0005;

    private static final double ROUNDING = 1e-12;

    private final Airframe airframe = Airframe.of(Arrangements.of("delta"));
    private final PartsList parts = FlatPatterns.of(airframe);
    private final DeltaSheet sheet = (DeltaSheet) part(parts, "delta").pattern();

    @Test
    void refoldedItHasTheWishedOutside() {
        Outline flat = sheet.outline();
        double middle = flat.left() + 0.5 * flat.length();
        PatternLine fold = sheet.lines().stream()
                .filter(line -> line.kind() == PatternLine.Kind.FOLD && line.x1() == line.x2())
                .findFirst()
                .orElseThrow();
        Panel wing = airframe.wing().panels().get(0);
        Panel fin = airframe.fins().get(0).panels().get(0);

        // Both folds turn what lies outboard of them upright: the folds stand the span apart, the rest is height.
        assertThat(2 * Math.abs(fold.x1() - middle)).isCloseTo(airframe.span(), within(FOLDED));
        assertThat(0.5 * flat.length() - Math.abs(fold.x1() - middle))
                .isCloseTo(fin.tipZ() - fin.rootZ(), within(FOLDED));
        assertThat(fold.length()).isCloseTo(fin.rootChord(), within(FOLDED));
        assertThat(flat.width()).isCloseTo(wing.rootChord(), within(FOLDED));
        assertThat(Math.abs(fin.rootY())).isCloseTo(wing.tipY(), within(FOLDED));
    }

    @Test
    void theWallsOfTheFoldsGrooveMeetAtARightAngle() {
        PatternLine fold = sheet.lines().stream()
                .filter(line -> line.kind() == PatternLine.Kind.FOLD && line.x1() == line.x2())
                .findFirst()
                .orElseThrow();
        long walls = sheet.lines().stream()
                .filter(line -> line.kind() == PatternLine.Kind.BEVEL && line.x1() == line.x2())
                .filter(line -> Math.abs(Math.abs(line.x1() - fold.x1()) - sheet.thickness()) < ROUNDING)
                .count();

        // V width 2 t tan 45 degrees: a wall one thickness to each side.
        assertThat(walls).isEqualTo(2);
    }

    @Test
    void boardOfWingAndFinsIsWhatMassCounts() {
        double fins = airframe.fins().stream().mapToDouble(fin -> fin.area()).sum();
        assertThat(sheet.outline().area()).isCloseTo(sheet.area(), within(ROUNDING));
        assertThat(sheet.area()).isCloseTo(airframe.wing().area() + fins, within(ROUNDING));
        assertThat(parts.cut()).noneMatch(part -> part.name().equals("fin"));
        double sum = 0;
        for (CutPart part : parts.cut()) {
            sum += part.count() * part.pattern().outline().area();
        }
        assertThat(parts.area()).isCloseTo(sum, within(1e-9));
    }

    @Test
    void oneFinIsAPieceOfItsOwn() {
        Design single = Records.with(Arrangements.of("delta"), "tail.fin.count", 1);
        Airframe one = Airframe.of(single);
        PartsList cut = FlatPatterns.of(one);

        assertThat(one.fins().get(0).panels().get(0).rootY()).isZero();
        assertThat(part(cut, "fin").count()).isEqualTo(1);
        DeltaSheet plain = (DeltaSheet) part(cut, "delta").pattern();
        assertThat(plain.area()).isCloseTo(one.wing().area(), within(ROUNDING));
        assertThat(plain.folds()).isEqualTo(2);
    }

    @Test
    void itsWingPassesThroughASlotOfTheProfile() {
        SlottedBoard board = (SlottedBoard) part(parts, "body board").pattern();
        Panel root = airframe.wing().panels().get(0);

        assertThat(board.from()).isCloseTo(root.rootX(), within(ROUNDING));
        assertThat(board.slot()).isCloseTo(root.rootChord(), within(ROUNDING));
        assertThat(board.low() + 0.5 * board.thickness())
                .isCloseTo(root.rootZ() + 0.5 * board.width(), within(ROUNDING));
        double cut = board.lines().stream().mapToDouble(PatternLine::length).sum();
        assertThat(cut).isCloseTo(board.cut(), within(ROUNDING));
    }

    private static CutPart part(PartsList parts, String name) {
        return parts.cut().stream()
                .filter(part -> part.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
