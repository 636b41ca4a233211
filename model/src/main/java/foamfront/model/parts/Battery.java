package foamfront.model.parts;

import static foamfront.model.units.Require.positive;

/**
 * A lithium-polymer pack of cells in series, or a few such packs side by side as one.
 *
 * @param pack name of one pack in the catalogue
 * @param cells in series
 * @param capacity rated charge, A s (coulomb)
 * @param rating continuous discharge on the label, multiples of capacity per hour (C)
 * @param mass with leads, kg
 * @param length m
 * @param width m
 * @param height m
 * @param cellResistance of one cell, ohm
 * @param packs how many lie side by side
 */
public record Battery(
        String pack,
        int cells,
        double capacity,
        double rating,
        double mass,
        double length,
        double width,
        double height,
        double cellResistance,
        double price,
        Provenance provenance,
        int packs)
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
        positive("number of packs", packs, "");
    }

    /** A single pack. */
    public Battery(
            String pack,
            int cells,
            double capacity,
            double rating,
            double mass,
            double length,
            double width,
            double height,
            double cellResistance,
            double price,
            Provenance provenance) {
        this(pack, cells, capacity, rating, mass, length, width, height, cellResistance, price, provenance, 1);
    }

    /** What design files call it: {@code 2 x 3S 2200} of two packs. */
    @Override
    public String name() {
        return packs == 1 ? pack : packs + " x " + pack;
    }

    /** So many times these packs side by side, as one: capacity and mass times as much, resistance by as much less. */
    public Battery parallel(int times) {
        return times == 1
                ? this
                : new Battery(
                        pack,
                        cells,
                        times * capacity,
                        rating,
                        times * mass,
                        length,
                        times * width,
                        height,
                        cellResistance / times,
                        times * price,
                        provenance,
                        times * packs);
    }

    /** Current that empties the pack in one hour, A. */
    public double oneHourCurrent() {
        return capacity / SECONDS_PER_HOUR;
    }
}
