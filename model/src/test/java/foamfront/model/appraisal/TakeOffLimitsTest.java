package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Limits;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import foamfront.model.mission.Site;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the ground asks of wheels, and not of what is thrown. */
class TakeOffLimitsTest {
    private final Appraiser appraiser = new Appraiser(List.of());

    private static Mission field(double runway) {
        Site site = Records.with(Samples.mission().site(), "runway", runway);
        return Records.with(
                Records.with(Samples.mission(), "site", site),
                "limits",
                Limits.standing().on(site));
    }

    private Optional<LimitCheck> check(Design design, Mission mission, Measure measure) {
        return appraiser.appraise(design, mission, Factors.NOMINAL).limits().stream()
                .filter(check -> check.bound().measure() == measure)
                .findFirst();
    }

    @Test
    void theRollMustEndOnTheRunway() {
        Design design = Arrangements.of("tail wheel");
        double roll = appraiser
                .appraise(design, field(60), Factors.NOMINAL)
                .measures()
                .of(Measure.TAKE_OFF_DISTANCE);

        assertThat(check(design, field(1.01 * roll), Measure.TAKE_OFF_DISTANCE))
                .get()
                .returns(true, LimitCheck::holds);
        assertThat(check(design, field(0.99 * roll), Measure.TAKE_OFF_DISTANCE))
                .get()
                .returns(false, LimitCheck::holds)
                .extracting(LimitCheck::sentence)
                .asString()
                .contains("runway");
        assertThat(check(design, field(Double.POSITIVE_INFINITY), Measure.TAKE_OFF_DISTANCE))
                .get()
                .returns(100.0, check -> check.bound().high());
    }

    /** Nothing stands at the end of such a runway: it is said and not refused. */
    @Test
    void aLandingRollLongerThanTheRunwayIsSaid() {
        for (Design design : List.of(Arrangements.of("tail wheel"), Samples.trainer())) {
            double roll = appraiser
                    .appraise(design, field(60), Factors.NOMINAL)
                    .measures()
                    .of(Measure.LANDING_ROLL);
            assertThat(appraiser
                            .appraise(design, field(0.9 * roll), Factors.NOMINAL)
                            .caveats())
                    .contains(Caveat.LONG_LANDING);
            assertThat(appraiser
                            .appraise(design, field(1.1 * roll), Factors.NOMINAL)
                            .caveats())
                    .doesNotContain(Caveat.LONG_LANDING);
        }
    }

    @Test
    void whatIsThrownAsksNoRunwayAndHasNoTailToStrike() {
        assertThat(check(Samples.trainer(), field(1), Measure.TAKE_OFF_DISTANCE))
                .isEmpty();
        assertThat(check(Samples.trainer(), field(1), Measure.GROUND_ATTITUDE)).isEmpty();
    }

    @Test
    void wheelsLiftOffBeforeTheTailStrikesOrAreRefused() {
        for (String gear : List.of("tail wheel", "tricycle")) {
            Design design = Arrangements.of(gear);
            assertThat(check(design, field(60), Measure.GROUND_ATTITUDE))
                    .as(gear)
                    .get()
                    .returns(true, LimitCheck::holds);
            // The wing set down at the angle of the body and the body longer: neither helps to lift off.
            Body.SquareTube body = (Body.SquareTube) design.body();
            Design dragging = Records.with(
                    Records.with(design, "body", Records.with(body, "length", 1.4)), "wing.planform.incidence", -0.06);
            assertThat(check(dragging, field(60), Measure.GROUND_ATTITUDE))
                    .as(gear)
                    .get()
                    .returns(false, LimitCheck::holds);
        }
    }
}
