package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import foamfront.model.design.Planform;
import foamfront.model.design.Wing;
import foamfront.model.design.WingBuild;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.mass.Examples;
import foamfront.model.parts.Spar;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A straight joiner stays inside a wing that bends: tried by its corners in the section, not by the formula. */
class JoinerTest {
    private static final double BOARD = 0.005;

    /** A tenth of a paper's thickness, m. */
    private static final double SKIN = 2e-5;

    private static final WingSection FOLD = new WingSection.FoldedFlatBottom(0.12);
    private static final Spar TUBE = Examples.TUBE;

    @ParameterizedTest(name = "chord {0} m, {1} degrees")
    @CsvSource({"0.20, 2", "0.20, 5", "0.24, 8", "0.30, 12"})
    void itsCornersTouchBothSkinsAndNoMore(double chord, double degrees) {
        double bend = Math.toRadians(degrees);
        double reach = Joiner.reach(1, FOLD, chord, BOARD, TUBE, bend);
        double lift = Joiner.lift(reach, bend);
        // Inside height behind the web, from the outside: top facet from 30 % to one board at the trailing edge, less
        // both boards.
        double station = 0.3 + 0.5 * (BOARD + TUBE.width()) / chord;
        double outside = 0.12 * chord + (station - 0.3) / 0.7 * (BOARD - 0.12 * chord);
        double inside = outside - 2 * BOARD;
        double half = 0.5 * TUBE.height();
        double slope = StrictMath.tan(0.5 * bend);
        double atMouth = 0.5 * inside + lift;
        double atEnd = atMouth - reach * slope;
        assertThat(atMouth + half).isCloseTo(inside, within(SKIN));
        assertThat(atEnd - half).isCloseTo(0, within(SKIN));
    }

    @Test
    void aLevelWingAndOneCutFlatLeaveItAsLongAsWished() {
        assertThat(Joiner.reach(0.2, FOLD, 0.2, BOARD, TUBE, 0)).isEqualTo(0.2);
        assertThat(Joiner.reach(0.2, new WingSection.FlatPlate(), 0.2, BOARD, TUBE, 0.2))
                .isEqualTo(0.2);
    }

    /** Up or down alike, and never less than its own height. */
    @Test
    void signDoesNotMatterAndSomethingIsAlwaysEngaged() {
        assertThat(Joiner.reach(0.2, FOLD, 0.2, BOARD, TUBE, 0.1))
                .isEqualTo(Joiner.reach(0.2, FOLD, 0.2, BOARD, TUBE, -0.1));
        assertThat(Joiner.reach(0.2, FOLD, 0.06, BOARD, TUBE, 0.1)).isEqualTo(TUBE.height());
    }

    /** A break of 20 degrees leaves no room for twelve diameters: braces on both sides of each spar take over. */
    @Test
    void aSteepBreakIsBraced() {
        assertThat(braces(0.02)).isZero();
        assertThat(braces(0.35)).isEqualTo(4);
    }

    private static int braces(double outer) {
        return FlatPatterns.of(Airframe.of(bent(outer))).cut().stream()
                .filter(part -> part.name().equals("wing splice doubler"))
                .mapToInt(CutPart::count)
                .sum();
    }

    private static Design bent(double outer) {
        Wing.Monoplane wing = (Wing.Monoplane) Examples.trainer().wing();
        WingBuild build = wing.build();
        return Examples.with(
                Examples.trainer(),
                new Wing.Monoplane(
                        WingHeight.HIGH,
                        new Planform(1.2, 0.2, 1, 0, 0, 0, 0, List.of(new Planform.Break(0.5, 0.2, 0, outer))),
                        new WingBuild(
                                FOLD, WingJoint.ONE_PIECE, new WingSpar.Stock(TUBE), build.holdDown(), build.tips()),
                        wing.x(),
                        wing.z()),
                Examples.TAIL);
    }
}
