package foamfront.model.parts;

import static foamfront.model.units.Require.notNegative;
import static foamfront.model.units.Require.positive;

/**
 * A brushless outrunner by its three constants.
 *
 * @param mass with mount and leads, kg
 * @param diameter m
 * @param length without shaft, m
 * @param speedConstant rad/s per volt
 * @param resistance of the winding, ohm; the model applies the effective resistance of a loaded motor on top
 * @param noLoadCurrent at {@link #noLoadVoltage()}, A
 * @param noLoadVoltage V
 * @param continuousPower measured continuous electrical input, W, or 0 where none was measured and 5 W/g stands
 */
public record Motor(
        String name,
        double mass,
        double diameter,
        double length,
        double speedConstant,
        double resistance,
        double noLoadCurrent,
        double noLoadVoltage,
        double continuousPower,
        double price,
        Provenance provenance)
        implements Part {
    public Motor {
        positive("motor mass", mass, "kg");
        positive("motor diameter", diameter, "m");
        positive("motor length", length, "m");
        positive("speed constant", speedConstant, "rad/s/V");
        positive("winding resistance", resistance, "ohm");
        positive("no-load current", noLoadCurrent, "A");
        positive("no-load voltage", noLoadVoltage, "V");
        notNegative("continuous power", continuousPower, "W");
    }
}
