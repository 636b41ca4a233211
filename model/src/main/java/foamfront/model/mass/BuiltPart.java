package foamfront.model.mass;

import static foamfront.model.units.Require.notNegative;

/**
 * A part cut from board with what joins it, both sides of the aeroplane together.
 *
 * @param group the part of the aeroplane it belongs to
 * @param boardArea m² of board as cut
 * @param x of its centroid from the nose, m
 * @param z of its centroid over the body axis, m
 * @param glueLength of one bead, m
 * @param tapeLength of tape on its joints, m; a covering of tape is added on top
 */
public record BuiltPart(
        String name, MassGroup group, double boardArea, double x, double z, double glueLength, double tapeLength) {
    public BuiltPart {
        notNegative("board area", boardArea, "m2");
        notNegative("glue length", glueLength, "m");
        notNegative("tape length", tapeLength, "m");
    }
}
