package foamfront.model.parts;

import static foamfront.model.units.Require.positive;

/**
 * A lithium-polymer pack of cells in series.
 *
 * @param cells in series
 * @param capacity rated charge, A s (coulomb)
 * @param rating continuous discharge on the label, multiples of capacity per hour (C)
 * @param mass with leads, kg
 * @param length m
 * @param width m
 * @param height m
 * @param cellResistance of one cell, ohm
 */
public record Battery(
        String name,
        int cells,
        double capacity,
        double rating,
        double mass,
        double length,
        double width,
        double height,
        double cellResistance,
        double price,
        Provenance provenance)
        implements Part {
    /** Packs that are put side by side at most; judgement. */
    public static final int MOST_PARALLEL = 4;

    private static final double SECONDS_PER_HOUR = 3600;

    public Battery {
        positive("cell count", cells, "");
        positive("battery capacity", capacity, "A s");
        positive("battery rating", rating, "C");
        positive("battery mass", mass, "kg");
        positive("battery length", length, "m");
        positive("battery width", width, "m");
        positive("battery height", height, "m");
        positive("cell resistance", cellResistance, "ohm");
    }

    /** So many of these packs side by side, as one: capacity and mass times as much, resistance by as much less. */
    public Battery parallel(int packs) {
        return packs == 1
                ? this
                : new Battery(
                        packs + " x " + name,
                        cells,
                        packs * capacity,
                        rating,
                        packs * mass,
                        length,
                        packs * width,
                        height,
                        cellResistance / packs,
                        packs * price,
                        provenance);
    }

    /** Current that empties the pack in one hour, A. */
    public double oneHourCurrent() {
        return capacity / SECONDS_PER_HOUR;
    }
}
