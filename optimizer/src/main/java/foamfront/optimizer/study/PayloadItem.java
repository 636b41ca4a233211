package foamfront.optimizer.study;

import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.units.Range;
import org.jspecify.annotations.Nullable;

/**
 * One thing a study asks to carry. Where its mass is searched, its length grows with the mass at a constant density, so that
 * a heavier load also needs a longer bay.
 *
 * @param mass kg; a single figure is not searched
 * @param density kg/m³, or NaN where the size is fixed
 * @param length m, of a fixed size; NaN where it follows from the mass
 * @param width m
 * @param height m
 * @param released whether it is dropped in flight
 * @param descent speed at which its parachute lets it down, m/s; 0 without one
 * @param power drawn from the battery, W
 * @param view clear angle it needs, rad
 */
public record PayloadItem(
        String name,
        Range mass,
        double density,
        double length,
        double width,
        double height,
        Place place,
        boolean released,
        double descent,
        double power,
        double view) {

    /** Whether the search chooses its mass. */
    public boolean searched() {
        return !mass.single();
    }

    /** The load of this mass (kg), or null for none at all. */
    public @Nullable Load at(double kilograms) {
        if (!(kilograms > 0)) {
            return null;
        }
        double extent = Double.isNaN(density) ? length : kilograms / (density * width * height);
        return new Load(name, kilograms, extent, width, height, place, released, descent, power, view);
    }
}
