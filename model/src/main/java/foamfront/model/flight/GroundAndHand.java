package foamfront.model.flight;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

import foamfront.model.mission.Launch;

/**
 * How the aeroplane gets into the air, by throw or by roll, with the thrust it has at 30 % charge, and how its wheels come down
 * again.
 *
 * <p>Over an obstacle at 1.2 stall speeds after lift-off, and at 1.3 before a flare from 1.23 and touch-down at 1.15 stall speeds
 * (D. P. Raymer, Aircraft Design, chapter 17, from memory). Climb and glide are held to what the weight, not W cos γ, asks in drag,
 * which is on the safe side. The landing roll has no brakes and no reverse, and begins with the nose let down at once: wheels, or
 * the belly that slides, and air alone stop it (judgement).
 */
public final class GroundAndHand {
    /** Speeds of a landing over stall speed with flaps as let down for it. */
    public static final double APPROACH = Performance.CRUISE;

    static final double FLARE = 1.23;

    /** See {@link #APPROACH}. */
    public static final double TOUCH_DOWN = 1.15;

    /** Longer than any runway that can be stated, m. */
    public static final double NEVER = 10_000;

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
     * Ground roll to 1.2 stall speeds, m; {@link #NEVER} where it never gets there.
     *
     * @param headwind m/s
     */
    public static double takeOff(
            TrimmedFlight flight, Performance performance, GroundSetting setting, double friction, double headwind) {
        ThrustCurve thrust = performance.fullThrottle().thrustCurve();
        double area = 0.5 * flight.density() * flight.referenceArea();
        double roll = TakeOffRoll.distance(
                flight.weight() / GRAVITY,
                TakeOffRoll.LIFT_OFF * setting.stallSpeed(),
                headwind,
                u -> thrust.at(Math.sqrt(u))
                        - area * u * setting.drag()
                        - friction * Math.max(0, flight.weight() - area * u * setting.lift()));
        return Math.min(NEVER, roll);
    }

    /**
     * From lift-off until an obstacle is cleared, m; {@link #NEVER} where it does not climb.
     *
     * @param drag in level flight at 1.2 stall speeds, N
     * @param height of the obstacle, m
     */
    public static double climbOver(
            TrimmedFlight flight,
            Performance performance,
            double stallSpeed,
            double drag,
            double height,
            double headwind) {
        double speed = TakeOffRoll.LIFT_OFF * stallSpeed;
        double sine = (performance.fullThrottle().thrustCurve().at(speed) - drag) / flight.weight();
        return sine > 0 ? Math.min(NEVER, VerticalPath.distance(height, sine, speed, speed, headwind)) : NEVER;
    }

    /**
     * From over an obstacle to touch-down, m.
     *
     * @param glide lift over drag at 1.3 stall speeds
     * @param height of the obstacle, m
     */
    public static double approach(double stallSpeed, double glide, double height, double headwind) {
        double sine = 1 / Math.sqrt(1 + glide * glide);
        return VerticalPath.distance(height, sine, FLARE * stallSpeed, APPROACH * stallSpeed, headwind);
    }

    /**
     * From touch-down to rest, m.
     *
     * @param idle drag area of the propeller that turns idly, m²
     */
    public static double landingRoll(
            TrimmedFlight flight, GroundSetting setting, double idle, double friction, double headwind) {
        double pressure = 0.5 * flight.density();
        double area = pressure * flight.referenceArea();
        double drag = area * setting.drag() + pressure * idle;
        double roll = TakeOffRoll.distance(
                flight.weight() / GRAVITY,
                TOUCH_DOWN * setting.stallSpeed(),
                headwind,
                u -> drag * u + friction * Math.max(0, flight.weight() - area * u * setting.lift()));
        return Math.min(NEVER, roll);
    }
}
