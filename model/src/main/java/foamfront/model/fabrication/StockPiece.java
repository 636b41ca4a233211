package foamfront.model.fabrication;

import foamfront.model.parts.Spar;

/**
 * Pieces sawn from a stock tube, rod or strip.
 *
 * @param assembly what they belong to
 * @param length of one, m
 * @param count pieces alike
 * @param x mean position aft of the nose, m
 * @param y mean distance from the centre line, m
 * @param z height over the body axis, m
 */
public record StockPiece(
        String name, Assembly assembly, Spar spar, double length, int count, double x, double y, double z) {
    /** kg. */
    public double mass() {
        return count * length * spar.linearMass();
    }
}
