package foamfront.model.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Nose;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import org.junit.jupiter.api.Test;

class ClearanceCheckTest {
    private static final double ROUNDING = 1e-12;

    @Test
    void theWidestThingSetsTheClearance() {
        // Inside 65.4 × 70.4 mm; the load is 50 mm square, the tallest thing by far.
        ClearanceCheck check = ClearanceCheck.of(Airframe.of(Examples.trainer(Examples.load(Place.NOSE, false))));
        assertThat(check.clearance()).isCloseTo(0.0654 - 0.050, within(ROUNDING));
    }

    @Test
    void batteriesMayLieOnTheirSideAndLoadsOutsideDoNotCount() {
        ClearanceCheck check = ClearanceCheck.of(Airframe.of(Examples.trainer(Examples.load(Place.BELOW, false))));
        // Battery 34 × 24 mm: 31.4 mm beside it upright, 36.4 mm above; on its side 41.4 and 36.4.
        assertThat(check.clearance()).isCloseTo(0.0704 - 0.034, within(ROUNDING));
    }

    @Test
    void theRowLeavesWhatItDoesNotFill() {
        double bare = ClearanceCheck.of(Airframe.of(Examples.trainer())).spareLength();
        // Front 10, controller 45 + 5, battery 105 + 5, two servos abreast 23 + 5, receiver 45 + 5 mm, in a body of 960
        // mm.
        assertThat(bare).isCloseTo(0.960 - 0.248, within(ROUNDING));
        double laden = ClearanceCheck.of(Airframe.of(Examples.trainer(Examples.load(Place.BALANCE_POINT, false))))
                .spareLength();
        assertThat(bare - laden).isCloseTo(0.105, within(ROUNDING));
    }

    @Test
    void twoBaysShareTheHeightAndNotTheLength() {
        Design laden = Examples.with(
                Examples.trainer(Examples.load(Place.BALANCE_POINT, true)),
                new Body.TwoBayTube(0.96, 0.075, 0.10, Nose.FIXED));
        ClearanceCheck check = ClearanceCheck.of(Airframe.of(laden));
        // 100 less three boards of 4.8, battery 24, load 50: 11.6 mm for both bays.
        assertThat(check.clearance()).isCloseTo(0.0058, within(ROUNDING));
        assertThat(check.spareLength()).isCloseTo(0.960 - 0.248, within(ROUNDING));
    }

    @Test
    void aPodEndsBeforeItsBoom() {
        Design pod = Examples.with(
                Examples.trainer(), new Body.PodAndBoom(0.96, 0.075, 0.08, Nose.FIXED, 0.45, Examples.TUBE));
        assertThat(ClearanceCheck.of(Airframe.of(pod)).spareLength()).isCloseTo(0.450 - 0.248, within(ROUNDING));
    }

    @Test
    void aFanMustPassThroughTheBody() {
        Design fan = Examples.with(
                Examples.trainer(), new Power.DuctedFan(Examples.FAN, Examples.BATTERY, Examples.PLANT.controller()));
        // Fan 64 mm and 4 mm of walls in 65.4 mm.
        assertThat(ClearanceCheck.of(Airframe.of(fan)).clearance()).isCloseTo(0.0654 - 0.068, within(ROUNDING));
    }

    @Test
    void onAProfileBoardOnlyHeightCounts() {
        Design profile = Examples.with(Examples.trainer(), new Body.ProfileBoard(0.96, 0.0048, 0.12, Nose.FIXED));
        assertThat(ClearanceCheck.of(Airframe.of(profile)).clearance()).isCloseTo(0.12 - 0.028, within(ROUNDING));
    }
}
