package foamfront.model.flight;

import foamfront.model.propulsion.PowerTrain;

/**
 * Full-throttle thrust against airspeed as the cubic through four solved points, from rest to somewhat past the speed at which
 * the propeller stops pulling. On 40 catalogue trains it lies within 1.25 % of static thrust everywhere between the points, 0.2 % as
 * a root mean square (ThrustCurveLawsTest).
 */
final class ThrustCurve {
    private static final int POINTS = 4;

    /** Advance ratio of no thrust over pitch-diameter ratio: measured propellers 1.0 to 1.5. */
    private static final double NO_THRUST = 1.25;

    private final double[] coefficient = new double[POINTS];
    private double step;

    /** Solves the train at full throttle and a state of charge; {@code pitch} of the propeller in m. */
    void fit(PowerTrain train, double pitch, double stateOfCharge) {
        train.solveFullThrottle(0, stateOfCharge);
        double still = train.thrust();
        double fastest = Math.max(1, NO_THRUST * pitch * train.rotation());
        step = fastest / (POINTS - 1);
        train.solveFullThrottle(step, stateOfCharge);
        double one = train.thrust();
        train.solveFullThrottle(2 * step, stateOfCharge);
        double two = train.thrust();
        train.solveFullThrottle(3 * step, stateOfCharge);
        double three = train.thrust();
        // Newton's forward differences
        coefficient[0] = still;
        coefficient[1] = one - still;
        coefficient[2] = 0.5 * (two - 2 * one + still);
        coefficient[3] = (three - 3 * two + 3 * one - still) / 6;
    }

    /** Thrust at an airspeed in m/s, N. */
    double at(double speed) {
        double last = POINTS - 1;
        double s = Math.min(speed / step, last);
        // Past the last solved point the cubic would run free; the line through the last two points goes on instead.
        double beyond = (speed / step - s) * Math.min(0, cubic(last) - cubic(last - 1));
        return cubic(s) + beyond;
    }

    private double cubic(double s) {
        return coefficient[0] + s * (coefficient[1] + (s - 1) * (coefficient[2] + (s - 2) * coefficient[3]));
    }

    /** The fastest speed the curve was solved at, m/s. */
    double fastest() {
        return (POINTS - 1) * step;
    }
}
