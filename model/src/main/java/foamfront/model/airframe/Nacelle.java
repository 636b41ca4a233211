package foamfront.model.airframe;

/** The two boards that hold a motor ahead of the wing (common practice). */
public final class Nacelle {
    /** Along the stream, m. */
    public static final double LENGTH = 0.080;

    private static final double OVER_DIAMETER = 1.2;

    private Nacelle() {}

    /** Of each side board, m, for a motor's diameter. */
    public static double height(double motorDiameter) {
        return OVER_DIAMETER * motorDiameter;
    }
}
