package foamfront.optimizer.study;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.design.DesignVariable;
import foamfront.model.mission.Measure;
import foamfront.model.units.Range;
import org.junit.jupiter.api.Test;

class StudyReaderTest {
    @Test
    void readsTheExample() {
        Study study = StudyReader.read(Fixtures.TRAINER, Fixtures.catalogue());

        assertThat(study.name()).isEqualTo("school trainer");
        assertThat(study.vary()).containsEntry(DesignVariable.SPAN, new Range(0.8, 1.7));
        assertThat(study.aims())
                .containsExactly(
                        new Aim(Measure.PAYLOAD, true),
                        new Aim(Measure.ENDURANCE, true),
                        new Aim(Measure.BUILD_COST, false));
        assertThat(study.payload().get(0).searched()).isTrue();
        assertThat(study.arrangements().possible()).hasSize(4);
        assertThat(study.drawer()).hasSize(2);
        assertThat(study.search()).isEqualTo(new SearchSettings(20_000, 7, 200));
        assertThat(study.digest()).hasSize(64);
    }
}
