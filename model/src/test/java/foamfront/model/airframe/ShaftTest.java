package foamfront.model.airframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.design.Power;
import foamfront.model.parts.Fan;
import org.junit.jupiter.api.Test;

class ShaftTest {
    private static final double ROUNDING = 1e-12;
    private static final Design PUSHER = Arrangements.of("pusher");
    private static final double DIAMETER = Samples.propeller().diameter();

    private static Shaft shaft(Design design) {
        return Airframe.of(design).stations().shaft();
    }

    @Test
    void aPusherClearsTheTrailingEdgeByTenMillimetresAndATwentieth() {
        Shaft shaft = shaft(PUSHER);
        assertThat(shaft.x()).isCloseTo(0.42 + 0.01 + 0.05 * DIAMETER, within(ROUNDING));
        assertThat(shaft.z()).isCloseTo(0.035 + 0.01 + 0.5 * DIAMETER, within(ROUNDING));
    }

    @Test
    void aSweptTrailingEdgeIsClearedWhereItIsRearmost() {
        Design swept = Records.with(PUSHER, "wing.planform.sweep", 0.4);
        Panel panel = Airframe.of(swept).wing().panels().get(0);
        double f = 0.5 * DIAMETER / panel.tipY();
        double edge = panel.leadingEdge(f) + panel.chord(f);
        assertThat(edge).isGreaterThan(0.42);
        assertThat(shaft(swept).x() - edge).isCloseTo(0.01 + 0.05 * DIAMETER, within(ROUNDING));
    }

    @Test
    void withoutAPropellerThereIsNoDisc() {
        assertThat(shaft(Records.with(PUSHER, "power", new Power.Unpowered(Samples.receiverBattery())))
                        .radius())
                .isZero();
    }

    @Test
    void aFanStandsBehindTheReceiverWithItsIntakesADiameterAheadAndNoDiscInTheOpen() {
        Design design = Arrangements.of("fan");
        Bay bay = Airframe.of(design).stations().bay();
        Shaft shaft = shaft(design);
        double diameter = Samples.fan().diameter();
        double receiverEnd = bay.radioX() + 0.5 * design.radio().receiver().length();
        assertThat(shaft.motorX()).isEqualTo(bay.fanX());
        assertThat(shaft.motorX() - 0.5 * Fan.LENGTH * diameter).isCloseTo(receiverEnd + Bay.GAP, within(ROUNDING));
        assertThat(shaft.x()).isCloseTo(shaft.motorX() - diameter, within(ROUNDING));
        assertThat(shaft.radius()).isZero();
    }

    @Test
    void aPylonIsMeasuredFromWhatItStandsOn() {
        Pylon pylon = pylon(PUSHER);
        // From the top of the body to the motor's upper edge: gap, radius and half the motor.
        double height = 0.01 + 0.5 * DIAMETER + 0.5 * Samples.motor().diameter();
        assertThat(pylon.height()).isCloseTo(height, within(ROUNDING));
        assertThat(pylon(Records.with(PUSHER, "body.height", 0.12)).height()).isCloseTo(height, within(ROUNDING));
        assertThat(pylon(Records.with(PUSHER, "wing.z", 0.055)).height()).isCloseTo(height - 0.02, within(ROUNDING));
    }

    private static Pylon pylon(Design design) {
        return Pylon.of((Power.Pusher) design.power(), Airframe.of(design));
    }
}
