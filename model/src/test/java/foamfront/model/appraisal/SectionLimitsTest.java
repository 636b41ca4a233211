package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Outside their tables sections are a caveat, far outside a refusal. */
class SectionLimitsTest {
    private static final double ROUNDING = 1e-12;

    /** The outermost strip's chord is a little over the tip's; of the Reynolds number. */
    private static final double OUTERMOST = 0.03;

    private static final Design TRAINER = Samples.trainer();

    private static Appraisal appraise(Design design) {
        return new Appraiser(List.of()).appraise(design, Samples.mission(), Factors.NOMINAL);
    }

    private static boolean holds(Appraisal found, Measure measure) {
        return found.limits().stream().anyMatch(check -> check.bound().measure() == measure && check.holds());
    }

    @Test
    void theTrainerFliesWellInside() {
        Appraisal found = appraise(TRAINER);

        assertThat(found.caveats()).doesNotContain(Caveat.SECTION_RANGE);
        assertThat(found.measures().of(Measure.SECTION_LIFT)).isLessThan(1);
        double speed = 1.2 * found.measures().of(Measure.STALL_SPEED);
        double byHand = speed * 0.9 * 0.13 / 1.46e-5 / 30_000;
        assertThat(found.measures().of(Measure.SECTION_REYNOLDS)).isBetween(byHand, (1 + OUTERMOST) * byHand);
    }

    /** The tail's chord is what is least; its lift matters little, so the stall stays where it was. */
    @Test
    void aNarrowTailIsLetPassAndAPointedOneRefused() {
        Appraisal narrow = appraise(Records.scaled(TRAINER, "tail.plane.chord", 0.35));
        Appraisal pointed =
                appraise(Records.with(Records.scaled(TRAINER, "tail.plane.chord", 0.6), "tail.plane.taper", 0.1));

        assertThat(narrow.measures().of(Measure.SECTION_REYNOLDS)).isBetween(0.5, 1.0);
        assertThat(holds(narrow, Measure.SECTION_REYNOLDS)).isTrue();
        assertThat(pointed.measures().of(Measure.SECTION_REYNOLDS)).isLessThan(0.5);
        assertThat(holds(pointed, Measure.SECTION_REYNOLDS)).isFalse();
    }

    /** Too small to carry what trim asks of it at any speed. */
    @Test
    void aTailFarBeyondItsStallIsRefused() {
        Design scrap = Records.scaled(Records.scaled(TRAINER, "tail.plane.chord", 0.2), "tail.plane.span", 0.5);
        Appraisal found = appraise(scrap);

        assertThat(holds(appraise(TRAINER), Measure.SECTION_LIFT)).isTrue();
        assertThat(found.measures().of(Measure.SECTION_LIFT)).isGreaterThan(1.25);
        assertThat(holds(found, Measure.SECTION_LIFT)).isFalse();
    }

    /** Share of the stall on either side, from its definition. */
    @Test
    void theShareOfAStrip() {
        var polar =
                foamfront.model.section.SectionPolar.of(TRAINER.wing().build().section(), 0.0045, 0.2);
        double log = StrictMath.log(100_000);

        assertThat(polar.liftShare(0.5 * polar.maximumLift(log), log)).isCloseTo(0.5, within(ROUNDING));
        assertThat(polar.liftShare(1.5 * polar.minimumLift(log), log)).isCloseTo(1.5, within(ROUNDING));
    }
}
