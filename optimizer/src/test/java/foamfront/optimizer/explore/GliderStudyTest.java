package foamfront.optimizer.explore;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.design.Power;
import foamfront.model.mission.Measure;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.front.Row;
import foamfront.optimizer.study.StudyReader;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** A search among models without a motor, and beside some that have one. */
class GliderStudyTest {
    private static final int EVALUATIONS = 3000;

    private static final String RIDGE = """
            study: ridge glider
            site: {wind: 4 m/s, launch: normal}
            arrangements: {wing: [{kind: monoplane, height: high}], tail: [conventional, V], body: [square tube, pod and boom], power: none, wing joint: [plug in, one piece], controls: [ailerons, rudder-elevator]}
            vary: {span: 1.0 m to 2.4 m, root chord: 130 mm to 240 mm, taper: 0.5 to 1, dihedral: 2 deg to 8 deg, incidence: 0 deg to 5 deg, body length: 0.7 m to 1.3 m, tail span: 300 mm to 700 mm, tail chord: 80 mm to 160 mm, tail incidence: -4 deg to 2 deg, fin height: 120 mm to 300 mm, wing position: 0.15 to 0.45}
            aim: {most: [glide ratio], least: [sink rate, build cost]}
            """;

    private final Catalogue catalogue = CatalogueReader.standard();

    private Found explore(String yaml) {
        Task task = Task.of(
                StudyReader.read("ridge.yaml", yaml.getBytes(StandardCharsets.UTF_8), catalogue), catalogue.workshop());
        return ExplorationTest.explore(task, EVALUATIONS, 2);
    }

    @Test
    void aFrontOfGlidersIsFound() {
        Found found = explore(RIDGE);
        assertThat(found.faultCount()).isZero();
        assertThat(found.front().rows()).hasSizeGreaterThan(5).allSatisfy(row -> {
            assertThat(row.design().power()).isInstanceOf(Power.Unpowered.class);
            assertThat(row.design().power().battery().cells()).isEqualTo(2);
            // Practice of light foam gliders of this size (judgement): 6 to 14 and 0.4 to 1.3 m/s.
            assertThat(row.measures().of(Measure.GLIDE_RATIO)).isBetween(6.0, 14.0);
            assertThat(row.measures().of(Measure.SINK_RATE)).isBetween(0.4, 1.3);
        });
    }

    /** An aim that some layouts cannot have leaves them out; nothing breaks. */
    @Test
    void besideModelsWithAMotorBothAreTried() {
        Found found = explore(RIDGE.replace("power: none", "power: [none, nose tractor]"));
        assertThat(found.faultCount()).isZero();
        assertThat(found.front().rows()).extracting(Row::layout).anyMatch(layout -> layout.contains("no motor"));
    }
}
