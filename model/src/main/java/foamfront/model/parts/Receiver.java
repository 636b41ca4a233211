package foamfront.model.parts;

import static foamfront.model.units.Require.positive;

/**
 * A radio receiver.
 *
 * @param channels how many outputs it has
 * @param mass kg
 * @param current mean, A at 5 V
 * @param length m
 * @param width m
 * @param height m
 */
public record Receiver(
        String name,
        int channels,
        double mass,
        double current,
        double length,
        double width,
        double height,
        double price,
        Provenance provenance)
        implements Part {
    public Receiver {
        positive("channel count", channels, "");
        positive("receiver mass", mass, "kg");
        positive("receiver current", current, "A");
        positive("receiver length", length, "m");
        positive("receiver width", width, "m");
        positive("receiver height", height, "m");
    }
}
