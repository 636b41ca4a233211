package foamfront.optimizer.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foamfront.model.appraisal.Appraisal;
import foamfront.model.appraisal.LiftingSummary;
import foamfront.model.appraisal.PolarPoint;
import foamfront.model.appraisal.PowerPoint;
import foamfront.model.fabrication.BillOfMaterials;
import foamfront.model.mass.Balance;
import foamfront.model.mass.MassItem;
import foamfront.model.units.Currency;
import foamfront.optimizer.front.FrontJson;
import foamfront.optimizer.front.Row;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** One design for programs: stable snake-case keys, SI units, null for what it cannot have. */
final class AppraisalJson {
    private AppraisalJson() {}

    static String of(Appraisal appraisal, Currency currency) {
        Row row = new Row(appraisal.airframe().design(), appraisal.measures(), appraisal.limits(), appraisal.caveats());
        return FrontJson.document(json -> {
            json.writeStringField("design", row.design().name());
            json.writeStringField("layout", row.layout());
            json.writeBooleanField("feasible", appraisal.feasible());
            json.writeStringField("currency", currency.code());
            FrontJson.measures(json, row);
            mass(json, appraisal);
            FrontJson.limits(json, row);
            json.writeArrayFieldStart("caveats");
            for (var caveat : appraisal.caveats()) {
                json.writeStartObject();
                json.writeStringField("code", caveat.name().toLowerCase(Locale.ROOT));
                json.writeStringField("sentence", caveat.sentence());
                json.writeEndObject();
            }
            json.writeEndArray();
            surfaces(json, appraisal);
            MotionsJson.write(json, appraisal.motions());
            json.writeObjectFieldStart("aeroplane");
            FrontJson.number(json, "neutral_point", appraisal.neutralPoint());
            json.writeEndObject();
            curves(json, appraisal);
            bill(json, appraisal.bill());
            BuildJson.write(json, appraisal);
        });
    }

    private static void mass(JsonGenerator json, Appraisal appraisal) throws IOException {
        Balance balance = appraisal.balance();
        json.writeObjectFieldStart("mass");
        FrontJson.number(json, "total", balance.mass());
        json.writeArrayFieldStart("centre_of_gravity");
        for (double coordinate : new double[] {balance.x(), balance.y(), balance.z()}) {
            FrontJson.number(json, coordinate);
        }
        json.writeEndArray();
        FrontJson.number(json, "battery_x", balance.batteryX());
        BuildJson.mass(json, appraisal);
        json.writeArrayFieldStart("items");
        for (MassItem item : appraisal.masses().items()) {
            item(json, item, item.fromBalancePoint() ? balance.aim() + item.x() : item.x());
        }
        item(json, appraisal.masses().battery(), balance.batteryX());
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void item(JsonGenerator json, MassItem item, double x) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", item.name());
        FrontJson.number(json, "mass", item.mass());
        FrontJson.number(json, "x", x);
        FrontJson.number(json, "y", item.y());
        FrontJson.number(json, "z", item.z());
        json.writeEndObject();
    }

    private static void surfaces(JsonGenerator json, Appraisal appraisal) throws IOException {
        List<LiftingSummary> surfaces = appraisal.surfaces();
        json.writeObjectFieldStart("lifting_surfaces");
        summary(
                json,
                surfaces.get(surfaces.size() - 1)); // all together, the last, is what is meant unless one is named
        json.writeArrayFieldStart("each");
        for (LiftingSummary surface : surfaces.subList(0, surfaces.size() - 1)) {
            json.writeStartObject();
            json.writeStringField("name", surface.name());
            summary(json, surface);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void summary(JsonGenerator json, LiftingSummary surface) throws IOException {
        FrontJson.number(json, "area", surface.area());
        FrontJson.number(json, "span", surface.span());
        FrontJson.number(json, "lift_curve_slope", surface.liftCurveSlope());
        FrontJson.number(json, "span_efficiency", surface.spanEfficiency());
        FrontJson.number(json, "neutral_point", surface.neutralPoint());
    }

    private static void curves(JsonGenerator json, Appraisal appraisal) throws IOException {
        json.writeArrayFieldStart("polar");
        for (PolarPoint point : appraisal.polar()) {
            json.writeStartObject();
            FrontJson.number(json, "speed", point.speed());
            FrontJson.number(json, "reynolds", point.reynolds());
            FrontJson.number(json, "lift_coefficient", point.liftCoefficient());
            FrontJson.number(json, "profile_drag_coefficient", point.profileDrag());
            FrontJson.number(json, "induced_drag_coefficient", point.inducedDrag());
            FrontJson.number(json, "parasite_drag_coefficient", point.parasiteDrag());
            FrontJson.number(json, "drag", point.drag());
            FrontJson.number(json, "incidence", point.incidence());
            FrontJson.number(json, "elevator", point.elevator());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("power");
        for (PowerPoint point : appraisal.power()) {
            json.writeStartObject();
            FrontJson.number(json, "speed", point.speed());
            FrontJson.number(json, "thrust_available", point.available());
            FrontJson.number(json, "thrust_required", point.required());
            FrontJson.number(json, "throttle", point.throttle());
            FrontJson.number(json, "current", point.current());
            FrontJson.number(json, "electrical_power", point.electrical());
            FrontJson.number(json, "climb_rate", point.climb());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void bill(JsonGenerator json, BillOfMaterials bill) throws IOException {
        json.writeArrayFieldStart("bill_of_materials");
        for (BillOfMaterials.Line line : bill.lines()) {
            json.writeStartObject();
            json.writeStringField("item", line.item());
            FrontJson.number(json, "quantity", line.quantity());
            FrontJson.number(json, "bought", line.bought());
            FrontJson.number(json, "cost", line.cost());
            json.writeStringField("price_from", line.provenance().words());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
