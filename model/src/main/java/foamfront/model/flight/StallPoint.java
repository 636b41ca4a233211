package foamfront.model.flight;

import java.util.function.DoubleUnaryOperator;

/** The lift and speed at which a trimmed aeroplane stalls: the first strip to reach the end of its section. */
final class StallPoint {
    /** Fixed-point steps for the stall speed: maximum lift changes slowly with speed, so each step gains a digit. */
    private static final int STEPS = 6;

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
        speed = StrictMath.sqrt(2 * weight / (density * reference));
        for (int step = 0; step < STEPS; step++) {
            maximumLift = vortices.applyAsDouble(along.liftAtFirstStall(StrictMath.log(speed)));
            speed = Math.sqrt(2 * weight / (density * reference * maximumLift));
        }
        place = along.stallPlace();
        elevator = line.elevator(maximumLift);
        tipReserve = along.tipReserve(maximumLift, StrictMath.log(speed));
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
