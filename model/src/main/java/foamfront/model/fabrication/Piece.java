package foamfront.model.fabrication;

/**
 * One piece of an aeroplane as it goes into the car, in a box.
 *
 * @param name what it is
 * @param length of the box along the piece: a body's axis, a wing's span, m
 * @param breadth across it: a tail's span, a wing's chord, m
 * @param height as it stands, or as a wing lies on its underside, m
 */
public record Piece(String name, double length, double breadth, double height) {
    /** The longest of its sides, m. */
    public double longest() {
        return Math.max(length, Math.max(breadth, height));
    }
}
