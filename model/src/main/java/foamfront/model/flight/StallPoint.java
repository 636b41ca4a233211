package foamfront.model.flight;

import java.util.function.DoubleUnaryOperator;

/** The lift and speed at which a trimmed aeroplane stalls: the first strip to reach the end of its section. */
final class StallPoint {
    /** Fixed-point steps for the stall speed: maximum lift changes slowly with speed, so each step gains a digit. */
    private static final int STEPS = 6;

    /** A last step of more than this share has not settled: there some strip's lift breaks down within a narrow range of speeds. */
    private static final double SETTLED = 1e-3;

    private static final int HALVINGS = 24;

    private double maximumLift;
    private double speed;
    private double place;
    private double elevator;
    private double tipReserve;

    /**
     * Finds it.
     *
     * @param weight N
     * @param density kg/m³
     * @param reference area of the wings, m²
     * @param vortices what edge vortices make of the maximum lift of attached flow
     */
    void find(
            TrimLine line,
            Strips along,
            double weight,
            double density,
            double reference,
            DoubleUnaryOperator vortices) {
        DoubleUnaryOperator lift = at -> vortices.applyAsDouble(along.liftAtFirstStall(StrictMath.log(at)));
        double loading = 2 * weight / (density * reference);
        speed = settle(lift, loading);
        maximumLift = loading / (speed * speed);
        place = along.stallPlace();
        elevator = line.elevator(maximumLift);
        tipReserve = along.tipReserve(maximumLift, StrictMath.log(speed));
    }

    /**
     * The lowest speed at which the lift suffices. Where steps from speed to lift to speed do not settle, they step over it: then it
     * is halved between the last two, and the faster end is taken, at which the aeroplane does fly.
     *
     * @param lift maximum lift coefficient at a speed in m/s, the greater the faster; asked last at the speed found, or next to it
     * @param loading twice the wing loading over the density, m²/s²
     */
    static double settle(DoubleUnaryOperator lift, double loading) {
        double before = 0;
        double speed = StrictMath.sqrt(loading);
        for (int step = 0; step < STEPS; step++) {
            before = speed;
            speed = Math.sqrt(loading / lift.applyAsDouble(speed));
        }
        if (Math.abs(speed - before) <= SETTLED * before) {
            return speed;
        }
        double slow = Math.min(before, speed);
        double fast = Math.max(before, speed);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (slow + fast);
            if (lift.applyAsDouble(middle) * middle * middle >= loading) {
                fast = middle;
            } else {
                slow = middle;
            }
        }
        double unused = lift.applyAsDouble(fast);
        return fast;
    }

    double maximumLift() {
        return maximumLift;
    }

    /** m/s. */
    double speed() {
        return speed;
    }

    /** Where it begins, fraction of the semispan. */
    double place() {
        return place;
    }

    /** What the wing tips have left of their sections' lift there, share. */
    double tipReserve() {
        return tipReserve;
    }

    /** Trailing edge down positive, rad. */
    double elevator() {
        return elevator;
    }
}
