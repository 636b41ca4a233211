package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.factors.Factors;
import foamfront.model.flight.Handling;
import foamfront.model.mission.Measure;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a load dropped in flight does to trim. */
class ReleasedLoadTest {
    /** Trim is a straight line; sums of a few dozen terms. */
    private static final double ROUNDING = 1e-9;

    /**
     * A nose too heavy for the battery's bay: a load released at the balance point aimed at lay behind the true one,
     * and the model without it is nose-heavier still.
     */
    @Test
    void trimAtTheStallIsTakenWithTheForemostBalancePoint() {
        Load lead = new Load("lead", 0.35, 0.03, 0.03, 0.025, Place.NOSE, false, 0, 0);
        Load seed = new Load("seed", 0.30, 0.05, 0.04, 0.04, Place.BALANCE_POINT, true, 0, 0);
        Design design = Records.with(Samples.trainer(), "loads", List.of(lead, seed));
        Workbench w = new Workbench(design, Samples.mission(), Factors.NOMINAL);
        WorkshopStage.run(w);
        BalanceStage.run(w);

        assertThat(w.balance.greatestMargin()).isGreaterThan(w.balance.marginFull() + 0.01);
        double atTakeOff = Math.abs(w.flight.elevator(w.flight.maximumLift())) / Handling.FULL_TRAVEL;
        assertThat(w.get(Measure.TRIM_TRAVEL)).isGreaterThan(1.05 * atTakeOff);
        double alpha = (w.get(Measure.MAXIMUM_LIFT)
                        - w.lifting.liftCoefficient(0, -Handling.FULL_TRAVEL * w.get(Measure.TRIM_TRAVEL), 0))
                / w.lifting.liftSlope();
        double foremost = w.balance.foremostX(w.airframe.chord());
        double moment = w.lifting.fixedMoment(foremost)
                + (w.lifting.momentSlope(foremost) + w.bodyMoment) * alpha
                - w.lifting.elevatorMomentSlope(foremost) * Handling.FULL_TRAVEL * w.get(Measure.TRIM_TRAVEL);
        assertThat(moment).isCloseTo(0, within(ROUNDING));
    }
}
