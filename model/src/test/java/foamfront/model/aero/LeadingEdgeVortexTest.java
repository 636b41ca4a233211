package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class LeadingEdgeVortexTest {
    private static final double ROUNDING = 1e-12;
    private static final double DEGREE = Math.PI / 180;

    @Test
    void comesInSmoothlyBetweenThirtyFiveAndFortyFiveDegrees() {
        assertThat(LeadingEdgeVortex.share(35 * DEGREE)).isZero();
        assertThat(LeadingEdgeVortex.share(40 * DEGREE)).isCloseTo(0.5, within(ROUNDING));
        assertThat(LeadingEdgeVortex.share(45 * DEGREE)).isCloseTo(1, within(ROUNDING));
        assertThat(LeadingEdgeVortex.share(70 * DEGREE)).isEqualTo(1);
        double last = 0;
        for (double sweep = 30; sweep < 50; sweep += 0.1) {
            double share = LeadingEdgeVortex.share(sweep * DEGREE);
            assertThat(share - last).isBetween(0.0, 0.0151);
            last = share;
        }
    }

    @Test
    void onlyADeltaHasThem() {
        assertThat(LeadingEdgeVortex.of(Airframe.of(Samples.trainer()))).isNull();
        assertThat(LeadingEdgeVortex.of(Airframe.of(Arrangements.of("flying wing"))))
                .isNull();
    }

    @Test
    void liesTwoThirdsDownTheEdge() {
        Design delta = Arrangements.of("delta");
        LeadingEdgeVortex edge = Objects.requireNonNull(LeadingEdgeVortex.of(Airframe.of(delta)));

        // 345 mm from the root's to the tip's leading edge, which is 52 degrees of sweep.
        assertThat(edge.centreX()).isCloseTo(0.16 + 2.0 / 3 * 0.345, within(1e-9));
        assertThat(edge.share()).isEqualTo(1);
        assertThat(edge.upTo(0.2).usable()).isEqualTo(0.2);
        assertThat(edge.upTo(1).usable()).isEqualTo(LeadingEdgeVortex.USABLE);
        Design broad = Records.with(delta, "wing.planform.sweep", 20 * DEGREE);
        assertThat(Objects.requireNonNull(LeadingEdgeVortex.of(Airframe.of(broad)))
                        .share())
                .isLessThan(0.1);
    }
}
