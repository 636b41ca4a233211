package foamfront.optimizer.explore;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.mission.Measure;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.faults.StudyException;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.StudyReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What difference in cost counts. */
class ResolutionTest {
    @TempDir
    private Path folder = Path.of("");

    private Study study(String code, String step) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("..", "studies", "catalogue"))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".csv")).toList()) {
                Files.writeString(
                        folder.resolve(String.valueOf(file.getFileName())),
                        Files.readString(file).replace("USD]", code + "]"));
            }
        }
        Catalogue catalogue = CatalogueReader.folder(folder);
        String yaml = Dropper.YAML.replace("population: 60}", "population: 60" + step + "}");
        return StudyReader.read("s.yaml", yaml.getBytes(StandardCharsets.UTF_8), catalogue);
    }

    @ParameterizedTest
    @CsvSource({"USD, 0.10", "EUR, 0.10", "JPY, 10", "KWD, 0.01"})
    void tenOfTheSmallestCoinsCount(String code, double step) throws IOException {
        Study study = study(code, "");
        assertThat(Resolution.of(Measure.BUILD_COST, study)).isEqualTo(step);
        assertThat(Resolution.of(Measure.REPAIR_COST, study)).isEqualTo(step);
    }

    @Test
    void aStudySaysItsOwn() throws IOException {
        assertThat(Resolution.of(Measure.BUILD_COST, study("IDR", ", cost step: 500 IDR")))
                .isEqualTo(500);
    }

    @ParameterizedTest
    @CsvSource({
        "500 USD, is in USD where prices are in IDR",
        "0 IDR, Use 0.001 IDR to 1000000000 IDR",
        "500, has no unit"
    })
    void aWrongStepIsAFault(String step, String part) {
        assertThat(Assertions.catchThrowableOfType(StudyException.class, () -> study("IDR", ", cost step: " + step)))
                .hasMessageContaining("search.cost step")
                .hasMessageContaining(part);
    }
}
