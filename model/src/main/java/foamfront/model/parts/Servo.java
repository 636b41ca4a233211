package foamfront.model.parts;

import static foamfront.model.units.Require.positive;

/**
 * A servo for one moving surface.
 *
 * @param mass with lead, kg
 * @param torque at stall, N m
 * @param current mean in flight, A at 5 V
 * @param length m
 * @param width m
 * @param height m
 */
public record Servo(
        String name,
        double mass,
        double torque,
        double current,
        double length,
        double width,
        double height,
        double price,
        Provenance provenance)
        implements Part {
    public Servo {
        positive("servo mass", mass, "kg");
        positive("servo torque", torque, "N m");
        positive("servo current", current, "A");
        positive("servo length", length, "m");
        positive("servo width", width, "m");
        positive("servo height", height, "m");
    }
}
