package foamfront.model.appraisal;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

import foamfront.model.aero.BodyMoment;
import foamfront.model.aero.FinYaw;
import foamfront.model.aero.LateralSystem;
import foamfront.model.aero.LeadingEdgeVortex;
import foamfront.model.aero.ParasiteBuildUp;
import foamfront.model.aero.PlainFlap;
import foamfront.model.aero.SectionLift;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Controls;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Power;
import foamfront.model.design.Tail;
import foamfront.model.flight.FlapSetting;
import foamfront.model.flight.GroundAttitude;
import foamfront.model.flight.Handling;
import foamfront.model.flight.HighLift;
import foamfront.model.flight.Performance;
import foamfront.model.flight.Stability;
import foamfront.model.mass.Balance;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Measure;
import foamfront.model.parts.Wheel;
import foamfront.model.section.SectionPolar;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Lift, balance, stall and handling: the aeroplane in the air with its motor stopped. */
final class BalanceStage {

    /** Lift coefficient at whose speed the sections' lift slopes are taken. */
    private static final double TYPICAL_LIFT = 0.6;

    /** A fin stalls beyond this sideslip, rad (judgement). */
    static final double MOST_SIDESLIP = 0.35;

    private BalanceStage() {}

    static void run(Workbench w) {
        Airframe airframe = w.airframe;
        solveLift(w);
        w.bodyMoment = BodyMoment.pitchSlope(airframe, w.lifting);
        Flotation flotation = airframe.stations().flotation();
        if (flotation != null) {
            w.bodyMoment += BodyMoment.floatPitch(flotation, w.lifting.referenceArea(), w.lifting.referenceChord());
        }
        // C_mα(x) = C_mα(0) + x C_Lα / c; the neutral point makes it vanish with the body's share added.
        w.neutralPoint =
                -(w.lifting.momentSlope(0) + w.bodyMoment) * w.lifting.referenceChord() / w.lifting.liftSlope();
        LeadingEdgeVortex edge = LeadingEdgeVortex.of(airframe);
        if (edge != null) {
            w.neutralPoint = edge.foremostNeutralPoint(w.lifting, w.bodyMoment);
        }
        w.balance = Balance.of(w.masses, airframe, w.neutralPoint);
        w.set(
                Measure.BAY_LENGTH,
                Math.min(w.get(Measure.BAY_LENGTH), airframe.stations().bay().endRoom(w.balance.aim())));
        grip(w);
        Waterside.rest(w);
        staticMargin(w);
        w.set(Measure.BALANCE_POINT, w.balance.x() - w.design.wing().x());
        w.set(Measure.BALANCE_SHIFT, w.balance.missingTravel());
        w.flight.prepare(
                w.lifting,
                airframe.surfaces(),
                w.polars,
                w.balance.x(),
                w.balance.foremostX(airframe.chord()),
                w.bodyMoment,
                onGround(w, edge),
                ParasiteBuildUp.of(airframe, w.air()),
                w.air(),
                w.balance.mass() * GRAVITY,
                w.factors);
        w.set(Measure.STALL_SPEED, w.flight.stallSpeed());
        w.set(Measure.MAXIMUM_LIFT, w.flight.maximumLift());
        w.set(Measure.TRIM_TRAVEL, Math.abs(w.flight.elevatorAtStall()) / Handling.FULL_TRAVEL);
        w.set(Measure.STALL_PLACE, w.flight.stallPlace());
        if (edge == null) {
            w.set(Measure.TIP_RESERVE, w.flight.tipReserve());
        } else {
            w.rule(Measure.TIP_RESERVE);
        }
        flaps(w);
        handling(w);
    }

    /** A delta on wheels flares no further than its tail allows. */
    private static @Nullable LeadingEdgeVortex onGround(Workbench w, @Nullable LeadingEdgeVortex edge) {
        Wheel wheel = w.design.undercarriage().wheel();
        if (edge == null || wheel == null) {
            return edge;
        }
        double attitude = GroundAttitude.most(w.airframe, wheel, w.balance.x());
        return edge.upTo(attitude + w.lifting.liftCoefficient(0, 0, 0) / w.lifting.liftSlope());
    }

    /** Landing flaps: what they do to stall and trim. */
    private static void flaps(Workbench w) {
        FlapKind kind = w.design.controls().flaps();
        if (kind == FlapKind.NONE) {
            w.set(Measure.LANDING_STALL_SPEED, w.flight.stallSpeed());
            w.rule(Measure.FLAP_TRIM);
            return;
        }
        HighLift landing = w.flight.lowered(FlapSetting.LANDING.deflection(kind));
        w.set(Measure.LANDING_STALL_SPEED, landing.stallSpeed());
        double lift = w.flight.liftCoefficient(Performance.CRUISE * landing.stallSpeed());
        w.set(Measure.FLAP_TRIM, Math.abs(landing.elevator(lift) - w.flight.elevator(lift)) / Handling.FULL_TRAVEL);
        w.set(
                Measure.TRIM_TRAVEL,
                Math.max(w.get(Measure.TRIM_TRAVEL), Math.abs(landing.elevatorAtStall()) / Handling.FULL_TRAVEL));
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
        w.lifting.solve(surfaces, w.sections, PlainFlap.SMALL_ANGLE_EFFICIENCY);
    }

    /** A pusher is thrown by the body under its balance point, with the propeller behind the hand. */
    private static void grip(Workbench w) {
        boolean thrown = w.design.thrown();
        if (thrown && w.design.power() instanceof Power.Pusher) {
            w.set(Measure.LAUNCH_GRIP, w.airframe.stations().shaft().x() - w.balance.x());
        } else {
            w.rule(Measure.LAUNCH_GRIP);
        }
    }

