package foamfront.model.appraisal;

import foamfront.model.aero.PlainFlap;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.PlaningForm;
import foamfront.model.flight.Handling;
import foamfront.model.flight.TakeOffRoll;
import foamfront.model.flight.WaterRun;
import foamfront.model.water.Planing;

/**
 * How a hull or floats run on the step at 0.7 of lift-off speed and full throttle. No pilot holds a bottom at one trim: it settles
 * where the water's moment, which moves forward as the bow comes down and more of the bottom is wetted, meets those of air, thrust
 * line and elevator (D. Savitsky, Marine Technology 1(1), 1964, balance of pitching moments). Of the trims that some elevator
 * holds with {@value #HELD} of its travel the pilot is taken to choose that nearest {@link WaterRun#runningTrim}; where there is
 * none, the trim that asks for least elevator counts, and the limit on the elevator judges it.
 *
 * <p>The air's moment is C_mδ (δ − δ_trim) at the attitude (derived). A slipstream on the tail is left out, which is on the safe side
 * for what stands in it.
 */
final class StepTrim {
    /** Speed asked about, of that at lift-off. */
    private static final double ON_STEP = 0.7;

    /** Share of the travel within which a trim counts as held (judgement). */
    static final double HELD = 0.75;

    /** Nearer level the bow digs in (judgement), and Savitsky's fit ends at 2 degrees. */
    static final double LEAST = 2.5 * Math.PI / 180;

    private static final double STEP = 0.5 * Math.PI / 180;
    private static final int HALVINGS = 30;
    private static final double MOST = 99;

    /** A nose-up trim, rad, and the share of full elevator that holds it. */
    record Found(double trim, double elevator) {}

    private final Workbench w;
    private final Flotation flotation;
    private final double speed;
    private final double pressure;
    private final double thrust;
    private final double authority;

    private StepTrim(Workbench w, Flotation flotation) {
        this.w = w;
        this.flotation = flotation;
        speed = ON_STEP * TakeOffRoll.LIFT_OFF * w.flight.stallSpeed();
        pressure = 0.5 * w.flight.density() * speed * speed * w.airframe.area();
        double line = w.airframe.stations().shaft().z() - w.balance.z();
        thrust = w.performance.fullThrottle().thrust(speed) * line;
        authority = w.lifting.elevatorMomentSlope(w.balance.x()) * pressure * w.lifting.referenceChord();
    }

    static Found of(Workbench w, Flotation flotation) {
        StepTrim balance = new StepTrim(w, flotation);
        double wanted = WaterRun.runningTrim(flotation.form());
        double highest = WaterRun.humpTrim(flotation.form());
        double elevator = balance.elevator(wanted);
        if (elevator <= HELD) {
            return new Found(wanted, elevator);
        }
        double trim = wanted;
        for (int i = 1; wanted - i * STEP >= LEAST || wanted + i * STEP <= highest; i++) {
            for (int side = -1; side <= 1; side += 2) {
                double tried = wanted + side * i * STEP;
                if (tried >= LEAST && tried <= highest) {
                    double asked = balance.elevator(tried);
                    if (asked <= HELD) {
                        return balance.edge(tried - side * STEP, tried);
                    }
                    if (asked < elevator) {
                        elevator = asked;
                        trim = tried;
                    }
                }
            }
        }
        return new Found(trim, elevator);
    }

    /** Where the elevator begins to hold it, between a trim that it does not hold and one that it does. */
    private Found edge(double lost, double held) {
        double out = lost;
        double in = held;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (out + in);
            if (elevator(middle) <= HELD) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return new Found(in, elevator(in));
    }

    /** What holds a trim, of full travel. */
    private double elevator(double trim) {
        PlaningForm form = flotation.form();
        double free = Waterside.lift(w.flight, trim);
        double lift = Math.max(0, Math.min(w.flight.maximumLift(), free));
        double load = Math.max(0.01 * w.flight.weight(), w.flight.weight() - pressure * lift);
        int count = flotation.count();
        Planing planing = Planing.of(form.beam(), form.deadrise(), load / count, trim, speed, Planing.Fluid.FRESH);
        double ahead = flotation.stepBehind(w.balance.x());
        double above = w.balance.z() - flotation.keel();
        double water = -count * planing.moment(ahead, above, form.beam(), form.deadrise(), 0, 0);
        double needed = w.flight.elevator(free) - (water - thrust) / authority;
        // The lifting system's elevator does as much per radian at any deflection; a real one less and less.
        double full = PlainFlap.worth(Handling.FULL_TRAVEL) / PlainFlap.SMALL_ANGLE_EFFICIENCY;
        return Math.min(MOST, Math.abs(needed) / full);
    }
}
