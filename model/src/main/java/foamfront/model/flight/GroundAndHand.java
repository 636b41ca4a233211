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

    /** Ground roll to 1.2 stall speeds, m; {@value #NEVER} where it never gets there. */
    public static double takeOff(TrimmedFlight flight, Performance performance, double friction) {
        double roll = TakeOffRoll.of(
                flight,
                performance.fullThrottle().thrustCurve(),
                performance.parabola(),
                GROUND_LIFT * flight.maximumLift(),
                friction);
        return Math.min(NEVER, roll);
    }

    /** Longer than any runway that can be stated, m. */
    public static final double NEVER = 10_000;
}
