package foamfront.optimizer.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
    private static final List<String> KNOWN = List.of("span", "sweep", "root chord", "tail chord");

    @Test
    void findsSwappedMissingAndWrongLetters() {
        assertThat(Nearest.of("sapn", KNOWN, 3)).containsExactly("span");
        assertThat(Nearest.of("spa", KNOWN, 3)).containsExactly("span");
        assertThat(Nearest.of("Root_Chrod", KNOWN, 3)).containsExactly("root chord");
    }

    @Test
    void findsPartsOfNames() {
        assertThat(Nearest.of("chord", KNOWN, 3)).containsExactly("root chord", "tail chord");
    }

    @Test
    void namesWhatThereIsWhereNothingIsNear() {
        assertThat(Nearest.advice("wombat", KNOWN, "key")).isEqualTo("Use one of span, sweep, root chord, tail chord.");
        assertThat(Nearest.advice("wombat", List.of(), "key")).isEqualTo("There is no key to choose from.");
    }
}
