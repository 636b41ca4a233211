package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class BugReportTest {
    @Test
    void theUserSeesTwoLinesAndTheFileHasTheRest() throws Exception {
        String words = BugReport.write(new IllegalStateException("a\nb"), new String[] {"explore", "s.yaml"});
        assertThat(words.lines()).hasSize(2);
        assertThat(words).contains("a bug of ours").doesNotContain("\tat ");
        Matcher file = Pattern.compile("attach (\\S+\\.txt)").matcher(words);
        assertThat(file.find()).isTrue();
        Path report = Path.of(file.group(1));
        try {
            assertThat(Files.readString(report)).contains("command: explore s.yaml", "IllegalStateException", "\tat ");
        } finally {
            Files.delete(report);
        }
    }
}
