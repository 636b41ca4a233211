package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.design.Undercarriage;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which cautions go with which aeroplane. */
class CautionTest {
    private static List<Caution> of(Design design) {
        return Caution.of(List.of(design));
    }

    @Test
    void aTrainerAsksForWhatItsCameraDoesAlone() {
        assertThat(of(Samples.trainer())).containsExactly(Caution.CAMERA);
    }

    @Test
    void aPusherIsThrownWithCareAndAFanKeptClearOf() {
        assertThat(of(Arrangements.of("pusher"))).containsExactly(Caution.CAMERA, Caution.PUSHER_THROW);
        assertThat(of(Arrangements.of("fan"))).containsExactly(Caution.CAMERA, Caution.FAN);
    }

    /** A hull without wheels has no undercarriage, yet nobody throws it. */
    @Test
    void whatFloatsIsOfTheWaterAndNotThrown() {
        Design wheelless = Records.with(Arrangements.of("hull"), "undercarriage", new Undercarriage.None());

        assertThat(of(Arrangements.of("floats"))).containsExactly(Caution.CAMERA, Caution.WATER);
        assertThat(of(Arrangements.of("hull"))).containsExactly(Caution.CAMERA, Caution.WATER);
        assertThat(of(wheelless)).containsExactly(Caution.CAMERA, Caution.WATER);
    }
}
