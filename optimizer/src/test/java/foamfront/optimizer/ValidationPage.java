package foamfront.optimizer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** {@code model/VALIDATION.md}, which two tests hold: first every check of the model, then the aeroplanes that flew. */
public final class ValidationPage {
    private static final Path PAGE = Path.of("..", "model", "VALIDATION.md");

    /** Begins the second part. */
    public static final String FLOWN = "\n## Aeroplanes that flew\n";

    private ValidationPage() {}

    /** Fails unless the page's checks are these, or rewrites them where that was asked for. */
    static void holdsChecks(String checks) throws IOException {
        holds(checks, flown());
    }

    /** The same for its aeroplanes that flew, from their heading on. */
    public static void holdsFlown(String flown) throws IOException {
        holds(page().substring(0, page().length() - flown().length()), flown);
    }

    private static void holds(String checks, String flown) throws IOException {
        if (Boolean.getBoolean("foamfront.acceptValidation")) {
            Files.writeString(PAGE, checks + flown);
        }
        assertThat(page())
                .as("model/VALIDATION.md is stale: run ./test --accept-validation and read what changed")
                .isEqualTo(checks + flown);
    }

    private static String flown() throws IOException {
        int at = page().indexOf(FLOWN);
        return at < 0 ? "" : page().substring(at);
    }

    private static String page() throws IOException {
        return Files.exists(PAGE) ? Files.readString(PAGE) : "";
    }
}
