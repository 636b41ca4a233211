package foamfront.model.appraisal;

import foamfront.model.aero.LiftingSystem;
import foamfront.model.aero.Winglets;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Drive;
import foamfront.model.design.Power;
import foamfront.model.design.Wing;
import foamfront.model.fabrication.BillOfMaterials;
import foamfront.model.fabrication.CutPart;
import foamfront.model.fabrication.PartsList;
import foamfront.model.factors.Spread;
import foamfront.model.flight.FullThrottle;
import foamfront.model.flight.LateralModes;
import foamfront.model.flight.LevelFlight;
import foamfront.model.flight.Motions;
import foamfront.model.flight.Performance;
import foamfront.model.mass.Inertia;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Measure;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.Provenance;
import foamfront.model.parts.Rotor;
import foamfront.model.propulsion.Loads;
import foamfront.model.propulsion.Outcome;
import foamfront.model.propulsion.PowerTrain;
import foamfront.model.structure.ControlThrow;
import java.util.ArrayList;
import java.util.List;

/** An appraisal from a workbench whose stages have all run. */
final class Findings {
    private static final int POLAR_POINTS = 14;
    private static final double POLAR_RATIO = 1.09;

    /** Tips with less of their lift left at the stall drop a wing in a gust or turn (judgement). */
    private static final double TIPS_SPARE = 0.03;

    private Findings() {}

    static Appraisal of(Workbench w) {
        List<LimitCheck> limits = limits(w);
        Motions motions = motions(w);
        List<Caveat> caveats = caveats(w, motions);
        // The curves run the kernels again, so they come last of what reads them.
        List<LiftingSummary> surfaces = surfaces(w);
        List<PolarPoint> polar = polar(w);
        return new Appraisal(
                w.airframe,
                new MeasureValues(w.values),
                limits,
                caveats,
                w.masses,
                w.balance,
                surfaces,
                w.neutralPoint - w.design.wing().x(),
                motions,
                polar,
                spanLoading(w),
                power(w, polar),
                w.parts,
                BillOfMaterials.of(w.airframe, w.parts, w.sheets, w.mission, w.factors),
                w.structure,
                massSpread(w),
                ControlThrow.of(w.airframe, w.loads),
                w.mishap,
                w.car.stowage(w.mission.car()));
    }

    /** The spread of what the builder makes of board, glue and tape, allowance included. */
    private static double massSpread(Workbench w) {
        double built = 0;
        for (CutPart part : w.parts.cut()) {
            built += PartsList.mass(part, w.design.board(), w.mission.workshop());
        }
        return Spread.AIRFRAME_MASS.halfWidth() * (1 + w.mission.workshop().allowance()) * built;
    }

    private static Motions motions(Workbench w) {
        return Motions.of(
                w.airframe,
                w.lifting,
                w.flight,
                w.balance,
                Inertia.of(w.masses, w.balance),
                w.get(Measure.YAW_STIFFNESS),
                Performance.CRUISE * w.flight.stallSpeed());
    }

    private static List<LimitCheck> limits(Workbench w) {
        List<LimitCheck> checks = new ArrayList<>();
        for (Bound bound : w.bounds()) {
            if (w.applies(bound.measure())) {
                double value = w.get(bound.measure());
                String sentence =
                        Sentences.of(bound, value, w.mission.workshop().currency());
                checks.add(new LimitCheck(
                        bound,
                        value,
                        bound.margin(value),
                        bound.measure() == Measure.BALANCE_SHIFT ? sentence + Sentences.ballast(w.balance) : sentence));
            }
        }
        return checks;
    }

    private static List<Caveat> caveats(Workbench w, Motions motions) {
        List<Caveat> found = new ArrayList<>();
        add(found, Caveat.SECTION_RANGE, !w.flight.insideSectionData(Performance.SAFE * w.flight.stallSpeed()));
        Drive drive = w.design.power().drive();
        add(found, Caveat.STILL_AIR, drive == null);
        if (drive != null) {
            add(found, Caveat.PROPELLER_RANGE, !w.performance.fullThrottle().insidePropellerData());
            add(found, Caveat.PROPELLER_REGRESSION, unmeasured(drive.rotor()));
            add(found, Caveat.FAN_ESTIMATE, w.design.power() instanceof Power.DuctedFan);
            double heat = w.performance.fullThrottle().motorHeat();
            add(found, Caveat.MOTOR_HEAT, Loads.motorHeat(drive.motor(), heat) > 1);
            add(found, Caveat.ENDURANCE_CLIPPED, w.performance.level().enduranceClipped());
        }
        add(found, Caveat.TIP_STALL, w.applies(Measure.TIP_RESERVE) && w.get(Measure.TIP_RESERVE) < TIPS_SPARE);
        add(found, Caveat.NEAR_250_GRAMS, Math.abs(w.balance.mass() - 0.25) < 0.15 * 0.25);
        add(
                found,
                Caveat.ONE_MOTOR_OUT,
                w.design.power() instanceof Power.TwinTractor && w.get(Measure.ONE_MOTOR_OUT) > 1);
        add(found, Caveat.OTHER_HAND, w.design.power() instanceof Power.TwinTractor twin && twin.countering());
        add(found, Caveat.HUMP_RULE, w.design.floats());
        add(found, Caveat.GUST_SIZED, w.structure.limitLoad() > 4);
        add(found, Caveat.LONG_LANDING, Airfield.rollsPast(w));
        add(found, Caveat.WEB_GLUE, w.structure.webGlue() < 1);
        add(found, Caveat.SPIRAL, motions.lateral().spiralDoubling() < LateralModes.HASTY);
        return found;
    }

