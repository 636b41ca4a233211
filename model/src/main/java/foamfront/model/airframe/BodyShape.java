package foamfront.model.airframe;

/**
 * The outside of the body, a square-cornered prism from the nose aft, its axis on z = 0.
 *
 * @param length m
 * @param width m
 * @param height m
 * @param full length with that width and height, m; a boom behind it is thin
 * @param wall board thickness, m
 * @param floors inside boards along the whole length (two-bay tube: 1)
 */
public record BodyShape(double length, double width, double height, double full, double wall, int floors) {
    /** Clear width inside, m. */
    public double insideWidth() {
        return width - 2 * wall;
    }

    /** Clear height inside over all floors together, m. */
    public double insideHeight() {
        return height - (2 + floors) * wall;
    }
}
