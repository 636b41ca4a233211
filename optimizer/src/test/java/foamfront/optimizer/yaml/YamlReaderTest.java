package foamfront.optimizer.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.faults.Faults;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class YamlReaderTest {
    @Test
    void nothingIsGuessedFromTheText() {
        Yaml.Mapping mapping = read("a: no\nb: 010\nc: 1_000\nd: ~\ne: 0x1F\nf: 2026-11-25\ng: 1e3\n");

        assertThat(mapping.entries())
                .extracting(entry -> ((Yaml.Scalar) entry.value()).text())
                .containsExactly("no", "010", "1_000", "~", "0x1F", "2026-11-25", "1e3");
    }

    @Test
    void everyValueKnowsItsPlace() {
        Yaml.Mapping mapping = read("a: 1\nb:\n  - x\n  - {c: y}\n");

        Yaml.Sequence list = (Yaml.Sequence) mapping.entries().get(1).value();
        Yaml.Mapping nested = (Yaml.Mapping) list.items().get(1);
        assertThat(list.items().get(0)).isEqualTo(new Yaml.Scalar("x", true, false, 3, 5));
        assertThat(nested.entries().get(0).value()).isEqualTo(new Yaml.Scalar("y", true, false, 4, 9));
    }

    @Test
    void aValueThatRunsOnIsMarked() {
        Yaml.Mapping mapping = read("a: one\n   two\nb: >-\n  one\n  two\n");

        assertThat(((Yaml.Scalar) mapping.entries().get(0).value()).folded()).isTrue();
        assertThat(((Yaml.Scalar) mapping.entries().get(1).value()).folded()).isFalse();
    }

    @Test
    void fewAliasesAreWelcome() {
        Yaml.Mapping mapping = read("a: &size 1 m\nb: *size\n");

        assertThat(mapping.entries().get(1).value())
                .isEqualTo(mapping.entries().get(0).value());
    }

    @Test
    void twentyAliasesAreEnough() {
        assertThat(faults("a: &x 1\nb: [" + "*x, ".repeat(20) + "]\n").any()).isFalse();
        assertThat(faults("a: &x 1\nb: [" + "*x, ".repeat(21) + "]\n").all().toString())
                .contains("more than 20 aliases");
    }

    @Test
    void keysReadTheSameHoweverSpelt() {
        assertThat(Key.plain("Root_Chord")).isEqualTo("root chord");
        assertThat(Key.plain(" root-chord ")).isEqualTo("root chord");
        assertThat(Key.plain("root  chord")).isEqualTo("root chord");
    }

    private static Yaml.Mapping read(String text) {
        Faults faults = new Faults("file.yaml");
        Yaml.Mapping mapping = YamlReader.read(text.getBytes(StandardCharsets.UTF_8), faults);
        assertThat(faults.all()).isEmpty();
        return Objects.requireNonNull(mapping);
    }

    private static Faults faults(String text) {
        Faults faults = new Faults("file.yaml");
        YamlReader.read(text.getBytes(StandardCharsets.UTF_8), faults);
        return faults;
    }
}
