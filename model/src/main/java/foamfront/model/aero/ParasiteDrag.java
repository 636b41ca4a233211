package foamfront.model.aero;

import static foamfront.model.units.Require.positive;

import java.util.function.DoubleUnaryOperator;

/**
 * Drag area of all that does not lift, against speed. Taken from the sum of the parts at three speeds and carried between them
 * by a parabola in the logarithm of speed, so that a flight condition costs a few multiplications; held at its ends outside.
 *
 * <p>The sum is raised by 5 % for interference between the parts (<i>common practice</i>) and by 20 % for gaps, tape edges,
 * horns and exposed servos (10 to 35 %, <i>judgement</i>).
 */
public final class ParasiteDrag {
    private static final double INTERFERENCE = 1.05;
    private static final double ROUGH_BUILD = 1.20;

    private final double middle;
    private final double slope;
    private final double curvature;
    private final double logMiddle;
    private final double inverseHalfRange;

    private ParasiteDrag(double slow, double middle, double fast, double logSlow, double logFast) {
        this.middle = middle;
        this.slope = 0.5 * (fast - slow);
        this.curvature = 0.5 * (fast + slow) - middle;
        this.logMiddle = 0.5 * (logSlow + logFast);
        this.inverseHalfRange = 2 / (logFast - logSlow);
    }

    /**
     * From the parts.
     *
     * @param dragAreaAtSpeed sum of the parts' own drag areas, m², at a speed in m/s
     * @param slowest m/s
     * @param fastest m/s
     */
    public static ParasiteDrag of(DoubleUnaryOperator dragAreaAtSpeed, double slowest, double fastest) {
        positive("slowest speed", slowest, "m/s");
        positive("speed range", fastest - slowest, "m/s");
        double raised = INTERFERENCE * ROUGH_BUILD;
        return new ParasiteDrag(
                raised * dragAreaAtSpeed.applyAsDouble(slowest),
                raised * dragAreaAtSpeed.applyAsDouble(Math.sqrt(slowest * fastest)),
                raised * dragAreaAtSpeed.applyAsDouble(fastest),
                StrictMath.log(slowest),
                StrictMath.log(fastest));
    }

    /**
     * Drag area, m².
     *
     * @param logSpeed natural logarithm of the speed in m/s
     */
    public double dragArea(double logSpeed) {
        double position = Math.min(1, Math.max(-1, (logSpeed - logMiddle) * inverseHalfRange));
        return middle + position * (slope + position * curvature);
    }
}
