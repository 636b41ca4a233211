package foamfront.model.flight;

import foamfront.model.propulsion.PowerTrain;
import java.util.Arrays;

/**
 * Full-throttle thrust against airspeed as the sextic through seven solved points, from rest to somewhat past the speed at which
 * the propeller stops pulling. On 40 catalogue trains it lies within 0.3 % of static thrust everywhere between the points, 0.03 %
 * as a root mean square; a quartic through five would miss by 1.3 % where high pitches leave their stall (ThrustCurveLawsTest).
 */
final class ThrustCurve {
    private static final int POINTS = 7;

    /** Advance ratio of no thrust over pitch-diameter ratio: measured propellers 1.0 to 1.5. */
    private static final double NO_THRUST = 1.25;

    private final double[] coefficient = new double[POINTS];
    private double step;
    private double fallBeyond;

    /** Goes on from a train solved at rest, full throttle and this state of charge; {@code pitch} of the propeller in m. */
    void fit(PowerTrain train, double pitch, double stateOfCharge) {
        double still = train.thrust();
        double fastest = Math.max(1, NO_THRUST * pitch * train.rotation());
        step = fastest / (POINTS - 1);
        coefficient[0] = still;
        for (int i = 1; i < POINTS; i++) {
            train.solveFullThrottle(i * step, stateOfCharge);
            coefficient[i] = train.thrust();
        }
        // Newton's divided differences of an even spacing, in place
        for (int order = 1; order < POINTS; order++) {
            for (int i = POINTS - 1; i >= order; i--) {
                coefficient[i] = (coefficient[i] - coefficient[i - 1]) / order;
            }
        }
        fallBeyond = Math.min(0, polynomial(POINTS - 1) - polynomial(POINTS - 2));
    }

    /** Without a motor: no thrust at any speed. */
    void stop() {
        Arrays.fill(coefficient, 0);
        fallBeyond = 0;
        step = 1;
    }

    /** Whether there is any thrust at rest. */
    boolean pulls() {
        return coefficient[0] != 0;
    }

    /** Thrust at an airspeed in m/s, N. */
    double at(double speed) {
        int last = POINTS - 1;
        double s = Math.min(speed / step, last);
        // Past the last solved point the sextic would run free; the line through the last two points goes on instead.
        return polynomial(s) + (speed / step - s) * fallBeyond;
    }

    private double polynomial(double s) {
        double sum = coefficient[POINTS - 1];
        for (int i = POINTS - 2; i >= 0; i--) {
            sum = coefficient[i] + (s - i) * sum;
        }
        return sum;
    }

    /** The fastest speed the curve was solved at, m/s. */
    double fastest() {
        return (POINTS - 1) * step;
    }
}
