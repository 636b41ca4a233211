package foamfront.optimizer.study;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import foamfront.optimizer.faults.Faults;
import foamfront.optimizer.yaml.KeyTable;
import foamfront.optimizer.yaml.Yaml;
import foamfront.optimizer.yaml.YamlReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas in {@code studies} are those of the key tables, and say of files what an outside checker understands. */
class SchemaTest {
    private static final Path STUDIES = Path.of("..", "studies");
    private static final String STUDY = SchemaWriter.write(StudyKeys.FILE, "foamfront study");
    private static final String DESIGN = SchemaWriter.write(DesignKeys.FILE, "foamfront design");

    @Test
    void theStoredSchemasAreCurrent() throws IOException {
        current("study.schema.json", STUDY);
        current("design.schema.json", DESIGN);
    }

    private static void current(String name, String text) throws IOException {
        Path file = STUDIES.resolve(name);
        if (Boolean.getBoolean("foamfront.acceptSchema")) {
            Files.writeString(file, text);
        }
        assertThat(Files.readString(file))
                .as("rewrite it with -Dtest.jvm.args=-Dfoamfront.acceptSchema=true -Dtest=SchemaTest")
                .isEqualTo(text);
    }

    @ParameterizedTest
    @MethodSource("foamfront.optimizer.study.Fixtures#examples")
    void theExamplesFollowTheSchema(Path example) throws IOException {
        assertThat(errors(STUDY, Files.readString(example))).isEmpty();
    }

    @Test
    void writtenDesignsFollowTheSchema() {
        assertThat(errors(DESIGN, DesignWriter.write(DesignReaderTest.trainer())))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "study: a\nvary: {span: 1 m to 2 m}\naim: {most: payload}\nspan: 1 m\n",
                "study: a\nvary: {spann: 1 m to 2 m}\naim: {most: payload}\n",
                "study: a\nvary: {span: 12}\naim: {most: payload}\n",
                "study: a\nvary: {span: 1 m to 2 m}\naim: {most: payloads}\n",
                "study: a\naim: {most: payload}\n",
                "study: a\nvary: {}\naim: {most: payload}\nmust: {stall speed: 8 m/s}\n",
                "study: a\nvary: {}\naim: {most: payload}\narrangements: {wing: [{height: high}]}\n",
            })
    void mistakesFailTheSchema(String study) {
        assertThat(errors(STUDY, study)).isNotEmpty();
    }

    @Test
    void spellingsOfAKeyAreTheSame() {
        assertThat(errors(
                        STUDY,
                        "study: a\nvary: {root-chord: 1 m to 2 m}\naim: {most: payload}\nin_the_drawer: rod 2\n"))
                .isEmpty();
    }

    private static List<Error> errors(String schemaText, String yaml) {
        SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
        Schema schema = registry.getSchema(schemaText, InputFormat.JSON);
        Faults faults = new Faults("file.yaml");
        Yaml.Mapping mapping = Objects.requireNonNull(YamlReader.read(yaml.getBytes(StandardCharsets.UTF_8), faults));
        return schema.validate(json(mapping));
    }

    /** What an editor sees: numbers and lists typed as YAML 1.2 types them. */
    private static JsonNode json(Yaml yaml) {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        if (yaml instanceof Yaml.Mapping mapping) {
            ObjectNode object = nodes.objectNode();
            mapping.entries().forEach(entry -> object.set(entry.key().text(), json(entry.value())));
            return object;
        }
        if (yaml instanceof Yaml.Sequence sequence) {
            ArrayNode array = nodes.arrayNode();
            sequence.items().forEach(item -> array.add(json(item)));
            return array;
        }
        Yaml.Scalar scalar = (Yaml.Scalar) yaml;
        String text = scalar.text();
        if (scalar.plain() && text.matches("-?\\d{1,15}")) {
            return nodes.numberNode(Long.parseLong(text));
        }
        if (scalar.plain() && text.matches("-?\\d+\\.\\d+")) {
            return nodes.numberNode(Double.parseDouble(text));
        }
        return nodes.textNode(text);
    }

    @Test
    void everyKeyIsDescribed() {
        for (KeyTable table : List.of(StudyKeys.FILE, DesignKeys.FILE)) {
            assertThat(table.keys()).allSatisfy(key -> assertThat(key.about()).isNotBlank());
        }
    }
}
