package foamfront.model.flight;

/**
 * The aeroplane on its wheels with its flaps as set. Induced drag is less near the ground ({@link foamfront.model.aero.GroundEffect}).
 *
 * @param stallSpeed out of ground effect, as flown, m/s
 * @param lift coefficient in the roll
 * @param drag coefficient in the roll, motor stopped and without its propeller
 */
public record GroundSetting(double stallSpeed, double lift, double drag) {
    /** Lift coefficient in the roll over the maximum, wing near level (judgement). */
    private static final double GROUND_LIFT = 0.4;

    /**
     * Flaps up.
     *
     * @param inducedShare of induced drag that the ground leaves
     */
    public static GroundSetting of(TrimmedFlight flight, Performance performance, double inducedShare) {
        double lift = GROUND_LIFT * flight.maximumLift();
        double drag = performance.parabola().coefficient(lift) - (1 - inducedShare) * flight.inducedDrag(lift);
        return new GroundSetting(flight.stallSpeed(), lift, drag);
    }

    /** The same with flaps let down: they fly more slowly and drag more. */
    public static GroundSetting of(HighLift flaps, double inducedShare) {
        double lift = GROUND_LIFT * flaps.maximumLift();
        double speed = TakeOffRoll.LIFT_OFF * flaps.stallSpeed();
        double drag = flaps.dragCoefficient(lift, speed) - (1 - inducedShare) * flaps.inducedDrag(lift);
        return new GroundSetting(flaps.stallSpeed(), lift, drag);
    }
}
