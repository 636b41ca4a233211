package foamfront.model.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.Place;
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
        // Front 10, battery 105 + 5, two servos abreast 23 + 5, receiver 45 + 5 mm, in a body of 960 mm.
        assertThat(bare).isCloseTo(0.960 - 0.198, within(ROUNDING));
        double laden = ClearanceCheck.of(Airframe.of(Examples.trainer(Examples.load(Place.BALANCE_POINT, false))))
                .spareLength();
        assertThat(bare - laden).isCloseTo(0.105, within(ROUNDING));
    }
}
