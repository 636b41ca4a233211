package foamfront.model.parts;

import static foamfront.model.units.Require.positive;
import static foamfront.model.units.Require.within;

/**
 * A ducted fan without its motor.
 *
 * @param diameter swept, m
 * @param hub diameter, m
 * @param efficiency of rotor and duct together, air power over shaft power
 * @param mass kg
 */
public record Fan(
        String name, double diameter, double hub, double efficiency, double mass, double price, Provenance provenance)
        implements Part {
    public Fan {
        positive("fan diameter", diameter, "m");
        positive("fan hub", hub, "m");
        within("fan efficiency", efficiency, 0.3, 0.95, "");
        positive("fan mass", mass, "kg");
    }
}
