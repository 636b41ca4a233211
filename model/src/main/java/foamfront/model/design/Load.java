package foamfront.model.design;

import static foamfront.model.units.Require.notNegative;
import static foamfront.model.units.Require.positive;

/**
 * One thing carried.
 *
 * @param mass kg
 * @param length along the body, m
 * @param width m
 * @param height m
 * @param released whether it is dropped in flight
 * @param power drawn from the flight battery, W
 * @param descent speed at which its parachute lets it down, m/s; 0 without a parachute
 * @param view clear angle it needs ahead (nose) or below, rad; 0 for none
 */
public record Load(
        String name,
        double mass,
        double length,
        double width,
        double height,
        Place place,
        boolean released,
        double descent,
        double power,
        double view) {
    public Load {
        notNegative("load mass", mass, "kg");
        positive("load length", length, "m");
        positive("load width", width, "m");
        positive("load height", height, "m");
        notNegative("descent", descent, "m/s");
        notNegative("load power", power, "W");
        notNegative("clear view", view, "rad");
    }

    /** A load without a parachute. */
    public Load(
            String name,
            double mass,
            double length,
            double width,
            double height,
            Place place,
            boolean released,
            double power,
            double view) {
        this(name, mass, length, width, height, place, released, 0, power, view);
    }
}
