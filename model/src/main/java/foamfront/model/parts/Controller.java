package foamfront.model.parts;

import static foamfront.model.units.Require.positive;

/**
 * A speed controller with a supply for the radio.
 *
 * @param current continuous rating, A
 * @param supply what its linear 5 V supply gives receiver and servos, up to three cells, A
 * @param mass with leads, kg
 * @param length m
 * @param width m
 * @param height m
 * @param resistance of both conducting switches and leads, ohm
 */
public record Controller(
        String name,
        double current,
        double supply,
        double mass,
        double length,
        double width,
        double height,
        double resistance,
        double price,
        Provenance provenance)
        implements Part {
    /** Rating over full-throttle current: 1.2 to 1.3, common practice. */
    public static final double ROOM = 1.25;

    public Controller {
        positive("controller current", current, "A");
        positive("controller supply", supply, "A");
        positive("controller mass", mass, "kg");
        positive("controller length", length, "m");
        positive("controller width", width, "m");
        positive("controller height", height, "m");
        positive("controller resistance", resistance, "ohm");
    }
}
