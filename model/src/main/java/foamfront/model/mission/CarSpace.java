package foamfront.model.mission;

import static foamfront.model.units.Require.positive;

/**
 * The room in the car.
 *
 * @param length longest side, m
 * @param width m
 * @param height m
 * @param assembled whether the model must go in without being taken apart
 */
public record CarSpace(double length, double width, double height, boolean assembled) {
    public CarSpace {
        positive("car space length", length, "m");
        positive("car space width", width, "m");
        positive("car space height", height, "m");
    }
}
