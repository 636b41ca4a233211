package foamfront.optimizer.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foamfront.model.appraisal.Appraisal;
import foamfront.model.appraisal.Appraiser;
import foamfront.model.design.Arrangement;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.optimizer.faults.StudyException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One design file for each way of making a wing: read, written, read back and appraised whole. */
class SampleDesignsTest {
    private static final List<Measure> OF_THE_WING = List.of(
            Measure.STALL_SPEED, Measure.CHORD_FIT, Measure.SHEET_FIT, Measure.WING_BENDING, Measure.TIP_DEFLECTION);

    static Design sample(String name) throws IOException {
        try (InputStream in = SampleDesignsTest.class.getResourceAsStream("/foamfront/optimizer/designs/" + name)) {
            return DesignReader.read(name, Objects.requireNonNull(in).readAllBytes(), Fixtures.catalogue())
                    .design();
        }
    }

    private static Appraisal appraise(Design design) {
        return new Appraiser(List.of())
                .appraise(
                        design,
                        Fixtures.study(
                                        "study: samples\nvary: {span: 0.6 m to 1.2 m}\naim: {most: endurance, least: build cost}\n")
                                .mission(Fixtures.catalogue().workshop()),
                        Factors.NOMINAL);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "stepped-plate.yaml",
                "curved-plate.yaml",
                "folded-symmetrical.yaml",
                "winglets.yaml",
                "laminated.yaml"
            })
    void isComputedAndReadsBack(String name) throws IOException {
        Design design = sample(name);

        assertThat(Arrangement.of(design).refusal()).isNull();
        assertThat(DesignReader.read(
                                name, DesignWriter.write(design).getBytes(StandardCharsets.UTF_8), Fixtures.catalogue())
                        .design())
                .isEqualTo(design);
        Appraisal appraisal = appraise(design);
        assertThat(appraisal.limits())
                .isNotEmpty()
                .allSatisfy(
                        limit -> assertThat(limit.value()).as(limit.sentence()).isNotNaN());
        // what the way of making a wing decides; where the battery ends up is the sample's own affair
        assertThat(appraisal.limits())
                .filteredOn(limit -> OF_THE_WING.contains(limit.bound().measure()))
                .hasSameSizeAs(OF_THE_WING)
                .allSatisfy(
                        limit -> assertThat(limit.holds()).as(limit.sentence()).isTrue());
    }

    /**
     * Viscous span efficiencies of small wings below Re 150 000 were measured from 0.3 to about 0.8 (G. K. Ananda,
     * P. P. Sukumar and M. S. Selig, Aerospace Science and Technology, 2015, abstract), and none of 0.9 is to be believed.
     * A curved plate is left out: its drag falls up to its design lift, so that no parabola about zero lift describes
     * it.
     */
    @ParameterizedTest
    @ValueSource(strings = {"stepped-plate.yaml", "folded-symmetrical.yaml", "winglets.yaml", "laminated.yaml"})
    void viscousSpanEfficiencyIsThatOfSmallWings(String name) throws IOException {
        assertThat(appraise(sample(name)).measures().of(Measure.SPAN_EFFICIENCY))
                .isBetween(0.3, 0.9);
    }

    @Test
    void aKeyOfAnotherSectionIsAFault() throws IOException {
        String step = DesignWriter.write(sample("stepped-plate.yaml"))
                .replace("section step: 50 %", "section camber: 6 %\n  section thickness: 12 %");
        assertThat(step).contains("section camber");

        assertThatThrownBy(
                        () -> DesignReader.read("d.yaml", step.getBytes(StandardCharsets.UTF_8), Fixtures.catalogue()))
                .isInstanceOf(StudyException.class)
                .hasMessageContaining("a stepped plate is not bent to an arc")
                .hasMessageContaining("a stepped plate is as thick as its board makes it");
    }
}
