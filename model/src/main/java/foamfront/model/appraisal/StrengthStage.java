package foamfront.model.appraisal;

import foamfront.model.aero.Winglets;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Power;
import foamfront.model.flight.Performance;
import foamfront.model.mass.MassGroup;
import foamfront.model.mishap.Mishap;
import foamfront.model.mission.Measure;
import foamfront.model.propulsion.Cell;
import foamfront.model.structure.FlightLoads;
import foamfront.model.structure.NoseJoint;
import foamfront.model.structure.SpanLoad;
import foamfront.model.structure.Structure;
import foamfront.model.structure.StructureMargins;
import java.util.List;

/** What the structure has in hand at the limit load. */
final class StrengthStage {
    /** Top speed with a full battery over that at 30 % charge: speed goes with voltage at like advance ratio (derived). */
    private static final double FULL_CHARGE_SPEED = Cell.openCircuitVoltage(1) / Cell.openCircuitVoltage(0.3);

    /** Surfaces in each other's way may lose all lift slope; other limits refuse them, loads must stay finite. */
    private static final double LEAST_SLOPE = 0.5;

    private StrengthStage() {}

    static void run(Workbench w) {
        double stall = w.flight.stallSpeed();
        double cruise = Math.max(w.get(Measure.CRUISE_SPEED), Performance.CRUISE * stall);
        double charged = w.design.power().motors() > 0 ? FULL_CHARGE_SPEED : 1;
        double top = Math.max(charged * w.topSpeed, cruise);
        boolean thrown = w.design.thrown();
        FlightLoads loads = new FlightLoads(
                w.balance.mass(),
                w.masses.mass(MassGroup.WING),
                w.masses.mass(MassGroup.TAIL),
                w.air().density(),
                stall,
                cruise,
                top,
                w.mission.site().gust(),
                Math.max(LEAST_SLOPE, w.lifting.liftSlope()),
                thrown ? w.mission.site().launch().push(w.balance.mass()) : 0,
                tailLift(w));
        w.loads = loads;
        StructureMargins margins = Structure.margins(
                w.airframe, spanLoads(w), loads, w.mission.workshop().glueLinearMass(), w.factors);
        w.structure = margins;
        w.set(Measure.LIMIT_LOAD, margins.limitLoad());
        w.set(Measure.WING_BENDING, Math.min(margins.wingBending(), margins.joint()));
        w.set(Measure.SPAR_SHEAR, margins.sparShear());
        w.set(Measure.GLUE_STRENGTH, margins.webGlue());
        w.set(Measure.TIP_DEFLECTION, margins.tipDeflection());
        w.set(Measure.DIVERGENCE_SPEED, Math.min(margins.divergenceSpeed(), margins.flutterSpeed()) / top);
        w.set(Measure.FLUTTER_SPEED, margins.flutterSpeed() / top);
        w.set(Measure.BOOM_STIFFNESS, margins.boomDeflection());
        w.set(Measure.BOOM_STRENGTH, margins.boomBending());
        w.set(Measure.TAIL_STRENGTH, margins.tailBending());
        w.set(Measure.SERVO_TORQUE, margins.servoTorque());
        Waterside.strength(w);
        noseJoint(w);
        mishap(w, stall);
    }

    private static void mishap(Workbench w, double stall) {
        Mishap mishap = Mishap.of(w.airframe, w.masses, w.balance, stall, w.mission.workshop(), w.factors);
        w.mishap = mishap;
        w.set(Measure.REPAIR_COST, mishap.cost());
        w.set(Measure.REPAIR_TIME, mishap.time());
        if (Double.isNaN(mishap.room())) {
            w.rule(Measure.CRUSH_ROOM);
        } else {
            w.set(Measure.CRUSH_ROOM, mishap.room());
        }
    }

    private static void noseJoint(Workbench w) {
        double joint = w.design.body().nosePiece();
        if (joint == 0) {
            w.rule(Measure.NOSE_JOINT);
            return;
        }
        double thrust = w.design.power() instanceof Power.NoseTractor
                ? w.performance.fullThrottle().staticThrust()
                : 0;
        w.set(
                Measure.NOSE_JOINT,
                NoseJoint.reserve(
                        w.masses,
                        w.balance.batteryX(),
                        w.balance.aim(),
                        joint,
                        w.design.body().height(),
                        thrust));
    }

    /** The stabiliser's share of the aeroplane's lift, trimmed at maximum lift; 0 without one. */
    private static double tailLift(Workbench w) {
        double lift = w.flight.maximumLift();
        double alpha = w.flight.loadIncidence(lift);
        double elevator = w.flight.elevator(lift);
        double sum = 0;
        for (int s = 0; s < w.lifting.surfaceCount(); s++) {
            if (w.airframe.surfaces().get(w.lifting.listed(s)).role() == Surface.Role.TAIL) {
                for (int i = w.lifting.firstStrip(s); i < w.lifting.endStrip(s); i++) {
                    sum += w.lifting.stripLiftCoefficient(i, alpha, elevator, 0) * w.lifting.stripArea(i);
                }
            }
        }
        return 2 * sum / (lift * w.lifting.referenceArea());
    }

    /** Each wing's own lift distribution at maximum lift, one half. */
    private static List<SpanLoad> spanLoads(Workbench w) {
        int wing = 0;
        for (int s = 0; s < w.lifting.surfaceCount(); s++) {
            if (w.airframe.surfaces().get(w.lifting.listed(s)).isWing()) {
                lay(w.spanLoads.get(wing++), w, s);
            }
        }
        return w.spanLoads;
    }

    private static void lay(SpanLoad load, Workbench w, int surface) {
        load.clear();
        double lift = w.flight.maximumLift();
        double alpha = w.flight.loadIncidence(lift);
        double elevator = w.flight.elevator(lift);
        double outwards = Winglets.rootBending(Winglets.heightOverSpan(w.airframe.surfaces()));
        double total = lift * w.lifting.referenceArea() / outwards;
        for (int i = w.lifting.firstStrip(surface); i < w.lifting.endStrip(surface); i++) {
            double share = w.lifting.stripLiftCoefficient(i, alpha, elevator, 0) * w.lifting.stripArea(i) / total;
            load.add(w.lifting.stripY(i), w.lifting.stripBreadth(i), share);
        }
    }
}
