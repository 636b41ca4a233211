package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Records;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Planform;
import foamfront.model.design.Wing;
import foamfront.model.design.WingBuild;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.design.WingTips;
import foamfront.model.mass.Examples;
import java.util.List;
import org.junit.jupiter.api.Test;

class WingWebTest {
    private static final double ROUNDING = 1e-12;

    private static PartsList parts(WingSection section, WingSpar spar, WingJoint joint) {
        Design design = Examples.design(1.2, section, spar, joint);
        return FlatPatterns.of(Airframe.of(design));
    }

    private static double area(PartsList parts, String name) {
        return parts.cut().stream()
                .filter(part -> part.name().equals(name))
                .mapToDouble(CutPart::area)
                .sum();
    }

    /** What ties the skins is cut and glued whether a stock spar stands beside it or not. */
    @Test
    void aFoldHasItsWebBesideAStockSpar() {
        WingSection fold = new WingSection.FoldedFlatBottom(0.12);
        PartsList board = parts(fold, new WingSpar.BoardStrip(), WingJoint.ONE_PIECE);
        PartsList stock = parts(fold, new WingSpar.Stock(Examples.TUBE), WingJoint.ONE_PIECE);
        assertThat(area(stock, "wing web")).isPositive().isEqualTo(area(board, "wing spar"));
        assertThat(area(board, "wing web")).isZero();
        PartsList plate = parts(new WingSection.FlatPlate(), new WingSpar.Stock(Examples.TUBE), WingJoint.ONE_PIECE);
        assertThat(area(plate, "wing web")).isZero();
    }

    /** Over the root chord of 220 mm each side of a level wing, which is what its strength counts on; less where it is bent up. */
    @Test
    void aPlugInTubeIsEngagedOverTheRootChord() {
        assertThat(joiner(0)).isCloseTo(2 * 0.22, within(ROUNDING));
        assertThat(joiner(0.05)).isLessThan(0.8 * 2 * 0.22);
    }

    private static double joiner(double dihedral) {
        Design design = Examples.design(
                1.2, new WingSection.FoldedFlatBottom(0.12), new WingSpar.Stock(Examples.TUBE), WingJoint.PLUG_IN);
        return FlatPatterns.of(Airframe.of(Records.with(design, "wing.planform.dihedral", dihedral))).stock().stream()
                .filter(piece -> piece.name().equals("wing joiner"))
                .mapToDouble(StockPiece::length)
                .sum();
    }

    private static Design wing(double span, double chord, double thickness, double dihedral, Planform.Break... breaks) {
        return Examples.with(
                Examples.trainer(),
                new Wing.Monoplane(
                        WingHeight.HIGH,
                        new Planform(span, chord, 1, 0, dihedral, 0, 0, List.of(breaks)),
                        new WingBuild(
                                new WingSection.FoldedFlatBottom(thickness),
                                WingJoint.ONE_PIECE,
                                new WingSpar.BoardStrip(),
                                HoldDown.RUBBER_BANDS,
                                WingTips.PLAIN),
                        0.26,
                        0.04),
                Examples.TAIL);
    }

    /** Arms of 377 mm each at 3 degrees, 31 mm high, make a strip of 754.6 mm, longer than the sheet's 754. */
    @Test
    void aBentDoublerComesOutOfTheSheet() {
        Built built = Built.of(wing(1.4, 0.4, 0.10, Math.toRadians(3)));
        CutPart doubler = built.named("wing joint doubler").get(0);
        assertThat(doubler.pattern().length()).isCloseTo(built.sheet(), within(ROUNDING));
        double arms = doubler.pattern().area() / (0.10 * 0.4 - 2 * built.board());
        assertThat(arms).isCloseTo(0.7534, within(0.0001));
        assertThat(doubler.glueLength()).isCloseTo(2 * arms, within(ROUNDING));
    }

    /** Where the wing falls outboard its upper edges run on past the chord line: a panel as long as the sheet is cut in two. */
    @Test
    void piecesAreCountedWithTheirMitredEnds() {
        double sheet = Built.of(Examples.trainer()).sheet();
        double panel = sheet - 0.0005;
        double span = 4 * panel;
        Built straight = Built.of(wing(span, 0.2, 0.12, 0, new Planform.Break(0.5, 0.2, 0, 0)));
        Built drooped = Built.of(wing(span, 0.2, 0.12, 0, new Planform.Break(0.5, 0.2, 0, -0.2)));
        assertThat(straight.named("wing")).hasSize(2);
        assertThat(drooped.named("wing")).hasSize(4);
        for (CutPart piece : drooped.named("wing")) {
            assertThat(piece.pattern().length()).isLessThanOrEqualTo(sheet);
        }
    }

    /** A wing of 20 mm chord has tip floats 4 mm square, which boards of 5 mm leave no inside. */
    @Test
    void aFloatWithoutAnInsideHasNoEnds() {
        Design hull = Records.with(
                TestAeroplanes.all()
                        .filter(one -> one.name().equals("amphibian"))
                        .findFirst()
                        .orElseThrow(),
                "wing",
                TestAeroplanes.monoplane(
                        1.2,
                        0.02,
                        1,
                        0.04,
                        TestAeroplanes.build(
                                new WingSection.FlatPlate(),
                                WingJoint.ONE_PIECE,
                                new WingSpar.BoardStrip(),
                                HoldDown.GLUED)));
        Built built = Built.of(hull);
        assertThat(built.named("tip float")).isNotEmpty();
        assertThat(built.named("tip float end")).isEmpty();
    }
}
