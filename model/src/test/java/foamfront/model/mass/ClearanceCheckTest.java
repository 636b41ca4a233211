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
        double clearance = ClearanceCheck.least(Airframe.of(Examples.trainer(Examples.load(Place.NOSE, false))));
        assertThat(clearance).isCloseTo(0.0654 - 0.050, within(ROUNDING));
    }

    @Test
    void batteriesMayLieOnTheirSideAndLoadsOutsideDoNotCount() {
        double clearance = ClearanceCheck.least(Airframe.of(Examples.trainer(Examples.load(Place.BELOW, false))));
        // Battery 34 × 24 mm: 31.4 mm beside it upright, 36.4 mm above; on its side 41.4 and 36.4.
        assertThat(clearance).isCloseTo(0.0704 - 0.034, within(ROUNDING));
    }

    @Test
    void twoBaysShareTheHeight() {
        Design laden = Examples.with(
                Examples.trainer(Examples.load(Place.BALANCE_POINT, true)),
                new Body.TwoBayTube(0.96, 0.075, 0.10, Nose.FIXED));
        double clearance = ClearanceCheck.least(Airframe.of(laden));
        // 100 less three boards of 4.8, battery 24, load 50: 11.6 mm for both bays.
        assertThat(clearance).isCloseTo(0.0058, within(ROUNDING));
    }

    @Test
    void aFanMustPassThroughTheBody() {
        Design fan = Examples.with(
                Examples.trainer(), new Power.DuctedFan(Examples.FAN, Examples.BATTERY, Examples.PLANT.controller()));
        // Fan 64 mm and 4 mm of walls in 65.4 mm.
        assertThat(ClearanceCheck.least(Airframe.of(fan))).isCloseTo(0.0654 - 0.068, within(ROUNDING));
    }

    /** Of a board 120 mm high below the wing that passes through it 40 mm over its axis, 4.8 mm thick. */
    private static final double UNDER_WING = 0.06 + 0.04 - 0.5 * 0.0048;

    @Test
    void onAProfileBoardOnlyHeightCounts() {
        Design profile = Examples.with(Examples.trainer(), new Body.ProfileBoard(0.96, 0.0048, 0.12, Nose.FIXED));
        assertThat(ClearanceCheck.least(Airframe.of(profile))).isCloseTo(UNDER_WING - 0.028, within(ROUNDING));
        Design low = Examples.with(Examples.trainer(), new Body.ProfileBoard(0.96, 0.0048, 0.06, Nose.FIXED));
        assertThat(ClearanceCheck.least(Airframe.of(low))).isCloseTo(0.06 - 0.028, within(ROUNDING));
    }
}
