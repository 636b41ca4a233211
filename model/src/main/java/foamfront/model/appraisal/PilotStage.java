package foamfront.model.appraisal;

import foamfront.model.aero.LeadingEdgeVortex;
import foamfront.model.design.Load;
import foamfront.model.flight.Fall;
import foamfront.model.flight.Handling;
import foamfront.model.flight.LevelTurn;
import foamfront.model.flight.ReleaseTrim;
import foamfront.model.mission.Measure;

/** How it turns and rolls, what letting its load go does, and who can fly it. */
final class PilotStage {
    private PilotStage() {}

    static void run(Workbench w) {
        w.set(
                Measure.TURN_RADIUS,
                w.design.power().motors() == 0
                        ? LevelTurn.steepest(w.flight)
                        : LevelTurn.radius(w.flight, w.performance.fullThrottle()));
        w.set(Measure.ROLL_RATE, rollRate(w));
        release(w);
        w.set(Measure.PILOT_LEVEL, PilotLevel.of(w));
    }

    /** p = 2 V (pb/2V) / b at cruise, by what it has to roll with. */
    private static double rollRate(Workbench w) {
        double helix = w.design.controls().ailerons()
                ? -w.rollPower / w.lifting.lateral().rollDamping()
                : w.get(Measure.RUDDER_ROLL);
        return 2 * w.get(Measure.CRUISE_SPEED) * helix / w.airframe.span();
    }

    private static void release(Workbench w) {
        double time = Double.NaN;
        double speed = Double.NaN;
        double canopy = Double.NaN;
        double height = w.mission.site().releaseHeight();
        for (int i = 0; i < w.design.loads().size(); i++) {
            Load load = w.design.loads().get(i);
            if (load.released()) {
                double terminal = load.descent() > 0 ? load.descent() : boxSpeed(w, load);
                time = most(time, Fall.time(terminal, height));
                speed = most(speed, load.descent() > 0 ? terminal : Fall.speed(terminal, height));
                if (load.descent() > 0) {
                    canopy = most(
                            canopy,
                            Fall.canopyDiameter(
                                    load.mass(), load.descent(), w.air().density()));
                }
            }
        }
        measure(w, Measure.DROP_DRIFT, time * w.mission.site().wind());
        measure(w, Measure.DROP_SPEED, speed);
        measure(w, Measure.CANOPY, canopy);
        measure(w, Measure.RELEASE_TRIM, Double.isNaN(time) ? Double.NaN : trim(w));
    }

    private static double boxSpeed(Workbench w, Load load) {
        return Fall.boxSpeed(
                load.mass(), load.length(), load.width(), load.height(), w.air().density());
    }

    private static double most(double sofar, double value) {
        return Double.isNaN(sofar) ? value : Math.max(sofar, value);
    }

    private static void measure(Workbench w, Measure measure, double value) {
        if (Double.isNaN(value)) {
            w.rule(measure);
        } else {
            w.set(measure, value);
        }
    }

    private static double trim(Workbench w) {
        double full = w.flight.liftCoefficient(w.get(Measure.CRUISE_SPEED));
        double light = full * w.masses.massAfter(1) / w.masses.massAfter(0);
        double moved = (w.balance.marginFull() - w.balance.marginReleased()) * w.airframe.chord();
        double shift = ReleaseTrim.elevatorShift(
                w.lifting,
                LeadingEdgeVortex.of(w.airframe),
                w.bodyMoment,
                w.balance.x(),
                full,
                w.balance.x() + moved,
                light);
        return Math.abs(shift) / Handling.FULL_TRAVEL;
    }
}
