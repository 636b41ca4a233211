package foamfront.model.fabrication;

/**
 * Where one piece lies in the car: the straight box that it takes, from the space's lower front left corner; x along the space's
 * length, y its width, z its height, m.
 *
 * @param piece what lies there
 * @param up which of its sides stands upright: 0 length, 1 breadth, 2 height
 * @param layer across which axis (0, 1, 2) it lies aslant in a layer of its own; −1 straight, 3 somehow aslant
 * @param x m
 * @param y m
 * @param z m
 * @param dx m
 * @param dy m
 * @param dz m
 */
public record Stowed(Piece piece, int up, int layer, double x, double y, double z, double dx, double dy, double dz) {
    /** Lies along the edges of the space. */
    static final int STRAIGHT = -1;

    /** Has the space for itself and lies aslant in it. */
    static final int ANYHOW = 3;

    /** Whether its edges do not all lie along the space's. */
    public boolean aslant() {
        return layer != STRAIGHT;
    }

    /** Where it begins along an axis, m. */
    public double from(int axis) {
        return axis == 0 ? x : axis == 1 ? y : z;
    }

    /** What it takes there, m. */
    public double takes(int axis) {
        return axis == 0 ? dx : axis == 1 ? dy : dz;
    }

    /** Whether it ends before another begins. */
    boolean before(Stowed other, int axis) {
        return from(axis) + takes(axis) <= other.from(axis) + 1e-9;
    }
}
