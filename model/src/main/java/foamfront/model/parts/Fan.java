package foamfront.model.parts;

import static foamfront.model.units.Require.positive;
import static foamfront.model.units.Require.within;

/**
 * A ducted fan unit with its motor.
 *
 * @param diameter swept, m
 * @param hub diameter, m
 * @param exit area of the jet pipe's end over the swept annulus: 0.7 to 0.9 (published rule of builders)
 * @param mass with motor, kg
 * @param motor in its hub
 * @param curves from momentum theory, {@link FanLaw}
 */
public record Fan(
        String name,
        double diameter,
        double hub,
        double exit,
        double mass,
        Motor motor,
        PropellerCurves curves,
        double price,
        Provenance provenance)
        implements Rotor {
    /** Highest tip speed of a moulded fan, m/s; from memory of 60 000 rpm units of 64 mm. */
    private static final double TIP_SPEED = 200;

    public Fan {
        positive("fan diameter", diameter, "m");
        positive("fan hub", hub, "m");
        if (!(hub < diameter)) {
            throw new IllegalArgumentException(
                    "fan hub " + hub + " m is no smaller than its fan of " + diameter + " m");
        }
        within("fan exit", exit, 0.5, 1.1, "of the swept annulus");
        positive("fan mass", mass, "kg");
    }

    @Override
    public double tipSpeed() {
        return TIP_SPEED;
    }

    /** Area the blades sweep, m². */
    public double annulus() {
        return annulus(diameter, hub);
    }

    /** Area between two circles, m². */
    static double annulus(double diameter, double hub) {
        return 0.25 * Math.PI * (diameter * diameter - hub * hub);
    }
}
