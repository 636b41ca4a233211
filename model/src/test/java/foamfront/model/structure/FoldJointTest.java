package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Examples;
import org.junit.jupiter.api.Test;

class FoldJointTest {
    private static final double CHORD = 0.20;
    private static final WingBeam BEAM = new WingBeam(
            Sandwich.of(Examples.BOARD, Factors.NOMINAL),
            new WingSection.FoldedFlatBottom(0.12),
            new WingSpar.BoardStrip(),
            Examples.BEAD);

    /** Tape of 3 kN/m over 0.2 m of chord pulls 600 N; its lever is the fold's area over its chord. */
    @Test
    void tapeOnTheLowerSideBearsTheLift() {
        double lever = BEAM.meanHeight(CHORD);
        assertThat(lever).isBetween(0.5 * (0.12 * CHORD - 0.005), 0.12 * CHORD - 0.004);
        assertThat(FoldJoint.reserve(5, 0, BEAM, CHORD, 12.5e6)).isCloseTo(600 * lever / 5, within(1e-9));
    }

    @Test
    void softPaperGivesWayBeforeTheTape() {
        double lever = BEAM.meanHeight(CHORD);
        double papers = 2 * Examples.BOARD.faceThickness() * 4e6 * CHORD;
        assertThat(papers).isLessThan(600);
        assertThat(FoldJoint.reserve(5, 0, BEAM, CHORD, 4e6)).isCloseTo(papers * lever / 5, within(1e-9));
    }

    @Test
    void bandsOnTopHoldTheHangingTips() {
        double lever = BEAM.meanHeight(CHORD);
        assertThat(FoldJoint.reserve(0, 0.5, BEAM, CHORD, 12.5e6)).isCloseTo(80 * lever / 0.5, within(1e-9));
    }

    /** 5 N m over 14 mm is 350 N; on 11.2 kN of tape that is 3.1 % of 10 mm, 0.3 mm, and turns the half by 0.3 / 14. */
    @Test
    void theHingeLetsTheHalvesTurn() {
        double lever = BEAM.meanHeight(CHORD);
        double stretch = 5 / lever / (CHORD * 2e9 * 28e-6) * 0.010;
        assertThat(FoldJoint.turn(5, BEAM, CHORD)).isCloseTo(stretch / lever, within(1e-12));
    }
}
