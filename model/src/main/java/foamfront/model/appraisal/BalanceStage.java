package foamfront.model.appraisal;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

import foamfront.model.aero.BodyMoment;
import foamfront.model.aero.FinYaw;
import foamfront.model.aero.LateralDerivatives;
import foamfront.model.aero.ParasiteBuildUp;
import foamfront.model.aero.PlainFlap;
import foamfront.model.aero.SectionLift;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Controls;
import foamfront.model.design.Tail;
import foamfront.model.flight.Handling;
import foamfront.model.mass.Balance;
import foamfront.model.mass.ClearanceCheck;
import foamfront.model.mission.Measure;
import foamfront.model.section.SectionPolar;
import java.util.List;

/** Lift, balance, stall and handling: the aeroplane in the air with its motor stopped. */
final class BalanceStage {

    /** Lift coefficient at whose speed the sections' lift slopes are taken. */
    private static final double TYPICAL_LIFT = 0.6;

    /** A fin stalls beyond this sideslip, rad (judgement). */
    private static final double MOST_SIDESLIP = 0.35;

    private BalanceStage() {}

    static void run(Workbench w) {
        Airframe airframe = w.airframe;
        solveLift(w);
        w.bodyMoment = BodyMoment.pitchSlope(airframe.body(), w.lifting.referenceArea(), w.lifting.referenceChord());
        // C_mα(x) = C_mα(0) + x C_Lα / c; the neutral point makes it vanish with the body's share added.
        w.neutralPoint =
                -(w.lifting.momentSlope(0) + w.bodyMoment) * w.lifting.referenceChord() / w.lifting.liftSlope();
        w.balance = Balance.of(w.masses, airframe, w.neutralPoint);
        w.set(
                Measure.BAY_LENGTH,
                Math.min(w.get(Measure.BAY_LENGTH), ClearanceCheck.endRoom(airframe, w.balance.aim())));
        staticMargin(w);
        w.set(Measure.BALANCE_POINT, w.balance.x() - w.design.wing().x());
        w.set(Measure.BALANCE_SHIFT, w.balance.missingTravel());
        w.flight.prepare(
                w.lifting,
                airframe.surfaces(),
                w.polars,
                w.balance.x(),
                w.bodyMoment,
                ParasiteBuildUp.of(airframe, w.air()),
                w.air(),
                w.balance.mass() * GRAVITY,
                w.factors);
        w.set(Measure.STALL_SPEED, w.flight.stallSpeed());
        w.set(Measure.MAXIMUM_LIFT, w.flight.maximumLift());
        w.set(Measure.TRIM_TRAVEL, Math.abs(w.flight.elevator(w.flight.maximumLift())) / Handling.FULL_TRAVEL);
        handling(w);
    }

    private static void solveLift(Workbench w) {
        List<Surface> surfaces = w.airframe.surfaces();
        int n = surfaces.size();
        if (w.polars.length < n) {
            w.polars = new SectionPolar[n];
        }
        double board = w.design.board().thickness();
        double speed =
                Math.sqrt(2 * w.masses.mass() * GRAVITY / (w.air().density() * w.airframe.area() * TYPICAL_LIFT));
        w.sections.clear();
        for (int i = 0; i < n; i++) {
            Surface surface = surfaces.get(i);
            double chord = surface.meanAerodynamicChord();
            SectionPolar polar = SectionPolar.of(surface.section(), board, chord);
            double logReynolds = StrictMath.log(speed * chord / w.air().kinematicViscosity());
            w.polars[i] = polar;
            w.sections.add(
                    new SectionLift(polar.zeroLiftAngle(), polar.slopeRatio(logReynolds), polar.momentCoefficient()));
        }
        w.lifting.solve(surfaces, w.sections, PlainFlap.SMALL_ANGLE_EFFICIENCY, PlainFlap.LARGE_ANGLE_EFFICIENCY);
    }

    /** Of the two ends of the margins over the load states the one nearer its limit stands for all. */
    private static void staticMargin(Workbench w) {
        double least = w.balance.leastMargin();
        double most = w.balance.greatestMargin();
        var bound = w.mission.limits().of(Measure.STATIC_MARGIN);
        boolean highCounts = bound != null && bound.margin(most) < bound.margin(least);
        w.set(Measure.STATIC_MARGIN, highCounts ? most : least);
    }

