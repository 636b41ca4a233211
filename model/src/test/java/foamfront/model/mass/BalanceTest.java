package foamfront.model.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.Place;
import java.util.List;
import org.junit.jupiter.api.Test;

class BalanceTest {
    private static final double ROUNDING = 1e-12;

    /** One block of 1 kg at {@code x} and a battery of 0.25 kg, 0.1 m long. */
    private static MassBreakdown block(double x, MassItem... more) {
        List<MassItem> items = new java.util.ArrayList<>(List.of(more));
        items.add(MassItem.point("block", 1, x, 0, 0, MassGroup.BODY));
        return new MassBreakdown(
                items, new MassItem("battery", 0.25, 0, 0, 0, 0.1, 0.03, 0.02, MassGroup.BATTERY, false));
    }

    private static final Balance.Reference AIM = new Balance.Reference(0.32, 0.2, 0.30);

    @Test
    void theBatteryGoesWhereMomentsSay() {
        // 1.25 × 0.30 = 1 × 0.325 + 0.25 x: x = 0.2.
        Balance balance = Balance.solve(block(0.325), new BatteryBay(0.05, 0.5, 0.1, 0), 1, AIM);
        assertThat(balance.batteryX()).isCloseTo(0.2, within(ROUNDING));
        assertThat(balance.x()).isCloseTo(0.30, within(ROUNDING));
        assertThat(balance.marginFull()).isCloseTo(0.1, within(ROUNDING));
        assertThat(balance.missingTravel()).isZero();
        assertThat(balance.noseBallast()).isZero();
        assertThat(balance.tailBallast()).isZero();
    }

    @Test
    void whatCannotBalanceSaysHowFarAndHowManyGrams() {
        // Wanted at 0.2, the bay starts at 0.25: the centre at 0.30, 0.1 m too far aft.
        Balance balance = Balance.solve(block(0.325), new BatteryBay(0.25, 0.6, 0.1, 0), 1, AIM);
        assertThat(balance.batteryX()).isCloseTo(0.30, within(ROUNDING));
        assertThat(balance.missingTravel()).isCloseTo(0.1, within(ROUNDING));
        // 0.25 × 0.1 = m × 0.30.
        assertThat(balance.noseBallast()).isCloseTo(0.025 / 0.30, within(ROUNDING));
        assertThat(balance.tailBallast()).isZero();
    }

    @Test
    void aNoseHeavyAeroplaneNamesItsTailBallast() {
        // Wanted at 0.4, the bay ends at 0.35: the centre at 0.30.
        Balance balance = Balance.solve(block(0.275), new BatteryBay(0.05, 0.35, 0.1, 0), 1, AIM);
        assertThat(balance.missingTravel()).isCloseTo(0.1, within(ROUNDING));
        assertThat(balance.tailBallast()).isCloseTo(0.025 / 0.70, within(ROUNDING));
        assertThat(balance.noseBallast()).isZero();
    }

    @Test
    void aLoadAtTheBalancePointPushesTheBatteryToItsNearerSide() {
        BatteryBay bay = new BatteryBay(0.05, 0.6, 0.1, 0.12);
        // Blocked from 0.24 to 0.36: the battery's centre at most 0.19 or at least 0.41.
        assertThat(bay.nearest(0.27, 0.30)).isCloseTo(0.19, within(ROUNDING));
        assertThat(bay.nearest(0.33, 0.30)).isCloseTo(0.41, within(ROUNDING));
        assertThat(bay.nearest(0.30, 0.30)).isCloseTo(0.19, within(ROUNDING));
        assertThat(bay.nearest(0.15, 0.30)).isCloseTo(0.15, within(ROUNDING));
    }

    @Test
    void aBayWithoutRoomEitherSideCountsTheOverlap() {
        BatteryBay bay = new BatteryBay(0.25, 0.35, 0.1, 0.12);
        double place = bay.nearest(0.2, 0.30);
        assertThat(place).isCloseTo(0.30, within(ROUNDING));
        assertThat(bay.overlap(place, 0.30)).isCloseTo(0.11, within(ROUNDING));
    }

    @Test
    void releasedLoadsSpreadTheMarginsAboutTheAim() {
        MassItem drop = MassItem.point("seed", 0.2, 0.1, 0, 0, MassGroup.RELEASED);
        Balance balance = Balance.solve(block(0.34, drop), new BatteryBay(0.05, 0.6, 0.1, 0), 1, AIM);
        assertThat(balance.marginHalf()).isCloseTo(0.1, within(ROUNDING));
        assertThat(balance.marginFull()).isGreaterThan(0.1);
        assertThat(balance.marginReleased()).isLessThan(0.1);
        assertThat(balance.leastMargin()).isEqualTo(balance.marginReleased());
        assertThat(balance.greatestMargin()).isEqualTo(balance.marginFull());
        assertThat(balance.foremostX(AIM.chord())).isEqualTo(balance.x());
    }

    @Test
    void aLoadReleasedBehindTheAimMovesTheBalancePointForward() {
        MassItem drop = MassItem.point("seed", 0.2, 0.5, 0, 0, MassGroup.RELEASED);
        Balance balance = Balance.solve(block(0.30, drop), new BatteryBay(0.05, 0.6, 0.1, 0), 1, AIM);
        // Placed for half: 1 × 0.30 + 0.1 × 0.5 + 0.25 x = 1.35 × 0.30, so x = 0.22; without the load 0.355 / 1.25.
        assertThat(balance.greatestMargin()).isEqualTo(balance.marginReleased());
        assertThat(balance.foremostX(AIM.chord())).isCloseTo(0.355 / 1.25, within(ROUNDING));
    }

    @Test
    void aLoadReleasedAtTheBalancePointDoesNotUpsetIt() {
        Airframe airframe = Airframe.of(Examples.trainer(Examples.load(Place.BELOW, true)));
        Balance balance = Balance.of(Examples.masses(airframe), airframe, 0.375);
        assertThat(balance.missingTravel()).isZero();
        assertThat(balance.marginFull()).isCloseTo(0.1, within(ROUNDING));
        assertThat(balance.marginReleased()).isCloseTo(0.1, within(ROUNDING));
    }

    @Test
    void theTrainerBalancesInsideItsBay() {
        Airframe airframe = Airframe.of(Examples.trainer());
        Balance balance = Balance.of(Examples.masses(airframe), airframe, 0.375);
        assertThat(balance.missingTravel()).isZero();
        assertThat(balance.marginFull()).isCloseTo(Balance.TAILED_MARGIN, within(ROUNDING));
        // A trainer of 1.2 m weighs 0.65 to 1.0 kg (role 1 of the project's bands).
        assertThat(balance.mass()).isBetween(0.65, 1.0);
    }
}
