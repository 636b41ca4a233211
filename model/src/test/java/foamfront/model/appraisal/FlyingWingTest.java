package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Design;
import foamfront.model.design.Planform;
import foamfront.model.design.WingSection;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** An aeroplane without a tail from design to limits. */
class FlyingWingTest {
    private static final Design SOUND = Arrangements.of("flying wing");

    /** The battery reaches the aim of 7 %. */
    private static final double ROUNDING = 1e-9;

    @Test
    void aSweptAndWashedOutWingMeetsEveryLimit() {
        Appraisal appraisal = appraise(SOUND);

        assertThat(appraisal.limits())
                .allSatisfy(check -> assertThat(check.holds())
                        .as(check.bound().measure().words())
                        .isTrue());
        assertThat(appraisal.measures().of(Measure.STATIC_MARGIN)).isCloseTo(0.07, within(ROUNDING));
        assertThat(appraisal.surfaces()).extracting(LiftingSummary::name).containsExactly("wing", "all together");
    }

    @Test
    void withoutSweepAndWashoutItsElevonsStandTooFarUp() {
        Appraisal straight = appraise(straight());

        assertThat(straight.measures().of(Measure.STATIC_MARGIN)).isCloseTo(0.07, within(ROUNDING));

        assertThat(missed(straight)).contains(Measure.ELEVON_TRIM);
        // Flown as it is trimmed, not as a clean wing would lift.
        assertThat(straight.measures().of(Measure.MAXIMUM_LIFT))
                .isLessThan(appraise(SOUND).measures().of(Measure.MAXIMUM_LIFT));
        assertThat(straight.polar())
                .allSatisfy(point -> assertThat(point.elevator()).isNegative());
    }

    @Test
    void aPlateNeedsNoReflexAtAll() {
        Design flat = straight();
        Design plate = Records.with(flat, "wing.build.section", new WingSection.FlatPlate());

        assertThat(appraise(plate).measures().of(Measure.ELEVON_TRIM))
                .isLessThan(0.5 * appraise(flat).measures().of(Measure.ELEVON_TRIM));
    }

    @Test
    void itsOwnStandingLimitsReplaceThoseOfATail() {
        assertThat(bound(SOUND, Measure.STATIC_MARGIN).low()).isEqualTo(0.04);
        assertThat(bound(SOUND, Measure.YAW_STIFFNESS).low()).isEqualTo(0.025);
        assertThat(bound(Samples.trainer(), Measure.STATIC_MARGIN).low()).isEqualTo(0.05);
        assertThat(appraise(Samples.trainer()).limits())
                .noneMatch(check -> check.bound().measure() == Measure.ELEVON_TRIM);
    }

    @Test
    void finsStandOnTheWingsOwnTrailingEdge() {
        List<Surface> fins = appraise(SOUND).airframe().fins();
        var panel = fins.get(1).panels().get(0);
        double y = 0.3 * 1.08;
        double share = y / 0.54;
        double quarter = 0.07 + 0.25 * 0.265 + y * Math.tan(Math.toRadians(21));
        double chord = 0.265 * (1 - 0.1 * share);

        assertThat(fins).hasSize(2);
        assertThat(panel.rootY()).isCloseTo(y, within(ROUNDING));
        assertThat(panel.rootX() + panel.rootChord()).isCloseTo(quarter + 0.75 * chord, within(ROUNDING));
    }

    private static foamfront.model.mission.Bound bound(Design design, Measure measure) {
        return Objects.requireNonNull(appraise(design).limits().stream()
                .map(LimitCheck::bound)
                .filter(bound -> bound.measure() == measure)
                .findFirst()
                .orElse(null));
    }

    /** The same wing without sweep and washout, as far aft as its lift has moved ahead. */
    private static Design straight() {
        Planform plan = new Planform(1.08, 0.265, 0.9, 0, 0.05, 0, 0, List.of());
        return Records.with(Records.with(SOUND, "wing.planform", plan), "wing.x", 0.17);
    }

    private static List<Measure> missed(Appraisal appraisal) {
        return appraisal.limits().stream()
                .filter(check -> !check.holds())
                .map(check -> check.bound().measure())
                .toList();
    }

    private static Appraisal appraise(Design design) {
        return new Appraiser(List.of(Measure.PAYLOAD)).appraise(design, Samples.mission(), Factors.NOMINAL);
    }
}
