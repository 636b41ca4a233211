package foamfront.model.parts;

/**
 * What a pair of curves says at one speed.
 *
 * @param staticThrust C_T at rest
 * @param staticPower C_P at rest
 * @param peakEfficiency best J C_T / C_P
 * @param peakAdvance J of the best
 * @param zeroThrustAdvance J where C_T vanishes
 */
public record CurveShape(
        double staticThrust, double staticPower, double peakEfficiency, double peakAdvance, double zeroThrustAdvance) {
    private static final double STEP = 0.0005;

    /** Read at {@code rotation} rev/s. */
    public static CurveShape at(PropellerCurves curves, double rotation) {
        double l = curves.speedTerm(rotation);
        double best = 0;
        double bestJ = 0;
        double j = STEP;
        for (; curves.thrustCoefficient(j, l) > 0; j += STEP) {
            double power = curves.powerCoefficient(j, l);
            double efficiency = power > 0 ? j * curves.thrustCoefficient(j, l) / power : Double.NaN;
            if (!(efficiency <= best)) {
                best = efficiency;
                bestJ = j;
            }
        }
        return new CurveShape(curves.thrustCoefficient(0, l), curves.powerCoefficient(0, l), best, bestJ, j);
    }

    /** √(2/π) C_T^1.5 / C_P, at rest. */
    public double figureOfMerit() {
        return Math.sqrt(2 / Math.PI) * staticThrust * Math.sqrt(staticThrust) / staticPower;
    }
}
