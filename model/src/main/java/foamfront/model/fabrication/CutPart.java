package foamfront.model.fabrication;

/**
 * One kind of cut part.
 *
 * @param name as on the drawings
 * @param count pieces in all
 * @param mirrored whether half of them are mirror images: the outline turned over before bevelling, since paper prints and
 *     bevels have a side
 * @param grained whether the grain must run along its length
 * @param pattern flat shape
 * @param glue bead that joins one piece to the rest, m
 * @param tape on one piece beyond its own hinges: joints, edges, covering, m
 * @param x mean position in the aeroplane aft of the nose, m
 * @param y mean distance from the centre line, m
 * @param z height over the body axis, m
 */
public record CutPart(
        String name,
        int count,
        boolean mirrored,
        boolean grained,
        Pattern pattern,
        double glue,
        double tape,
        double x,
        double y,
        double z) {
    /** Board in all pieces, m². */
    public double area() {
        return count * pattern.area();
    }

    /** Glue bead of all pieces, m. */
    public double glueLength() {
        return count * glue;
    }

    /** Tape on all pieces, m. */
    public double tapeLength() {
        return count * (tape + pattern.taped());
    }
}
