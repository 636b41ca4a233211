package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Shaft;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Nose;
import foamfront.model.design.Power;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import java.util.List;
import org.junit.jupiter.api.Test;

class PropellerClearanceTest {
    private static final double ROUNDING = 1e-12;
    private static final Design PUSHER = Arrangements.of("pusher");
    private static final double RADIUS = 0.5 * Samples.propeller().diameter();

    private static double gap(Design design) {
        return PropellerClearance.of(Airframe.of(design));
    }

    /** The pusher with its tail's leading edge at a distance from the disc, negative ahead of it. */
    private static Design tailAt(double distance, double z) {
        Shaft shaft = Airframe.of(PUSHER).stations().shaft();
        return Records.with(Records.with(PUSHER, "tail.plane.x", shaft.x() + distance), "tail.plane.z", z);
    }

    @Test
    void aNoseTractorClearsItsOwnBody() {
        assertThat(gap(Samples.trainer())).isCloseTo(Samples.motor().length() + 0.005, within(ROUNDING));
    }

    @Test
    void aPusherByItselfClearsTheBodyBelow() {
        assertThat(gap(PUSHER)).isCloseTo(0.010, within(ROUNDING));
    }

    @Test
    void aFinBehindThePropellerCounts() {
        // The fin's root is 10 mm longer than the tail, whose trailing edge it shares.
        // The leading edge leans aft, 28 mm over 170: 1.7 mm at the disc's lower rim.
        assertThat(gap(tailAt(0.013, 0))).isCloseTo(0.003 + 0.028 * 10 / 170, within(ROUNDING));
        // s above the rim the fin stands 28.4 mm − 0.165 s in the disc: at most 24.4 mm both ways, or less between the
        // lines.
        assertThat(gap(tailAt(-0.02, 0))).isBetween(-0.0244, -0.020);
    }

    @Test
    void aTailInTheDiscCounts() {
        Design vee = Records.with(Arrangements.of("V-tail"), "power", PUSHER.power());
        double x = Airframe.of(vee).stations().shaft().x();
        Design cut = Records.with(Records.with(vee, "tail.plane.x", x - 0.03), "tail.plane.z", 0.10);
        assertThat(gap(cut)).isCloseTo(-0.03, within(ROUNDING));
        // Far behind, the body below is nearest again.
        assertThat(gap(Records.with(cut, "tail.plane.x", x + 0.2))).isCloseTo(0.010, within(ROUNDING));
    }

    @Test
    void aTailOverTheDiscClearsItByItsHeight() {
        Shaft shaft = Airframe.of(PUSHER).stations().shaft();
        Design tee = Records.with(Arrangements.of("T-tail"), "power", PUSHER.power());
        Design over = Records.with(Records.with(tee, "tail.plane.x", shaft.x() - 0.05), "tail.fin.height", 0.001);
        over = Records.with(over, "tail.fin.chord", 0.001);
        over = Records.with(over, "tail.plane.z", shaft.z() + RADIUS + 0.004);
        assertThat(gap(over)).isCloseTo(0.004, within(ROUNDING));
    }

    @Test
    void aTwinClearsBodyAndWing() {
        Design twin = Arrangements.of("twin");
        assertThat(gap(Records.with(twin, "power.y", 0.16))).isCloseTo(0.16 - RADIUS - 0.035, within(ROUNDING));
        // Forward sweep brings the outer wing into the discs.
        assertThat(gap(Records.with(twin, "wing.planform.sweep", -0.4))).isNegative();
    }

    @Test
    void theGroundCountsUnderWheels() {
        assertThat(gap(Arrangements.of("tail wheel"))).isCloseTo(0.025, within(ROUNDING));
    }

    @Test
    void aBoomIsThinnerThanItsPod() {
        Design pod = Records.with(PUSHER, "body", ((Body.PodAndBoom)
                Arrangements.of("pod and boom").body()));
        Design square = Records.with(PUSHER, "body", new Body.SquareTube(0.86, 0.07, 0.07, Nose.FIXED));
        assertThat(gap(Records.with(pod, "body.podLength", 0.40))).isGreaterThan(gap(square));
    }

    @Test
    void withoutAPropellerThereIsNoGapToJudge() {
        Design glider = Records.with(PUSHER, "power", new Power.Unpowered(Samples.receiverBattery()));
        for (Design design : List.of(glider, Arrangements.of("fan"))) {
            Workbench w = new Workbench(design, Samples.mission(), Factors.NOMINAL);
            WorkshopStage.run(w);
            assertThat(w.applies(Measure.PROPELLER_CLEARANCE)).isFalse();
        }
    }
}
