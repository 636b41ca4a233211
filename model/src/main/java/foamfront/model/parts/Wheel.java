package foamfront.model.parts;

import static foamfront.model.units.Require.positive;

/**
 * A wheel with its share of axle and leg wire.
 *
 * @param diameter m
 * @param width m
 * @param mass kg
 */
public record Wheel(String name, double diameter, double width, double mass, double price, Provenance provenance)
        implements Part {
    public Wheel {
        positive("wheel diameter", diameter, "m");
        positive("wheel width", width, "m");
        positive("wheel mass", mass, "kg");
    }
}
