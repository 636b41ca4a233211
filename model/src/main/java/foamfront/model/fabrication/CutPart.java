package foamfront.model.fabrication;

/**
 * One kind of cut part.
 *
 * @param name as on the drawings
 * @param assembly what it belongs to
 * @param count pieces in all
 * @param mirrored whether half of them are mirror images: the outline turned over before bevelling, since paper prints and
 *     bevels have a side
 * @param grained whether the grain must run along its length
 * @param pattern flat shape
 * @param glue bead that joins one piece to the rest, m
 * @param tape on one piece's joints, beyond its own hinges, m
 * @param covering tape on one piece's edges or faces as the design's covering asks, m
 * @param x mean position in the aeroplane aft of the nose, or of the balance point, m
 * @param y mean distance from the centre line, m
 * @param z height over the body axis, m
 * @param fromBalancePoint whether x counts from the balance point, as of floats and wheels, which are placed by it
 */
public record CutPart(
        String name,
        Assembly assembly,
        int count,
        boolean mirrored,
        boolean grained,
        Pattern pattern,
        double glue,
        double tape,
        double covering,
        double x,
        double y,
        double z,
        boolean fromBalancePoint) {
    /** Board in all pieces, m². */
    public double area() {
        return count * pattern.area();
    }

    /** Glue bead of all pieces, m. */
    public double glueLength() {
        return count * glue;
    }

    /** Tape on joints and hinges of all pieces, m. */
    public double tapeLength() {
        return count * (tape + pattern.taped());
    }

    /** Tape that covers edges or faces of all pieces, m. */
    public double coveringLength() {
        return count * covering;
    }
}
