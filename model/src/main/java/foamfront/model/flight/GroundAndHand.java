package foamfront.model.flight;

import foamfront.model.mission.Launch;

/** How the aeroplane gets into the air, by throw or by roll, with the thrust it has at 30 % charge. */
public final class GroundAndHand {
    /** Lift coefficient in the ground roll over the maximum, wing near level (judgement). */
    private static final double GROUND_LIFT = 0.4;

    private GroundAndHand() {}

    /**
     * The least height after a level throw from 1.8 m, m.
     *
     * @param throwFactor on the throwing speed
     * @param pusher whether the motor must stay off until the propeller is clear of the hand
     */
    public static double lowestAfterThrow(
            TrimmedFlight flight, Performance performance, Launch launch, double throwFactor, boolean pusher) {
        return HandLaunch.lowest(
                flight, performance.fullThrottle().thrustCurve(), performance.parabola(), launch, throwFactor, pusher);
    }

    /**
     * Ground roll to 1.2 stall speeds, m; {@value #NEVER} where it never gets there. Induced drag is less near the ground
     * ({@link foamfront.model.aero.GroundEffect}).
     *
     * @param inducedShare of induced drag that the ground leaves
     */
    public static double takeOff(TrimmedFlight flight, Performance performance, double inducedShare, double friction) {
        double lift = GROUND_LIFT * flight.maximumLift();
        double drag = performance.parabola().coefficient(lift) - (1 - inducedShare) * flight.inducedDrag(lift);
        return takeOff(flight, performance, drag, lift, flight.stallSpeed(), friction);
    }

    /** The same with flaps let down for it: they lift off more slowly and drag more on the way. */
    public static double takeOff(
            TrimmedFlight flight, HighLift flaps, Performance performance, double inducedShare, double friction) {
        double lift = GROUND_LIFT * flaps.maximumLift();
        double speed = TakeOffRoll.LIFT_OFF * flaps.stallSpeed();
        double drag = flaps.dragCoefficient(lift, speed) - (1 - inducedShare) * flaps.inducedDrag(lift);
        return takeOff(flight, performance, drag, lift, flaps.stallSpeed(), friction);
    }

    private static double takeOff(
            TrimmedFlight flight,
            Performance performance,
            double drag,
            double lift,
            double stallSpeed,
            double friction) {
        return Math.min(
                NEVER,
                TakeOffRoll.of(flight, performance.fullThrottle().thrustCurve(), drag, lift, stallSpeed, friction));
    }

    /** Longer than any runway that can be stated, m. */
    public static final double NEVER = 10_000;
}
