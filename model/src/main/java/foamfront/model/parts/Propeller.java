package foamfront.model.parts;

import static foamfront.model.units.Require.positive;

/**
 * A fixed or folding propeller with its coefficient curves.
 *
 * @param family blade family, which sets the tip speed it stands
 * @param diameter m
 * @param pitch nominal, m
 * @param blades number of blades
 * @param mass kg
 * @param curves thrust and power coefficients against advance ratio and speed
 */
public record Propeller(
        String name,
        BladeFamily family,
        double diameter,
        double pitch,
        int blades,
        double mass,
        PropellerCurves curves,
        double price,
        Provenance provenance)
        implements Rotor {
    public Propeller {
        positive("propeller diameter", diameter, "m");
        positive("propeller pitch", pitch, "m");
        positive("blade count", blades, "");
        positive("propeller mass", mass, "kg");
    }

    @Override
    public double tipSpeed() {
        return family.tipSpeed();
    }

    /** The same that turns the other way, at the same price; no table has it, so no drawer does. */
    public Propeller otherHand() {
        return new Propeller(name + ", other hand", family, diameter, pitch, blades, mass, curves, price, provenance);
    }

    /** Whether the blades fold back when stopped. */
    public boolean folds() {
        return family == BladeFamily.FOLDING;
    }
}
