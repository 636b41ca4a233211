package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.fabrication.BillOfMaterials;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import foamfront.model.mission.Owned;
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
        for (Measure measure : List.of(Measure.ONE_MOTOR_OUT, Measure.ENDURANCE, Measure.CLIMB_RATE, Measure.NOISE)) {
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

    /** Two of one hand in the drawer spare the bill one of them and not the other. */
    @Test
    void theOtherHandIsALineOfItsOwnThatNoDrawerHas() {
        double price = Samples.propeller().price();
        String name = Samples.propeller().name();
        Mission two = Records.with(Samples.mission(), "drawer", List.of(new Owned(name, 2)));
        Appraisal bare = of("countering twin");
        Appraisal spared = of("countering twin", two);
        assertThat(bare.bill().lines())
                .extracting(BillOfMaterials.Line::item, BillOfMaterials.Line::quantity)
                .contains(tuple(name, 1.0), tuple(name + ", other hand", 1.0));
        assertThat(bare.bill().cost()).isCloseTo(of("twin").bill().cost(), within(1e-9));
        assertThat(bare.bill().cost() - spared.bill().cost()).isCloseTo(price, within(1e-9));
        assertThat(of("twin").bill().cost() - of("twin", two).bill().cost()).isCloseTo(2 * price, within(1e-9));
    }

    private Appraisal of(String arrangement) {
        return of(arrangement, Samples.mission());
    }

    private Appraisal of(String arrangement, Mission mission) {
        return appraiser.appraise(Arrangements.of(arrangement), mission, Factors.NOMINAL);
    }
}
