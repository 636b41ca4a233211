package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.mass.Examples;
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

    /** Over the root chord of 220 mm each side, which is what its strength counts on. */
    @Test
    void aPlugInTubeIsEngagedOverTheRootChord() {
        PartsList plugged =
                parts(new WingSection.FoldedFlatBottom(0.12), new WingSpar.Stock(Examples.TUBE), WingJoint.PLUG_IN);
        double joiner = plugged.stock().stream()
                .filter(piece -> piece.name().equals("wing joiner"))
                .mapToDouble(StockPiece::length)
                .sum();
        assertThat(joiner).isCloseTo(2 * 0.22, within(ROUNDING));
    }
}
