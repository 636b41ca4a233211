package foamfront.optimizer.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foamfront.model.flight.LateralDerivatives;
import foamfront.model.flight.Motions;
import foamfront.optimizer.front.FrontJson;
import java.io.IOException;

/** How an aeroplane answers a disturbance, for programs; null where it does not swing. */
final class MotionsJson {
    private MotionsJson() {}

    static void write(JsonGenerator json, Motions motions) throws IOException {
        json.writeObjectFieldStart("motions");
        FrontJson.number(json, "speed", motions.speed());
        json.writeObjectFieldStart("short_period");
        FrontJson.number(json, "frequency", motions.shortPeriod().frequency());
        FrontJson.number(json, "damping", motions.shortPeriod().damping());
        json.writeEndObject();
        json.writeObjectFieldStart("dutch_roll");
        FrontJson.number(json, "frequency", motions.lateral().dutchFrequency());
        FrontJson.number(json, "damping", motions.lateral().dutchDamping());
        json.writeEndObject();
        FrontJson.number(json, "roll_rate", motions.lateral().rollRate());
        FrontJson.number(json, "spiral_rate", motions.lateral().spiralRate());
        derivatives(json, motions.derivatives());
        json.writeEndObject();
    }

    private static void derivatives(JsonGenerator json, LateralDerivatives k) throws IOException {
        json.writeObjectFieldStart("derivatives");
        FrontJson.number(json, "side_force_by_sideslip", k.sideForce());
        FrontJson.number(json, "roll_by_sideslip", k.rollSideslip());
        FrontJson.number(json, "roll_by_roll_rate", k.rollDamping());
        FrontJson.number(json, "roll_by_yaw_rate", k.rollYaw());
        FrontJson.number(json, "yaw_by_sideslip", k.yawStiffness());
        FrontJson.number(json, "yaw_by_roll_rate", k.yawRoll());
        FrontJson.number(json, "yaw_by_yaw_rate", k.yawDamping());
        json.writeEndObject();
    }
}
