package foamfront.optimizer.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foamfront.model.units.Currency;
import foamfront.optimizer.fleet.LineUp;
import foamfront.optimizer.fleet.Member;
import foamfront.optimizer.fleet.Sharing;
import foamfront.optimizer.fleet.ShoppingList;
import foamfront.optimizer.front.FrontJson;
import foamfront.optimizer.front.Row;
import java.io.IOException;
import java.util.List;

/** A line-up for programs: stable snake-case keys, SI units. */
final class LineUpJson {
    private LineUpJson() {}

    static String of(LineUp lineUp, Currency currency) {
        return FrontJson.document(json -> {
            json.writeStringField("currency", currency.code());
            json.writeArrayFieldStart("aeroplanes");
            for (Member member : lineUp.members()) {
                member(json, member);
            }
            json.writeEndArray();
            words(json, "roles_not_covered", lineUp.uncovered());
            json.writeObjectFieldStart("shopping");
            json.writeArrayFieldStart("lines");
            for (ShoppingList.Line line : lineUp.shopping().lines()) {
                json.writeStartObject();
                json.writeStringField("item", line.item());
                FrontJson.number(json, "quantity", line.quantity());
                FrontJson.number(json, "bought", line.bought());
                FrontJson.number(json, "cost", line.cost());
                json.writeEndObject();
            }
            json.writeEndArray();
            FrontJson.number(json, "cost", lineUp.shopping().cost());
            FrontJson.number(json, "cost_apart", lineUp.shopping().apart());
            json.writeEndObject();
        });
    }

    private static void member(JsonGenerator json, Member member) throws IOException {
        Row row = new Row(
                member.design(),
                member.appraisal().measures(),
                member.appraisal().limits(),
                member.appraisal().caveats());
        json.writeStartObject();
        json.writeStringField("design", member.design().name());
        json.writeStringField("role", member.role());
        json.writeStringField("study", member.study());
        json.writeStringField("state", member.state().words());
        json.writeStringField("layout", row.layout());
        json.writeBooleanField("feasible", member.appraisal().feasible());
        FrontJson.measures(json, row);
        Sharing sharing = member.sharing();
        if (sharing != null) {
            json.writeObjectFieldStart("sharing");
            json.writeStringField("from", sharing.from().name());
            words(json, "parts", sharing.parts());
            words(json, "no_longer_the_same", sharing.different(member.design()));
            FrontJson.number(json, "cost_besides", ShoppingList.besides(member));
            if (sharing.alone() != null) {
                json.writeObjectFieldStart("alone");
                FrontJson.measures(
                        json,
                        new Row(
                                sharing.alone().airframe().design(),
                                sharing.alone().measures(),
                                sharing.alone().limits(),
                                sharing.alone().caveats()));
                json.writeEndObject();
            }
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private static void words(JsonGenerator json, String key, List<String> words) throws IOException {
        json.writeArrayFieldStart(key);
        for (String word : words) {
            json.writeString(word);
        }
        json.writeEndArray();
    }
}
