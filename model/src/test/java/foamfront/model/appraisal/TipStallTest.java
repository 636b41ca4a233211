package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who is told that a wing drops at the stall. */
class TipStallTest {
    private static final double DEGREE = Math.PI / 180;
    private static final Design STRAIGHT = Records.with(Samples.trainer(), "wing.planform.taper", 1.0);
    private static final Design TAPERED = Records.with(STRAIGHT, "wing.planform.taper", 0.55);
    private static final Design SWEPT = Records.with(TAPERED, "wing.planform.sweep", 25 * DEGREE);

    private static Appraisal of(Design design) {
        return new Appraiser(List.of()).appraise(design, Samples.mission(), Factors.NOMINAL);
    }

    private static Design twisted(Design design, double degrees) {
        double root = design.wing().planform().incidence();
        return Records.with(design, "wing.planform.tipIncidence", root + degrees * DEGREE);
    }

    private static void warns(Design design) {
        Appraisal found = of(design);
        assertThat(found.caveats()).contains(Caveat.TIP_STALL);
        assertThat(found.measures().of(Measure.STALL_PLACE)).isGreaterThan(0.6);
    }

    private static void isSilent(Design design) {
        assertThat(of(design).caveats()).doesNotContain(Caveat.TIP_STALL);
    }

    @Test
    void aPointedWingIsWarnedOfAndAStraightOneIsNot() {
        isSilent(STRAIGHT);
        warns(Records.with(STRAIGHT, "wing.planform.taper", 0.3));
    }

    @Test
    void aSweptTaperedWingIsWarnedOf() {
        isSilent(TAPERED);
        warns(SWEPT);
    }

    @Test
    void aWashedInWingIsWarnedOfAndWashoutSilencesIt() {
        warns(twisted(TAPERED, 5));
        isSilent(twisted(TAPERED, -3));
        isSilent(twisted(SWEPT, -4));
    }
}
