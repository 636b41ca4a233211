package foamfront.optimizer.study;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.catalogue.CatalogueReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What the front page shows as a study of one's own can be read as one. */
class ReadmeStudyTest {
    @Test
    void theStudyOnTheFrontPageIsOne() throws IOException {
        String page = Files.readString(Path.of("..", "README.md"));
        int from = page.indexOf("```yaml\n") + "```yaml\n".length();
        byte[] text = page.substring(from, page.indexOf("```", from)).getBytes(StandardCharsets.UTF_8);
        Study study = StudyReader.read("README.md", text, CatalogueReader.standard());
        assertThat(study.name()).isEqualTo("meadow camera");
        assertThat(study.vary()).hasSize(3);
    }
}
