package foamfront.optimizer.explore;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.front.FrontTable;
import foamfront.optimizer.search.Listener;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.StudyReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The club's studies as shipped, each at its own budget and seed. */
class StudiesTest {
    /** A front that a practitioner can choose from. */
    private static final int ENOUGH = 20;

    private final Catalogue catalogue = CatalogueReader.standard();

    @ParameterizedTest
    @ValueSource(strings = {"school-trainer", "lapwing-camera", "dyke-glider"})
    void givesAFrontToChooseFromAndTheSameBytesOnFiveThreads(String name) {
        Study study = StudyReader.read(Path.of("../studies", name + ".yaml"));
        Found found = explore(study, 1);
        assertThat(found.faultCount()).isZero();
        assertThat(found.front().rows())
                .hasSizeGreaterThanOrEqualTo(ENOUGH)
                .allSatisfy(row -> assertThat(row.limits()).allMatch(check -> check.holds()));
        assertThat(csv(explore(study, 5))).isEqualTo(csv(found));
    }

    private Found explore(Study study, int threads) {
        Task task = Task.of(study, catalogue.workshop());
        long evaluations = study.search().evaluations();
        return Exploration.run(
                task, List.of(), evaluations, study.search().seed(), threads, Listener.NONE, () -> false);
    }

    private static String csv(Found found) {
        return FrontTable.of(found.front(), 1).csv();
    }
}
