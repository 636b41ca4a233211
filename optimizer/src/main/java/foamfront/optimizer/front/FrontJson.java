package foamfront.optimizer.front;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import foamfront.model.appraisal.LimitCheck;
import foamfront.model.mission.Measure;
import foamfront.model.units.Currency;
import foamfront.model.units.Numbers;
import foamfront.optimizer.study.Aim;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;

/** The front as JSON: stable snake-case keys, SI units, null for what a design cannot have. */
public final class FrontJson {
    private static final JsonFactory FACTORY = new JsonFactory();

    private FrontJson() {}

    /** Writes with the layout that every JSON file of a run has. */
    public interface Body {
        void write(JsonGenerator json) throws IOException;
    }

    /** A JSON document, lines ended by a line feed alone. */
    public static String document(Body body) {
        StringWriter out = new StringWriter();
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        try (JsonGenerator json = FACTORY.createGenerator(out)) {
            json.setPrettyPrinter(
                    new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
            json.writeStartObject();
            body.write(json);
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
        return out + "\n";
    }

    /** A number in the project's digits; null where it is none. */
    public static void number(JsonGenerator json, String key, double value) throws IOException {
        json.writeFieldName(key);
        number(json, value);
    }

    /** A number in the project's digits; null where it is none. */
    public static void number(JsonGenerator json, double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumber(Numbers.exact(value));
        } else {
            json.writeNull();
        }
    }

    public static String of(String study, Front front, int firstNumber, Currency currency) {
        return document(json -> {
            json.writeStringField("study", study);
            json.writeStringField("currency", currency.code());
            json.writeArrayFieldStart("aims");
            for (Aim aim : front.aims()) {
                json.writeStartObject();
                json.writeStringField("measure", aim.measure().key());
                json.writeStringField("wanted", aim.most() ? "most" : "least");
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("rows");
            for (int i = 0; i < front.size(); i++) {
                row(json, front, i, firstNumber + i);
            }
            json.writeEndArray();
        });
    }

    private static void row(JsonGenerator json, Front front, int index, int number) throws IOException {
        Row row = front.rows().get(index);
        json.writeStartObject();
        json.writeNumberField("row", number);
        json.writeStringField("name", row.design().name());
        json.writeStringField("layout", row.layout());
        json.writeStringField("stands_out_for", front.mark(index));
        measures(json, row);
        limits(json, row);
        json.writeArrayFieldStart("caveats");
        for (var caveat : row.caveats()) {
            json.writeString(caveat.name().toLowerCase(Locale.ROOT));
        }
        json.writeEndArray();
        json.writeObjectFieldStart("choices");
        for (DesignColumns.Text text : DesignColumns.texts()) {
            json.writeStringField(text.key(), text.of().apply(row.design()));
        }
        json.writeEndObject();
        json.writeObjectFieldStart("dimensions");
        for (DesignColumns.Figure dimension : DesignColumns.numbers()) {
            number(json, dimension.key(), dimension.of().applyAsDouble(row.design()));
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    /** {@code measures.<name>.value}. */
    public static void measures(JsonGenerator json, Row row) throws IOException {
        json.writeObjectFieldStart("measures");
        for (Measure measure : Measure.values()) {
            json.writeObjectFieldStart(measure.key());
            number(json, "value", row.measures().of(measure));
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    /** {@code limits[].margin}, room over limit, positive is good. */
    public static void limits(JsonGenerator json, Row row) throws IOException {
        json.writeArrayFieldStart("limits");
        for (LimitCheck check : row.limits()) {
            json.writeStartObject();
            json.writeStringField("measure", check.bound().measure().key());
            number(json, "low", check.bound().low());
            number(json, "high", check.bound().high());
            number(json, "value", check.value());
            number(json, "margin", check.margin());
            json.writeStringField("sentence", check.sentence());
            json.writeStringField("reason", check.bound().reason());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
