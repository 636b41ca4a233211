package foamfront.model.appraisal;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.PlaningForm;
import foamfront.model.airframe.Shaft;
import foamfront.model.airframe.Stance;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.flight.TrimmedFlight;
import foamfront.model.flight.WaterRun;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Measure;
import foamfront.model.structure.WaterLanding;
import foamfront.model.water.Floating;
import foamfront.model.water.Water;

/** Floating, leaving and meeting the water; nothing of it is computed for an aeroplane of the land. */
final class Waterside {
    private static final Measure[] AFLOAT = {
        Measure.DRAUGHT,
        Measure.WATER_TRIM,
        Measure.WATER_HEEL,
        Measure.WATER_CLEARANCE,
        Measure.STEP_ANGLE,
        Measure.SPRAY_LOAD,
        Measure.HUMP_THRUST,
        Measure.HUMP_TRIM,
        Measure.HUMP_LIFT,
        Measure.STEP_TRIM,
        Measure.STEP_ELEVATOR,
        Measure.WATER_RUN,
        Measure.WATER_RUN_WIND,
        Measure.HULL_STRENGTH
    };

    /** Share of weight times span that heels a model at rest, wind and ripples together (judgement). */
    private static final double HEELING = 0.03;

    private Waterside() {}

    /** Says that none of it applies; on a site of water that is a fault of its own. */
    private static void ashore(Workbench w) {
        for (Measure measure : AFLOAT) {
            w.rule(measure);
        }
        if (w.mission.site().ground() == Ground.WATER) {
            w.set(Measure.BUOYANCY_RESERVE, -1);
        } else {
            w.rule(Measure.BUOYANCY_RESERVE);
        }
    }

    /** At rest, once the balance is known. */
    static void rest(Workbench w) {
        Flotation flotation = w.airframe.stations().flotation();
        if (flotation == null) {
            ashore(w);
            return;
        }
        PlaningForm form = flotation.form();
        double mass = w.balance.mass();
        double behind = flotation.stepBehind(w.balance.x());
        double above = w.balance.z() - flotation.keel();
        Floating rest = Floating.of(flotation, mass, behind, above);
        w.set(Measure.BUOYANCY_RESERVE, rest.reserve(mass));
        w.set(Measure.DRAUGHT, rest.draught());
        w.set(Measure.WATER_TRIM, rest.trim());
        w.set(Measure.WATER_HEEL, rest.heeling() / (HEELING * mass * GRAVITY * w.airframe.span()));
        w.set(Measure.STEP_ANGLE, StrictMath.atan2(behind, above));
        clearance(w, flotation, rest, behind);
        loadsBelow(w, flotation, rest, behind);
        foam(w, flotation);
        w.set(Measure.SPRAY_LOAD, Water.sprayLoad(mass / flotation.count(), form.beam(), form.step()));
    }

    private static void clearance(Workbench w, Flotation flotation, Floating rest, double behind) {
        Shaft shaft = w.airframe.stations().shaft();
        if (shaft.radius() == 0) {
            w.rule(Measure.WATER_CLEARANCE);
            return;
        }
        double aft = shaft.x() - w.balance.x() - behind;
        double surface = flotation.keel() + rest.surface(aft);
        w.set(Measure.WATER_CLEARANCE, shaft.z() - shaft.radius() - surface);
    }

    /** What hangs under the belly keeps clear of still water at rest as of ground; a hull's belly is under it. */
    private static void loadsBelow(Workbench w, Flotation flotation, Floating rest, double behind) {
        double belly = -0.5 * w.airframe.body().height();
        for (int i = 0; i < w.design.loads().size(); i++) {
            Load load = w.design.loads().get(i);
            if (load.place() == Place.BELOW) {
                double end = 0.5 * load.length();
                double surface = Math.max(rest.surface(-behind - end), rest.surface(-behind + end));
                double gap = belly - flotation.keel() - surface - Stance.GROUND_CLEARANCE;
                w.set(Measure.OUTSIDE_ROOM, Math.min(w.get(Measure.OUTSIDE_ROOM), Math.max(0, gap) - load.height()));
            }
        }
    }

    /** Hull and floats are foam too, once the balance point says where floats are. */
    private static void foam(Workbench w, Flotation flotation) {
        if (w.airframe.stations().shaft().radius() > 0) {
            double gap = PropellerClearance.of(w.airframe, flotation, w.balance.x());
            w.set(Measure.PROPELLER_CLEARANCE, Math.min(w.get(Measure.PROPELLER_CLEARANCE), gap));
        }
    }

    /** Through the hump and off, once thrust and drag are known. */
    static void run(Workbench w) {
        Flotation flotation = w.airframe.stations().flotation();
        if (flotation == null) {
            return;
        }
        StepTrim.Found step = StepTrim.of(w, flotation);
        w.set(Measure.STEP_TRIM, step.trim());
        w.set(Measure.STEP_ELEVATOR, step.elevator());
        WaterRun still = WaterRun.of(w.flight, w.performance, flotation, step.trim(), 0);
        double wind = w.mission.site().wind();
        WaterRun breeze = wind == 0 ? still : WaterRun.of(w.flight, w.performance, flotation, step.trim(), wind);
        w.set(Measure.HUMP_THRUST, still.thrust());
        w.set(Measure.WATER_RUN, still.distance());
        w.set(Measure.WATER_RUN_WIND, breeze.distance());
        double trim = WaterRun.humpTrim(flotation.form());
        w.set(Measure.HUMP_TRIM, trim);
        w.set(Measure.HUMP_LIFT, lift(w.flight, trim) / w.flight.maximumLift());
    }

    /** Trimmed lift coefficient of the whole aeroplane at a nose-up attitude. */
    static double lift(TrimmedFlight flight, double attitude) {
        double flat = flight.incidence(0);
        return (attitude - flat) / (flight.incidence(1) - flat);
    }

    /** Alighting, once the stall speed is known. */
    static void strength(Workbench w) {
        Flotation flotation = w.airframe.stations().flotation();
        if (flotation == null) {
            return;
        }
        WaterLanding landing =
                WaterLanding.of(w.airframe, flotation, w.balance.mass(), w.flight.stallSpeed(), w.factors);
        w.set(Measure.HULL_STRENGTH, landing.reserve());
    }
}
