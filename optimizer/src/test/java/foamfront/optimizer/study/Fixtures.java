package foamfront.optimizer.study;

import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.faults.StudyException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Objects;

/** What the readers' tests share: a small catalogue and the example study. */
final class Fixtures {
    static final Path TRAINER = Path.of("..", "studies", "school-trainer.yaml");

    private static final Catalogue CATALOGUE = CatalogueReader.folder(folder());

    private Fixtures() {}

    static Catalogue catalogue() {
        return CATALOGUE;
    }

    static Path folder() {
        URL url = Objects.requireNonNull(Fixtures.class.getResource("/foamfront/optimizer/catalogue"));
        try {
            return Path.of(url.toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static Study study(String text) {
        return StudyReader.read("trainer.yaml", text.getBytes(StandardCharsets.UTF_8), catalogue());
    }

    /** The message of the fault that reading must end with. */
    static String refusal(String text) {
        return refusal(text.getBytes(StandardCharsets.UTF_8));
    }

    static String refusal(byte[] bytes) {
        try {
            StudyReader.read("trainer.yaml", bytes, catalogue());
        } catch (StudyException e) {
            return String.valueOf(e.getMessage());
        }
        throw new AssertionError("this study was read without a fault");
    }
}
