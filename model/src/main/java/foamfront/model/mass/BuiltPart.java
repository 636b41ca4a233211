package foamfront.model.mass;

import static foamfront.model.units.Require.notNegative;

/**
 * A part cut from board or sawn from stock, with what joins and covers it; all its pieces on both sides together.
 *
 * @param group the part of the aeroplane it belongs to
 * @param boardArea m² of board as cut
 * @param stockMass of tube, rod or strip, kg
 * @param x of its centroid from the nose, m
 * @param y mean distance from the centre line, m: a quarter of the span for a wing from tip to tip
 * @param z of its centroid over the body axis, m
 * @param glueLength of one bead, m
 * @param tapeLength of tape on hinges, joints, edges and faces, m
 */
public record BuiltPart(
        String name,
        MassGroup group,
        double boardArea,
        double stockMass,
        double x,
        double y,
        double z,
        double glueLength,
        double tapeLength) {
    public BuiltPart {
        notNegative("board area", boardArea, "m2");
        notNegative("stock mass", stockMass, "kg");
        notNegative("distance from the centre line", y, "m");
        notNegative("glue length", glueLength, "m");
        notNegative("tape length", tapeLength, "m");
    }
}
