package foamfront.optimizer.bench;

import foamfront.model.propulsion.MotorLaw;
import foamfront.optimizer.front.FrontJson;
import java.util.Locale;

/** A sweep for programs: snake-case keys, SI units. */
public final class BenchJson {
    private BenchJson() {}

    public static String of(Sweep sweep) {
        MotorLaw motor = sweep.stand().motor();
        return FrontJson.document(json -> {
            json.writeStringField("motor", sweep.stand().drive().motor().name());
            json.writeStringField("rotor", sweep.stand().drive().rotor().name());
            json.writeStringField("battery", sweep.stand().drive().battery().name());
            json.writeStringField(
                    "controller", sweep.stand().drive().controller().name());
            json.writeNumberField("motors", sweep.stand().motors());
            FrontJson.number(json, "air_density", sweep.stand().density());
            FrontJson.number(json, "state_of_charge", sweep.stand().charge());
            json.writeStringField("verdict", Verdict.of(sweep));
            json.writeArrayFieldStart("points");
            for (Point point : sweep.points()) {
                json.writeStartObject();
                json.writeStringField("outcome", point.at().outcome().name().toLowerCase(Locale.ROOT));
                FrontJson.number(json, "airspeed", point.speed());
                FrontJson.number(json, "throttle", point.at().throttle());
                FrontJson.number(json, "thrust", point.at().thrust());
                FrontJson.number(json, "rotation", point.at().rotation());
                FrontJson.number(json, "motor_current", point.at().motorCurrent());
                FrontJson.number(json, "battery_current", point.at().batteryCurrent());
                FrontJson.number(json, "battery_voltage", point.at().batteryVoltage());
                FrontJson.number(json, "electrical_power", point.at().electricalPower());
                FrontJson.number(json, "shaft_power", point.at().shaftPower());
                FrontJson.number(json, "copper_loss", point.copperLoss(motor));
                FrontJson.number(json, "iron_loss", point.ironLoss(motor));
                FrontJson.number(json, "motor_efficiency", point.motorEfficiency());
                FrontJson.number(json, "rotor_efficiency", point.propellerEfficiency());
                FrontJson.number(json, "efficiency", point.efficiency());
                FrontJson.number(json, "advance_ratio", point.at().advanceRatio());
                json.writeBooleanField("inside_measured", point.at().insideMeasured());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }
}
