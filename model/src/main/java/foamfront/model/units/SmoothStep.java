package foamfront.model.units;

/**
 * The step 3 t² − 2 t³ from 0 at t = 0 to 1 at t = 1, level at both ends, so that no figure jumps or kinks where one law takes
 * over from another.
 */
public final class SmoothStep {
    private SmoothStep() {}

    /** At {@code t}; 0 below 0 and 1 beyond 1. */
    public static double at(double t) {
        double u = Math.max(0, Math.min(1, t));
        return u * u * (3 - 2 * u);
    }
}
