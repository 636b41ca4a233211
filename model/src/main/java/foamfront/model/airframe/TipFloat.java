package foamfront.model.airframe;

import foamfront.model.design.Wing;

/**
 * A small square tube under each half of the wing of a hull, which keeps it from heeling far: at three quarters of the
 * semispan, 0.6 of the wing's longest chord long, a fifth of one square, its underside a quarter of the hull's height below the
 * body's axis (judgement).
 *
 * @param x of its front end, m
 * @param y from the centre line, m
 * @param z of its underside over the body axis, m
 * @param length m
 * @param side both across, m
 * @param strut from its top to the wing, m
 */
public record TipFloat(double x, double y, double z, double length, double side, double strut) {
    private static final double STATION = 0.75;
    private static final double LENGTH = 0.6;
    private static final double SIDE = 0.2;
    private static final double BELOW_AXIS = 0.25;
    private static final double SHORTEST = 0.010; // m, a glued pad

    static TipFloat of(Wing wing, Surface surface, double bodyHeight) {
        double chord = surface.longestChord();
        double y = 0.5 * STATION * surface.span();
        double side = SIDE * chord;
        double z = -BELOW_AXIS * bodyHeight;
        double wingZ = surface.panelAt(y).height(y);
        double x = wing.x() + 0.1 * chord;
        return new TipFloat(x, y, z, LENGTH * chord, side, Math.max(SHORTEST, wingZ - z - side));
    }

    /** m³. */
    public double volume() {
        return length * side * side;
    }
}
