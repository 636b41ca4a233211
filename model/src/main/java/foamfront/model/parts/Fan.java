package foamfront.model.parts;

import static foamfront.model.units.Require.positive;

/**
 * A ducted fan unit with its motor.
 *
 * @param law size, losses and quoted thrust
 * @param mass with motor, kg
 * @param motor in its hub
 * @param curves of the law
 */
public record Fan(
        String name, FanLaw law, double mass, Motor motor, PropellerCurves curves, double price, Provenance provenance)
        implements Rotor {
    /** Highest tip speed of a moulded fan, m/s; from memory of 60 000 rpm units of 64 mm. */
    private static final double TIP_SPEED = 200;

    /** Advance without thrust over nominal, as of propellers. */
    private static final double THRUST_END = 1.25;

    /** A unit's length over its diameter (common practice). */
    public static final double LENGTH = 0.9;

    public Fan {
        positive("fan mass", mass, "kg");
    }

    /** With the curves of its law. */
    public Fan(String name, FanLaw law, double mass, Motor motor, double price, Provenance provenance) {
        this(name, law, mass, motor, law.curves(), price, provenance);
    }

    @Override
    public double diameter() {
        return law.diameter();
    }

    @Override
    public double tipSpeed() {
        return TIP_SPEED;
    }

    @Override
    public double pitch() {
        return curves.furthestAdvance() * diameter() / THRUST_END;
    }

    /** Area the blades sweep, m². */
    public double annulus() {
        return law.annulus();
    }

    /** Area of the jet pipe's end, m². */
    public double exitArea() {
        return law.exit() * law.annulus();
    }
}
