package foamfront.optimizer.study;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foamfront.model.units.Dimension;
import foamfront.model.units.Unit;
import foamfront.optimizer.yaml.Key;
import foamfront.optimizer.yaml.KeyTable;
import foamfront.optimizer.yaml.Shape;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.StringJoiner;

/**
 * The JSON Schema (draft 2020-12) of a file, from the tables it is read by, so that editors complete and check. It knows the
 * keys, words and units; ranges and what contradicts what are left to the reader.
 */
public final class SchemaWriter {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** What may stand between the words of a key. */
    private static final String BETWEEN = "[ _-]";

    private SchemaWriter() {}

    /** The schema's text, ending in a line break. */
    public static String write(KeyTable file, String title) {
        ObjectNode root = NODES.objectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", title);
        root.setAll(table(file, "#"));
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter()
                .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                .withArrayIndenter(DefaultPrettyPrinter.NopIndenter.instance);
        try {
            return JsonMapper.builder().build().writer(printer).writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@code at} is the node's own JSON pointer, so that other spellings refer to the first instead of repeating it. */
    private static ObjectNode table(KeyTable table, String at) {
        ObjectNode node = NODES.objectNode();
        node.put("description", table.about());
        node.put("type", "object");
        ObjectNode properties = node.putObject("properties");
        ObjectNode spellings = NODES.objectNode();
        ArrayNode required = NODES.arrayNode();
        for (Key key : table.keys()) {
            String here = at + "/properties/" + key.name().replace(" ", "%20");
            properties.set(key.name(), shape(key.shape(), here).put("description", key.about()));
            if (key.name().split(BETWEEN).length > 1) {
                spelling(spellings, key.name(), here);
            }
            for (String alias : key.aliases()) {
                spelling(spellings, alias, here);
            }
            if (key.required()) {
                required.add(key.name());
            }
        }
        if (!spellings.isEmpty()) {
            node.set("patternProperties", spellings);
        }
        if (!required.isEmpty()) {
            node.set("required", required);
        }
        return node.put("additionalProperties", false);
    }

    private static void spelling(ObjectNode spellings, String name, String at) {
        spellings
                .putObject("^" + String.join(BETWEEN, name.split(BETWEEN)) + "$")
                .put("$ref", at);
    }

    private static ObjectNode shape(Shape shape, String at) {
        ObjectNode node = NODES.objectNode();
        if (shape instanceof Shape.Text || shape instanceof Shape.PartName) {
            node.set("type", types("string", "number"));
        } else if (shape instanceof Shape.YesNo) {
            node.set("enum", NODES.arrayNode().add("yes").add("no"));
        } else if (shape instanceof Shape.Whole whole) {
            node.put("type", "integer").put("minimum", whole.low()).put("maximum", whole.high());
        } else if (shape instanceof Shape.Quantity quantity) {
            quantity(node, quantity.dimension());
        } else if (shape instanceof Shape.Span span) {
            quantity(node, span.dimension());
        } else if (shape instanceof Shape.Limit limit) {
            node.put("type", "string").put("pattern", "^(at most |at least |.+ to )");
            examples(node, limit.dimension());
        } else if (shape instanceof Shape.Size size) {
            node.put("type", "string").put("pattern", size.sides() == 2 ? "[x×]" : "[x×].*[x×]");
        } else if (shape instanceof Shape.Words words) {
            words(node, words.words());
        } else if (shape instanceof Shape.Table table) {
            return table(table.table(), at);
        } else if (shape instanceof Shape.Listing listing) {
            node.putArray("anyOf")
                    .add(shape(listing.item(), at + "/anyOf/0"))
                    .add(NODES.objectNode()
                            .put("type", "array")
                            .put("minItems", 1)
                            .set("items", NODES.objectNode().put("$ref", at + "/anyOf/0")));
        } else if (shape instanceof Shape.Either either) {
            node.putArray("anyOf")
                    .add(shape(either.first(), at + "/anyOf/0"))
                    .add(shape(either.second(), at + "/anyOf/1"));
        }
        return node;
    }

    private static void quantity(ObjectNode node, Dimension dimension) {
        if (dimension == Dimension.NUMBER || dimension == Dimension.COUNT) {
            node.set("type", types("string", "number"));
        } else {
            node.put("type", "string").put("pattern", "[0-9]");
        }
        examples(node, dimension);
    }

    private static void examples(ObjectNode node, Dimension dimension) {
        if (dimension == Dimension.MONEY) {
            node.put("$comment", "units: the catalogue's currency by its code of ISO 4217, such as USD or EUR");
            return;
        }
        StringJoiner units = new StringJoiner(", ");
        for (Unit unit : Unit.values()) {
            if (unit.dimension() == dimension && !unit.symbol().isEmpty()) {
                units.add(unit.symbol());
            }
        }
        if (units.length() > 0) {
            node.put("$comment", "units: " + units);
        }
    }

    private static void words(ObjectNode node, List<String> words) {
        ArrayNode list = node.putArray("enum");
        for (String word : words) {
            list.add(word);
        }
    }

    private static ArrayNode types(String... names) {
        ArrayNode types = NODES.arrayNode();
        for (String name : names) {
            types.add(name);
        }
        return types;
    }
}