    /** Of the two ends of the margins over the load states the one nearer its limit stands for all. */
    private static void staticMargin(Workbench w) {
        double least = w.balance.leastMargin();
        double most = w.balance.greatestMargin();
        boolean highCounts = false;
        List<Bound> bounds = w.bounds();
        for (int i = 0; i < bounds.size(); i++) {
            Bound bound = bounds.get(i);
            highCounts |= bound.measure() == Measure.STATIC_MARGIN && bound.margin(most) < bound.margin(least);
        }
        w.set(Measure.STATIC_MARGIN, highCounts ? most : least);
    }

    private static void handling(Workbench w) {
        Airframe airframe = w.airframe;
        double fins = finStiffness(w);
        double yaw = fins + w.lifting.lateral().yawStiffness(w.balance.x()) + BodyMoment.yawSlope(airframe);
        Flotation flotation = airframe.stations().flotation();
        if (flotation != null) {
            yaw += BodyMoment.floatYaw(flotation, airframe.area(), airframe.span());
        }
        w.set(Measure.YAW_STIFFNESS, yaw);
        double cruiseLift = w.flight.liftCoefficient(Performance.CRUISE * w.flight.stallSpeed());
        Rudder rudder = rudder(w, fins, w.flight.elevator(cruiseLift));
        w.rudderYaw = rudder.yaw();
        if (w.design.tail() instanceof Tail.None) {
            w.set(Measure.ELEVON_TRIM, Math.abs(w.flight.elevator(cruiseLift)) / Handling.FULL_TRAVEL);
        } else {
            w.rule(Measure.ELEVON_TRIM);
        }
        LateralSystem lateral = w.lifting.lateral();
        double dihedral = Stability.dihedralEffect(airframe, lateral, w.balance.z(), cruiseLift);
        w.set(
                Measure.SPIRAL_PARAMETER,
                Handling.spiralParameter(airframe, w.balance.x(), cruiseLift, dihedral, lateral.rollDamping()));
        if (w.design.controls().ailerons()) {
            rollByAilerons(w);
        } else {
            rollByRudder(w, yaw, dihedral, rudder);
        }
    }

    private static void rollByAilerons(Workbench w) {
        w.rule(Measure.RUDDER_ROLL);
        w.rule(Measure.RUDDER_TURN);
        LateralSystem lateral = w.lifting.lateral();
        double travel = Handling.FULL_TRAVEL;
        if (w.design.tail() instanceof Tail.None) {
            // Elevons have only what trim leaves them.
            double lift = w.flight.liftCoefficient(Performance.SAFE * w.flight.stallSpeed());
            travel = Math.max(0, travel - Math.abs(w.flight.elevator(lift)));
        }
        double droop = w.design.controls().flaps() == FlapKind.FLAPERONS
                ? FlapSetting.LANDING.deflection(FlapKind.FLAPERONS)
                : 0;
        double power = travel / Handling.FULL_TRAVEL * lateral.aileronPower();
        w.rollPower = power * differential(0);
        // Flaperons have least left when they are down for landing, where rolling matters most.
        w.set(Measure.ROLL_RESPONSE, -power * differential(droop) / lateral.rollDamping());
    }

    /** Half the difference of what both ailerons are worth at full travel about a droop, rad: one goes down into separation. */
    private static double differential(double droop) {
        return 0.5 * (PlainFlap.worth(droop + Handling.FULL_TRAVEL) - PlainFlap.worth(droop - Handling.FULL_TRAVEL));
    }

    /** What full rudder does: C_n and C_l. */
    private record Rudder(double yaw, double roll) {}

    private static Rudder rudder(Workbench w, double fins, double elevator) {
        Controls controls = w.design.controls();
        double efficiency = PlainFlap.efficiency(Handling.RUDDER_TRAVEL);
        if (w.design.tail() instanceof Tail.VTail) {
            LateralSystem lateral = w.lifting.lateral();
            double turn = efficiency * Handling.ruddervatorTravel(elevator);
            return new Rudder(turn * lateral.rudderPower(w.balance.x()), turn * lateral.rudderRoll());
        }
        if (!controls.rudder()) {
            return new Rudder(0, 0);
        }
        double turn = efficiency * Handling.RUDDER_TRAVEL;
        return new Rudder(turn * PlainFlap.effectiveness(controls.rudderChord()) * fins, 0);
    }

    /** Full rudder holds a sideslip, and dihedral turns that into roll. */
    private static void rollByRudder(Workbench w, double yaw, double dihedral, Rudder rudder) {
        w.rule(Measure.ROLL_RESPONSE);
        w.rollPower = 0;
        double sideslip = yaw > 0 ? rudder.yaw() / yaw : 0;
        double moment = rudder.roll() - dihedral * Math.min(MOST_SIDESLIP, sideslip);
        w.set(Measure.RUDDER_ROLL, -moment / w.lifting.lateral().rollDamping());
        w.set(Measure.RUDDER_TURN, w.get(Measure.VERTICAL_TAIL_VOLUME) * w.get(Measure.SPIRAL_PARAMETER));
    }

    /** C_n-beta of upright fins, per rad. */
    private static double finStiffness(Workbench w) {
        double sum = 0;
        for (int i = 0; i < w.airframe.surfaces().size(); i++) {
            Surface surface = w.airframe.surfaces().get(i);
            if (surface.role() == Surface.Role.FIN) {
                sum += FinYaw.stiffness(
                        surface,
                        w.sections.get(i).slopeRatio(),
                        FinYaw.ON_BODY,
                        w.balance.x(),
                        w.airframe.area(),
                        w.airframe.span());
            }
        }
        return sum;
    }
}