    private static boolean unmeasured(Rotor rotor) {
        return rotor instanceof Propeller && rotor.provenance() == Provenance.REGRESSION;
    }

    private static void add(List<Caveat> found, Caveat caveat, boolean applies) {
        if (applies) {
            found.add(caveat);
        }
    }

    private static List<PolarPoint> polar(Workbench w) {
        List<PolarPoint> points = new ArrayList<>();
        double speed = w.flight.stallSpeed();
        for (int i = 0; i < POLAR_POINTS; i++) {
            double lift = w.flight.liftCoefficient(speed);
            double drag = w.flight.drag(speed);
            points.add(new PolarPoint(
                    speed,
                    speed * w.airframe.chord() / w.air().kinematicViscosity(),
                    lift,
                    w.flight.profileDrag(),
                    w.flight.inducedDrag(),
                    w.flight.parasiteDrag(),
                    drag,
                    w.flight.incidence(lift),
                    w.flight.elevator(lift)));
            speed *= POLAR_RATIO;
        }
        return points;
    }

    private static List<SpanPoint> spanLoading(Workbench w) {
        List<SpanPoint> points = new ArrayList<>();
        LiftingSystem lifting = w.lifting;
        double stall = w.flight.stallSpeed();
        double cruise = w.flight.liftCoefficient(Performance.CRUISE * stall);
        double most = w.flight.maximumLift();
        double elevator = w.flight.elevator(most);
        for (int s = 0; s < lifting.surfaceCount(); s++) {
            int place = lifting.listed(s);
            Surface surface = w.airframe.surfaces().get(place);
            for (int i = lifting.firstStrip(s); i < lifting.endStrip(s); i++) {
                double reynolds = stall * lifting.stripChord(i) / w.air().kinematicViscosity();
                points.add(new SpanPoint(
                        surface.role(),
                        2 * lifting.stripY(i) / surface.span(),
                        lifting.stripChord(i),
                        lifting.stripLiftCoefficient(i, w.flight.incidence(cruise), w.flight.elevator(cruise), 0),
                        lifting.stripLiftCoefficient(i, w.flight.incidence(most), elevator, 0),
                        w.polars[place].maximumLift(StrictMath.log(reynolds))
                                + lifting.stripMaximumShift(i) * elevator));
            }
        }
        return points;
    }

    private static List<PowerPoint> power(Workbench w, List<PolarPoint> polar) {
        List<PowerPoint> points = new ArrayList<>();
        if (w.design.power().drive() == null) {
            return points;
        }
        PowerTrain train = FlightStage.train(w);
        FullThrottle full = w.performance.fullThrottle();
        for (PolarPoint p : polar) {
            double available = full.thrust(p.speed());
            double required = w.flight.poweredDrag(p.speed(), FlightStage.streamArea(w));
            boolean holds = train.solveHolding(required, p.speed(), LevelFlight.HALF_CHARGE) == Outcome.REACHED;
            points.add(new PowerPoint(
                    p.speed(),
                    available,
                    required,
                    holds ? train.throttle() : Double.NaN,
                    holds ? train.batteryCurrent() : Double.NaN,
                    holds ? train.batteryCurrent() * train.batteryVoltage() : Double.NaN,
                    full.climbRate(w.flight, p.speed())));
        }
        return points;
    }

    /** Each lifting surface by itself, then all together: fresh systems, inviscid, so the bench's own stays as it was. */
    private static List<LiftingSummary> surfaces(Workbench w) {
        List<LiftingSummary> list = new ArrayList<>();
        List<Surface> all = new ArrayList<>();
        for (Surface surface : w.airframe.surfaces()) {
            if (surface.role() != Surface.Role.FIN) {
                all.add(surface);
                list.add(summary(w, name(surface.role()), List.of(surface)));
            }
        }
        list.add(summary(w, "all together", all));
        return list;
    }

    private static LiftingSummary summary(Workbench w, String name, List<Surface> surfaces) {
        LiftingSystem system = Inviscid.solve(surfaces);
        double area = system.referenceArea();
        boolean winged = surfaces.get(0).role() == Surface.Role.WING && !(w.design.wing() instanceof Wing.Delta);
        double winglets = winged ? Winglets.frictionlessGain(Winglets.heightOverSpan(w.airframe.surfaces())) : 1;
        return new LiftingSummary(
                name,
                area,
                system.referenceSpan(),
                system.liftSlope(),
                winglets * Inviscid.spanEfficiency(system),
                system.neutralPoint() - w.design.wing().x());
    }

    private static String name(Surface.Role role) {
        return switch (role) {
            case WING -> "wing";
            case SECOND_WING -> "second wing";
            case TAIL -> "tail";
            case FIN -> "fin";
        };
    }
}
