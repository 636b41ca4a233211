package foamfront.model.flight;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.PlaningForm;
import foamfront.model.units.SmoothStep;
import foamfront.model.water.Planing;

/**
 * The run on still water from rest to 1.2 stall speeds of airspeed, by integration of ds/dV = m V / (T − R − D) with the
 * battery at 30 %.
 *
 * <p>The water carries what the wing does not, W − L at the trim of the moment: nose up at the sternpost angle through the
 * hump, as pulled elevator and water under the bow have it, then at the trim on the step that it is given: {@value #RUNNING_DEGREES}
 * degrees are aimed at (judgement; about the trim of least drag of Savitsky's bottoms). Resistance: {@link Planing} in its range. Below the speed at which that
 * begins a quarter of the load (0.2 to 0.3, common practice, <i>from memory</i>) that grows with V²; from there to C_V =
 * {@value #PLANES} (humps of floats lie at 2 to 3, <i>from memory</i>) a smooth step leads from the one to the other, so that the
 * figure at the hump is the rule's and not the regression's. Ground effect is left out, which is on the safe side.
 *
 * @param thrust least thrust over all drag on the way
 * @param distance m; {@link GroundAndHand#NEVER} where thrust gives out
 * @param wetted largest λ asked of the regression above its own range's beginning
 */
public record WaterRun(double thrust, double distance, double wetted) {
    /** Resistance at the hump over the load on the water. */
    public static final double HUMP = 0.25;

    static final double RUNNING_DEGREES = 6;
    static final double PLANES = 2.5;

    private static final double RUNNING = RUNNING_DEGREES * Math.PI / 180;
    private static final int STEPS = 20;
    private static final double MOST = 99;

    /** Slow enough to count as stopped, m/s: resistance that falls with V² alone never stops anything. */
    private static final double WALK = 1;

    /**
     * Runs an aeroplane.
     *
     * @param running trim on the step, rad
     * @param wind from ahead, m/s
     */
    public static WaterRun of(
            TrimmedFlight flight, Performance performance, Flotation flotation, double running, double wind) {
        return of(flight, performance, flotation, running, wind, STEPS);
    }

    static WaterRun of(
            TrimmedFlight flight,
            Performance performance,
            Flotation flotation,
            double running,
            double wind,
            int steps) {
        ThrustCurve thrust = performance.fullThrottle().thrustCurve();
        DragParabola polar = performance.parabola();
        Resistance water = new Resistance(flotation, flight.weight(), running);
        double area = 0.5 * flight.density() * flight.referenceArea();
        double flat = flight.incidence(0);
        double slope = flight.incidence(1) - flat;
        double end = TakeOffRoll.LIFT_OFF * flight.stallSpeed();
        double calm = Math.min(wind, 0.9 * end);
        double least = MOST;
        double sum = 0;
        boolean stuck = false;
        for (int i = 0; i <= steps; i++) {
            double air = calm + (end - calm) * i / steps;
            double v = air - calm;
            double lift = Math.max(0, Math.min(flight.maximumLift(), (water.trim(v) - flat) / slope));
            double load = Math.max(0, flight.weight() - area * air * air * lift);
            double drag = water.at(load, v) + area * air * air * polar.coefficient(lift);
            double pull = thrust.at(air);
            least = drag * MOST > pull ? Math.min(least, pull / drag) : least;
            stuck |= pull <= drag;
            double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
            sum += stuck ? 0 : weight * v / (pull - drag);
        }
        double distance = flight.weight() / GRAVITY * sum * (end - calm) / steps / 3;
        return new WaterRun(
                least, stuck ? GroundAndHand.NEVER : Math.min(GroundAndHand.NEVER, distance), water.longest);
    }

    /**
     * From touch-down on water to walking pace, motor off, m: the same resistance stops it that the run must overcome, and the wing
     * lifts at the trim of the moment, flaps' lift left out.
     *
     * @param idle drag area of the propeller that turns idly, m²
     * @param stall with flaps as for landing, m/s
     * @param wind from ahead, m/s
     */
    public static double runOut(
            TrimmedFlight flight,
            Performance performance,
            Flotation flotation,
            double idle,
            double stall,
            double wind) {
        DragParabola polar = performance.parabola();
        Resistance water = new Resistance(flotation, flight.weight(), runningTrim(flotation.form()));
        double pressure = 0.5 * flight.density();
        double area = pressure * flight.referenceArea();
        double flat = flight.incidence(0);
        double slope = flight.incidence(1) - flat;
        double fastest = GroundAndHand.TOUCH_DOWN * stall - wind;
        double step = (fastest - WALK) / STEPS;
        double sum = 0;
        for (int i = 0; step > 0 && i <= STEPS; i++) {
            double v = WALK + i * step;
            double air = v + wind;
            double lift = Math.max(0, Math.min(flight.maximumLift(), (water.trim(v) - flat) / slope));
            double load = Math.max(0, flight.weight() - area * air * air * lift);
            double drag = water.at(load, v) + air * air * (area * polar.coefficient(lift) + pressure * idle);
            double weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * v / drag;
        }
        return Math.min(GroundAndHand.NEVER, flight.weight() / GRAVITY * sum * Math.max(0, step) / 3);
    }

    /** Nose-up trim through the hump, rad: until the stern touches, inside the regression's range. */
    public static double humpTrim(PlaningForm form) {
        return Math.max(2.5 * Math.PI / 180, Math.min(14 * Math.PI / 180, form.sternpost()));
    }

    /** Nose-up trim on the step that a pilot would have, rad. */
    public static double runningTrim(PlaningForm form) {
        return Math.min(humpTrim(form), RUNNING);
    }

    /** What the water takes at each speed. */
    static final class Resistance {
        private final PlaningForm form;
        private final int count;
        private final double hump;
        private final double running;
        private final double begins;
        private final double planes;
        private double longest;

        Resistance(Flotation flotation, double weight, double running) {
            form = flotation.form();
            count = flotation.count();
            hump = humpTrim(form);
            this.running = running;
            begins = Planing.slowest(form.beam(), form.deadrise(), weight / count, hump);
            planes = Math.max(1.5 * begins, PLANES * Math.sqrt(GRAVITY * form.beam()));
        }

        double trim(double v) {
            return hump + SmoothStep.at((v - planes) / (0.5 * planes)) * (running - hump);
        }

        /** Of all floats that carry {@code load} (N) at a speed through the water, N. */
        double at(double load, double v) {
            if (load == 0) {
                return 0;
            }
            double rule = HUMP * load;
            if (v <= begins) {
                return rule * (v / begins) * (v / begins);
            }
            Planing planing = Planing.of(form.beam(), form.deadrise(), load / count, trim(v), v, Planing.Fluid.FRESH);
            longest = Math.max(longest, planing.wetted());
            return rule + SmoothStep.at((v - begins) / (planes - begins)) * (count * planing.drag() - rule);
        }
    }
}
