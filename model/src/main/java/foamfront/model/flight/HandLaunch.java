package foamfront.model.flight;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

import foamfront.model.mission.Launch;

/**
 * The flight after a level throw, integrated: released at 1.8 m in still air, no thrust for half a second where the propeller
 * is behind the hand, lift held to what carries the weight and at most C_L,max.
 *
 * <p>Equations of motion of a point mass in the vertical plane: V̇ = (T − D) / m − g sin γ, V γ̇ = L / m − g cos γ (Etkin,
 * Dynamics of Flight, from memory), by Heun's method in fixed steps. The pilot pulls for a path no lower than level: lift is
 * what turns the path back to level within a second, inside 0 to C_L,max. Drag is {@link DragParabola}, through
 * the polar at 1.2 and 2 stall speeds.
 */
final class HandLaunch {
    private static final double HEIGHT = 1.8; // m
    private static final double PUSHER_DELAY = 0.5; // s
    private static final double STEP = 0.05; // s
    private static final double DURATION = 4; // s

    private HandLaunch() {}

    /**
     * The least height on the way to a steady climb, a glider's to a steady glide, m; below zero, at least -1.8, for a model that
     * meets the ground hard.
     */
    static double lowest(
            TrimmedFlight flight,
            ThrustCurve thrust,
            DragParabola polar,
            Launch launch,
            double throwFactor,
            boolean pusher) {
        return lowest(flight, thrust, polar, launch, throwFactor, pusher, STEP);
    }

    /** The same in steps of {@code step} seconds. */
    static double lowest(
            TrimmedFlight flight,
            ThrustCurve thrust,
            DragParabola polar,
            Launch launch,
            double throwFactor,
            boolean pusher,
            double step) {
        double mass = flight.weight() / GRAVITY;
        double v = throwFactor * launch.speed(mass);
        double gamma = 0;
        double h = HEIGHT;
        double least = h;
        for (int i = 0; i * step < DURATION; i++) {
            double t = i * step;
            double pull = pusher && t < PUSHER_DELAY ? 0 : thrust.at(v);
            double lift = commanded(flight, v, gamma);
            double dv = acceleration(flight, polar, v, gamma, lift, pull);
            double dg = turn(flight, v, gamma, lift);
            double v1 = Math.max(0.5, v + step * dv);
            double g1 = gamma + step * dg;
            double lift1 = commanded(flight, v1, g1);
            double pull1 = pusher && t + step < PUSHER_DELAY ? 0 : thrust.at(v1);
            double dv1 = acceleration(flight, polar, v1, g1, lift1, pull1);
            double dg1 = turn(flight, v1, g1, lift1);
            double dh = 0.5 * step * (v * StrictMath.sin(gamma) + v1 * StrictMath.sin(g1));
            v = Math.max(0.5, v + 0.5 * step * (dv + dv1));
            gamma += 0.5 * step * (dg + dg1);
            h += dh;
            least = Math.min(least, h);
            // Level or climbing with lift and speed in hand, nothing lower will come; of a glider nothing but its
            // glide.
            double steady = thrust.pulls() ? 0 : glide(flight, polar, v);
            if ((gamma >= steady && v > 1.1 * flight.stallSpeed() && t > PUSHER_DELAY) || h < -HEIGHT) {
                break;
            }
        }
        return Math.max(-HEIGHT, least);
    }

    /** Path of a steady glide at a speed, rad: down by drag over weight. */
    private static double glide(TrimmedFlight flight, DragParabola polar, double v) {
        return acceleration(flight, polar, v, 0, commanded(flight, v, 0), 0) / GRAVITY;
    }

    /** C_L for a level path, more while the path points down. */
    private static double commanded(TrimmedFlight flight, double v, double gamma) {
        double level = flight.liftCoefficient(v) * (1 - gamma * v / GRAVITY);
        return Math.max(0, Math.min(flight.maximumLift(), level));
    }

    private static double acceleration(
            TrimmedFlight flight, DragParabola polar, double v, double gamma, double lift, double pull) {
        double q = 0.5 * flight.density() * v * v * flight.referenceArea();
        return GRAVITY * ((pull - q * polar.coefficient(lift)) / flight.weight() - StrictMath.sin(gamma));
    }

    private static double turn(TrimmedFlight flight, double v, double gamma, double lift) {
        double q = 0.5 * flight.density() * v * v * flight.referenceArea();
        return GRAVITY / v * (q * lift / flight.weight() - StrictMath.cos(gamma));
    }
}
