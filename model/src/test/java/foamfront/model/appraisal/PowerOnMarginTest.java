package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The margin that must be left at full throttle. */
class PowerOnMarginTest {
    /** A propeller ahead of the wing takes stability (H. S. Ribner, NACA R-820, 1945), wherever the tail stands in its stream. */
    @ParameterizedTest(name = "tail at {0} m")
    @ValueSource(doubles = {-0.02, 0, 0.03, 0.3})
    void aTailInTheStreamMakesUpForNothing(double height) {
        Appraisal found = new Appraiser(List.of())
                .appraise(
                        Records.with(Arrangements.of("trainer"), "tail.plane.z", height),
                        Samples.mission(),
                        Factors.NOMINAL);
        double off = found.measures().of(Measure.STATIC_MARGIN);
        assertThat(found.measures().of(Measure.POWER_ON_MARGIN)).isBetween(off - 0.2, off - 0.005);
    }
}
