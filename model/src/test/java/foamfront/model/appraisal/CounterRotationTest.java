package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Samples;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A twin whose propellers turn against each other, beside the same with both alike. */
class CounterRotationTest {
    private final Appraiser appraiser = new Appraiser(List.of());

    @Test
    void torquesCancelAndNothingElseChanges() {
        Appraisal alike = of("twin");
        Appraisal against = of("countering twin");
        assertThat(alike.measures().of(Measure.TORQUE_ROLL)).isPositive();
        assertThat(against.measures().of(Measure.TORQUE_ROLL)).isZero();
        for (Measure measure : List.of(
                Measure.ONE_MOTOR_OUT, Measure.ENDURANCE, Measure.BUILD_COST, Measure.CLIMB_RATE, Measure.NOISE)) {
            assertThat(against.measures().of(measure))
                    .as(measure.words())
                    .isEqualTo(alike.measures().of(measure));
        }
    }

    @Test
    void theOtherHandMustBeSold() {
        assertThat(of("countering twin").caveats()).contains(Caveat.OTHER_HAND);
        assertThat(of("twin").caveats()).doesNotContain(Caveat.OTHER_HAND);
    }

    private Appraisal of(String arrangement) {
        return appraiser.appraise(Arrangements.of(arrangement), Samples.mission(), Factors.NOMINAL);
    }
}
