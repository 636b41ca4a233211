package foamfront.model.airframe;

import foamfront.model.design.Design;
import org.jspecify.annotations.Nullable;

/**
 * Where things sit, by workshop rules from the design's dimensions. What must lie at a set distance from the balance point is
 * given relative to it, since the balance point follows from the neutral point.
 *
 * @param shaft propeller and motor
 * @param bay what lies inside the body
 * @param stance wheels and ground
 * @param flotation hull or floats; null for an aeroplane of the land
 */
public record Stations(
        Shaft shaft, Bay bay, Stance stance, @Nullable Flotation flotation) {
    static Stations of(Design design, Surface wing, BodyShape body, Servos servos) {
        Bay bay = Bay.of(design, body, servos);
        Shaft shaft = Shaft.of(design, wing, body, bay);
        Flotation flotation = Flotation.of(design, wing, body, shaft);
        return new Stations(shaft, bay, Stance.of(design, body, shaft, flotation), flotation);
    }
}