    private static void handling(Workbench w) {
        Airframe airframe = w.airframe;
        Controls controls = w.design.controls();
        double tail = tailStiffness(w);
        double yaw = tail + BodyMoment.yawSlope(airframe.body(), airframe.area(), airframe.span());
        w.set(Measure.YAW_STIFFNESS, yaw);
        w.rudderYaw = rudderYaw(w, tail);
        double cruiseLift = w.flight.liftCoefficient(1.3 * w.flight.stallSpeed());
        w.set(Measure.SPIRAL_PARAMETER, Handling.spiralParameter(airframe, w.balance.x(), cruiseLift));
        if (controls.ailerons()) {
            rollByAilerons(w);
        } else {
            rollByRudder(w, yaw);
        }
    }

    private static double rudderYaw(Workbench w, double tail) {
        Controls controls = w.design.controls();
        boolean canted = w.design.tail() instanceof Tail.VTail;
        double chord = canted ? controls.elevatorChord() : controls.rudderChord();
        double rudder = PlainFlap.effectiveness(chord) * PlainFlap.efficiency(Handling.RUDDER_TRAVEL);
        return canted || controls.rudder() ? rudder * tail * Handling.RUDDER_TRAVEL : 0;
    }

    private static void rollByAilerons(Workbench w) {
        w.rule(Measure.RUDDER_ROLL);
        w.rule(Measure.RUDDER_TURN);
        Controls controls = w.design.controls();
        double effectiveness =
                PlainFlap.effectiveness(controls.aileronChord()) * PlainFlap.efficiency(Handling.FULL_TRAVEL);
        w.rollPower = Handling.FULL_TRAVEL
                * LateralDerivatives.aileronPower(
                        w.airframe.wing().aspectRatio(),
                        taper(w),
                        slopeRatio(w),
                        effectiveness,
                        1 - controls.aileronSpan(),
                        1);
        w.set(Measure.ROLL_RESPONSE, w.rollPower / rollDamping(w));
    }

    /** Full rudder holds a sideslip, and dihedral turns that into roll. */
    private static void rollByRudder(Workbench w, double yaw) {
        w.rule(Measure.ROLL_RESPONSE);
        w.rollPower = 0;
        double sideslip = yaw > 0 ? w.rudderYaw / yaw : 0;
        Surface wing = w.airframe.wing();
        double moment = -LateralDerivatives.dihedralEffect(wing.aspectRatio(), taper(w), slopeRatio(w))
                * Handling.effectiveDihedral(wing)
                * Math.min(MOST_SIDESLIP, sideslip);
        w.set(Measure.RUDDER_ROLL, moment / rollDamping(w));
        w.set(Measure.RUDDER_TURN, w.get(Measure.VERTICAL_TAIL_VOLUME) * w.get(Measure.SPIRAL_PARAMETER));
    }

    /** -C_lp of the wing. */
    private static double rollDamping(Workbench w) {
        return -LateralDerivatives.rollDamping(w.airframe.wing().aspectRatio(), taper(w), slopeRatio(w));
    }

    private static double taper(Workbench w) {
        return w.design.wing().planform().taper();
    }

    private static double slopeRatio(Workbench w) {
        return w.sections.get(0).slopeRatio();
    }

    /** C_n-beta of fins and of a V-tail, per rad. */
    private static double tailStiffness(Workbench w) {
        boolean canted = w.design.tail() instanceof Tail.VTail;
        double x = w.balance.x();
        double area = w.airframe.area();
        double span = w.airframe.span();
        double sum = 0;
        for (int i = 0; i < w.airframe.surfaces().size(); i++) {
            Surface surface = w.airframe.surfaces().get(i);
            double slopeRatio = w.sections.get(i).slopeRatio();
            if (surface.role() == Surface.Role.FIN) {
                sum += FinYaw.stiffness(surface, slopeRatio, FinYaw.ON_BODY, x, area, span);
            } else if (canted && surface.role() == Surface.Role.TAIL) {
                sum += FinYaw.vTailStiffness(surface, slopeRatio, x, area, span);
            }
        }
        return sum;
    }
}
