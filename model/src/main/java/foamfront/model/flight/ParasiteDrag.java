package foamfront.model.flight;

/**
 * Drag area of everything that drags without lifting, linear in the logarithm of speed between two speeds where the build-up
 * was summed: friction falls with Reynolds number nearly so over the factor of three in speed that a model flies at.
 *
 * @param atOne drag area extrapolated to 1 m/s, m²
 * @param slope change of drag area per unit of ln(V), m²
 */
public record ParasiteDrag(double atOne, double slope) {
    /**
     * Through the drag areas at two speeds.
     *
     * @param slow m/s
     * @param slowArea m²
     * @param fast m/s
     * @param fastArea m²
     */
    public static ParasiteDrag through(double slow, double slowArea, double fast, double fastArea) {
        double slope = (fastArea - slowArea) / StrictMath.log(fast / slow);
        return new ParasiteDrag(slowArea - slope * StrictMath.log(slow), slope);
    }

    /** Drag area at a speed in m/s, m². */
    public double area(double speed) {
        return atOne + slope * StrictMath.log(speed);
    }
}
