package foamfront.model.structure;

import static foamfront.model.units.Require.finite;
import static foamfront.model.units.Require.notNegative;
import static foamfront.model.units.Require.positive;

/**
 * What the air and the pilot do to the structure, and the masses that matter to it.
 *
 * @param mass all-up, kg
 * @param wingMass of all wings, kg; spread like the lift, it relieves the bending
 * @param tailMass of stabiliser and fins, kg
 * @param density of the air, kg/m³
 * @param stallSpeed m/s
 * @param cruiseSpeed m/s, where the gust is met
 * @param topSpeed m/s
 * @param gust vertical gust, m/s; 0 in a hall
 * @param liftSlope of the whole aeroplane, per rad
 * @param push of the throwing arm along the body, m/s²; 0 for what takes off by itself
 * @param tailLift of both halves of the stabiliser in trim at maximum lift, of the aeroplane's lift; down negative
 */
public record FlightLoads(
        double mass,
        double wingMass,
        double tailMass,
        double density,
        double stallSpeed,
        double cruiseSpeed,
        double topSpeed,
        double gust,
        double liftSlope,
        double push,
        double tailLift) {
    public FlightLoads {
        positive("mass", mass, "kg");
        notNegative("wing mass", wingMass, "kg");
        notNegative("tail mass", tailMass, "kg");
        positive("air density", density, "kg/m3");
        positive("stall speed", stallSpeed, "m/s");
        positive("cruise speed", cruiseSpeed, "m/s");
        positive("top speed", topSpeed, "m/s");
        notNegative("gust", gust, "m/s");
        positive("lift slope", liftSlope, "per rad");
        notNegative("push", push, "m/s2");
        finite("tail lift", tailLift);
    }
}
