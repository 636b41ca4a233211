package foamfront.optimizer.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foamfront.model.appraisal.Appraisal;
import foamfront.model.fabrication.CutPart;
import foamfront.model.fabrication.PartsList;
import foamfront.model.fabrication.Pattern;
import foamfront.model.fabrication.StockPiece;
import foamfront.model.fabrication.Stowage;
import foamfront.model.fabrication.Stowed;
import foamfront.model.mass.Inertia;
import foamfront.model.mishap.Mishap;
import foamfront.model.mission.CarSpace;
import foamfront.model.structure.ControlThrow;
import foamfront.optimizer.front.FrontJson;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** What the bench and the flight line want to know of one design, for programs. */
final class BuildJson {
    private BuildJson() {}

    /** Within the object of the masses: the band of four builds of five, and the tensor about the balance point. */
    static void mass(JsonGenerator json, Appraisal appraisal) throws IOException {
        double total = appraisal.balance().mass();
        json.writeArrayFieldStart("total_10_90");
        FrontJson.number(json, total - appraisal.massSpread());
        FrontJson.number(json, total + appraisal.massSpread());
        json.writeEndArray();
        Inertia i = Inertia.of(appraisal.masses(), appraisal.balance());
        json.writeArrayFieldStart("inertia");
        row(json, i.xx(), -i.xy(), -i.xz());
        row(json, -i.xy(), i.yy(), -i.yz());
        row(json, -i.xz(), -i.yz(), i.zz());
        json.writeEndArray();
    }

    private static void row(JsonGenerator json, double... values) throws IOException {
        json.writeStartArray();
        for (double value : values) {
            FrontJson.number(json, value);
        }
        json.writeEndArray();
    }

    static void write(JsonGenerator json, Appraisal appraisal) throws IOException {
        controls(json, appraisal.controls());
        mishap(json, appraisal.mishap());
        cutList(json, appraisal.parts());
        stockList(json, appraisal.parts());
        stowage(json, appraisal.stowage());
    }

    /** Pieces, and the boxes that they take in the car from its lower front left corner. */
    private static void stowage(JsonGenerator json, Stowage stowage) throws IOException {
        json.writeObjectFieldStart("in_the_car");
        FrontJson.number(json, "room_left", stowage.margin());
        json.writeStringField("arrangement", stowage.words());
        CarSpace car = stowage.car();
        json.writeFieldName("space");
        row(json, car.length(), car.width(), car.height());
        json.writeArrayFieldStart("pieces");
        for (Stowed lies : stowage.pieces()) {
            json.writeStartObject();
            json.writeStringField("name", lies.piece().name());
            FrontJson.number(json, "length", lies.piece().length());
            FrontJson.number(json, "breadth", lies.piece().breadth());
            FrontJson.number(json, "height", lies.piece().height());
            json.writeBooleanField("aslant", lies.aslant());
            json.writeFieldName("from");
            row(json, lies.from(0), lies.from(1), lies.from(2));
            json.writeFieldName("takes");
            row(json, lies.takes(0), lies.takes(1), lies.takes(2));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void controls(JsonGenerator json, List<ControlThrow> controls) throws IOException {
        json.writeArrayFieldStart("controls");
        for (ControlThrow control : controls) {
            json.writeStartObject();
            json.writeStringField("control", word(control.kind()));
            FrontJson.number(json, "area", control.area());
            FrontJson.number(json, "share_of_surface", control.share());
            FrontJson.number(json, "first_throw", control.first());
            FrontJson.number(json, "first_travel", control.atTrailingEdge(control.first()));
            FrontJson.number(json, "full_throw", control.full());
            FrontJson.number(json, "full_travel", control.atTrailingEdge(control.full()));
            FrontJson.number(json, "hinge_moment", control.hingeMoment());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void mishap(JsonGenerator json, Mishap mishap) throws IOException {
        json.writeObjectFieldStart("mishap");
        FrontJson.number(json, "crushed_length", mishap.depth());
        json.writeStringField("first_hit", word(mishap.first()));
        json.writeNumberField("propellers_broken", mishap.propellers());
        json.writeBooleanField("battery_reached", mishap.battery());
        json.writeBooleanField("load_reached", mishap.loads());
        FrontJson.number(json, "room_to_load", mishap.room());
        json.writeBooleanField("nose_swapped", mishap.swapped());
        json.writeBooleanField("wing_shed", mishap.shed());
        FrontJson.number(json, "cost", mishap.cost());
        FrontJson.number(json, "time", mishap.time());
        json.writeEndObject();
    }

    private static void cutList(JsonGenerator json, PartsList parts) throws IOException {
        json.writeArrayFieldStart("cut_list");
        for (CutPart part : parts.cut()) {
            Pattern pattern = part.pattern();
            json.writeStartObject();
            json.writeStringField("name", part.name());
            json.writeStringField("assembly", word(part.assembly()));
            json.writeNumberField("count", part.count());
            json.writeBooleanField("mirrored", part.mirrored());
            json.writeBooleanField("along_grain", part.grained());
            FrontJson.number(json, "length", pattern.length());
            FrontJson.number(json, "width", pattern.width());
            FrontJson.number(json, "area", pattern.area());
            FrontJson.number(json, "cut", pattern.cut());
            FrontJson.number(json, "scored", pattern.scored());
            FrontJson.number(json, "bevelled", pattern.bevelled());
            FrontJson.number(json, "folded", pattern.folded());
            FrontJson.number(json, "glue", part.glue());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void stockList(JsonGenerator json, PartsList parts) throws IOException {
        json.writeArrayFieldStart("stock_list");
        for (StockPiece piece : parts.stock()) {
            json.writeStartObject();
            json.writeStringField("name", piece.name());
            json.writeStringField("assembly", word(piece.assembly()));
            json.writeStringField("stock", piece.spar().name());
            json.writeNumberField("count", piece.count());
            FrontJson.number(json, "length", piece.length());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
