package foamfront.model.appraisal;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

import foamfront.model.aero.ParasiteBuildUp;
import foamfront.model.design.Design;
import foamfront.model.design.Drive;
import foamfront.model.design.Load;
import foamfront.model.design.Power;
import foamfront.model.flight.FullThrottle;
import foamfront.model.flight.Handling;
import foamfront.model.flight.LevelFlight;
import foamfront.model.flight.Performance;
import foamfront.model.flight.PropellerNormalForce;
import foamfront.model.mission.Measure;
import foamfront.model.parts.Fan;
import foamfront.model.parts.Propeller;
import foamfront.model.propulsion.Installation;
import foamfront.model.propulsion.Jet;
import foamfront.model.propulsion.Loads;
import foamfront.model.propulsion.PowerTrain;
import foamfront.model.section.SectionPolar;
import java.util.Objects;

/** Level flight, climb, endurance, launch and what the power plant is asked to bear. */
final class FlightStage {
    /** A load's own converter (judgement) and a cell's mean voltage in use, V. */
    private static final double LOAD_EFFICIENCY = 0.85;

    private static final double MEAN_CELL = 3.8;

    /** Club flying is 0.3 to 0.6 of steady cruise (judgement). */
    private static final double EVERYDAY = 0.45;

    /** So many full rudders say that there is none. */
    private static final double HOPELESS = 10;

    private FlightStage() {}

    static void run(Workbench w) {
        Drive drive = w.design.power().drive();
        if (drive == null) {
            GlideStage.run(w);
        } else {
            powered(w, drive);
        }
        w.set(Measure.GLIDE_RATIO, w.performance.glideRatio());
        w.set(Measure.SINK_RATE, w.performance.sinkRate());
        polar(w);
        sections(w);
        Airfield.run(w, drive == null ? 0 : w.design.power().motors() * idle(drive));
        PilotStage.run(w);
        WindStage.run(w);
        Waterside.run(w);
    }

    private static void powered(Workbench w, Drive drive) {
        w.rule(Measure.WIND_GLIDE);
        int motors = w.design.power().motors();
        double wind = w.mission.site().wind();
        solve(w, drive);
        FullThrottle full = w.performance.fullThrottle();
        LevelFlight level = w.performance.level();
        double weight = w.flight.weight();
        w.set(Measure.ENDURANCE, level.endurance());
        w.set(Measure.EVERYDAY_FLIGHT, EVERYDAY * level.endurance());
        w.set(Measure.RANGE, level.range());
        w.set(Measure.OUT_AND_BACK, level.outAndBack());
        w.set(Measure.CRUISE_SPEED, level.cruiseSpeed());
        w.set(Measure.CRUISE_RATIO, level.cruiseSpeed() / w.flight.stallSpeed());
        w.set(Measure.TOP_SPEED, full.topSpeed());
        w.set(Measure.TOP_SPEED_RATIO, full.topSpeed() / Math.max(w.flight.stallSpeed(), wind * 4 / 3));
        w.set(Measure.CLIMB_RATE, full.climbRate());
        w.set(Measure.THRUST_TO_WEIGHT, full.staticThrust() / weight);
        w.set(Measure.POWER_LOADING, full.power() * GRAVITY / weight);
        w.set(Measure.MOTOR_LOAD, Loads.motor(drive.motor(), full.motorInput()));
        w.set(Measure.CONTROLLER_LOAD, Loads.controller(drive.controller(), full.current() / motors));
        w.set(
                Measure.SUPPLY_LOAD,
                Loads.supply(
                        drive.controller(),
                        drive.battery().cells(),
                        w.design.radio().receiver().current(),
                        servoCurrent(w)));
        w.set(Measure.BATTERY_LOAD, Loads.battery(drive.battery(), full.current()));
        w.set(Measure.CELL_VOLTAGE, full.lowVoltage() / drive.battery().cells());
        w.set(Measure.TIP_SPEED, Loads.tip(drive.rotor(), full.topRotation()));
        w.set(
                Measure.NOISE,
                Installation.noise(w.design.power()) * Math.PI * drive.rotor().diameter() * level.cruiseRotation());
        w.topSpeed = full.topSpeed();
        underPower(w, drive, motors);
        torque(w, drive, motors);
        oneMotorOut(w, drive);
    }

    /** Every point of power plant and steady flight. */
    static void solve(Workbench w, Drive drive) {
        int motors = w.design.power().motors();
        w.flight.streams(motors);
        w.performance.solve(
                w.flight,
                train(w),
                drive.rotor(),
                streamArea(w),
                motors * idle(drive),
                w.mission.site().wind());
    }

    private static void polar(Workbench w) {
        double aspect = w.airframe.span() * w.airframe.span() / w.airframe.area();
        w.set(Measure.SPAN_EFFICIENCY, w.performance.spanEfficiency(aspect));
        w.set(Measure.ZERO_LIFT_DRAG, w.performance.zeroLiftDrag());
    }

    /** How far the sections' tables are stretched. */
    private static void sections(Workbench w) {
        double safe = safeSpeed(w);
        double top = Math.max(safe, w.topSpeed);
        w.set(Measure.SECTION_REYNOLDS, w.flight.leastReynolds(safe) / SectionPolar.LEAST_REYNOLDS);
        w.set(Measure.SECTION_LIFT, Math.max(w.flight.greatestLiftShare(safe), w.flight.greatestLiftShare(top)));
    }

    private static double safeSpeed(Workbench w) {
        return Performance.SAFE * w.flight.stallSpeed();
    }

    private static double safePressure(Workbench w) {
        return pressure(w, safeSpeed(w));
    }

    /** Dynamic pressure at a speed (m/s), Pa. */
    static double pressure(Workbench w, double speed) {
        return 0.5 * w.flight.density() * speed * speed;
    }

    private static double idle(Drive drive) {
        return drive.rotor() instanceof Propeller propeller
                ? ParasiteBuildUp.idlePropeller(propeller)
                : ParasiteBuildUp.idleFan((Fan) drive.rotor());
    }

    /** Margin and elevator at full throttle and 1.2 stall speeds. */
    private static void underPower(Workbench w, Drive drive, int motors) {
        double speed = safeSpeed(w);
        FullThrottle full = w.performance.fullThrottle();
        double force = drive.rotor() instanceof Propeller propeller
                ? motors * PropellerNormalForce.areaPerRadian(propeller, full.topRotation(), speed)
                : Jet.turningArea(((Fan) drive.rotor()).exitArea(), full.safeThrust(), speed, w.flight.density());
        double lift = w.flight.liftCoefficient(speed);
        double elevator = w.flight.elevator(lift);
        w.slipstream.blow(motors, full.safeThrust(), speed, w.flight.density(), openDisc(drive), force);
        w.slipstream.place(
                w.airframe,
                w.lifting,
                w.flight.momentSlope(lift),
                w.balance.x(),
                w.flight.loadIncidence(lift),
                elevator);
        double shift =
                w.slipstream.assuredShift(force, w.airframe.stations().shaft().x(), w.neutralPoint);
        w.set(Measure.POWER_ON_MARGIN, w.balance.leastMargin() + shift / w.airframe.chord());
        powerTrim(w, elevator);
    }

    /** Of one propeller that turns in the open, m²; 0 for a fan. */
    private static double openDisc(Drive drive) {
        double radius = drive.rotor() instanceof Propeller propeller ? 0.5 * propeller.diameter() : 0;
        return Math.PI * radius * radius;
    }

    /** The trimmed elevator and what a thrust line off the balance point and the slipstream ask besides. */
    private static void powerTrim(Workbench w, double trimmed) {
        double area = safePressure(w) * w.lifting.referenceArea();
        double lever = w.airframe.stations().shaft().z() - w.balance.z();
        double moment = -w.performance.fullThrottle().safeThrust() * lever / (area * w.lifting.referenceChord())
                + w.slipstream.trimChange();
        double authority = w.lifting.elevatorMomentSlope(w.balance.x()) * (1 + w.slipstream.controlGain());
        double elevator = authority == 0 ? trimmed : trimmed - moment / authority;
        w.set(Measure.POWER_TRIM, Math.abs(elevator) / Handling.FULL_TRAVEL);
    }

    /**
     * Rudder against the yaw of one motor: half the full thrust, and the stopped propeller's drag, at the motor's
     * station. Derived; sideslip and bank, which help, are left out, and so is the other battery's half of the sag,
     * which adds 1 to 2 %.
     */
    private static void oneMotorOut(Workbench w, Drive drive) {
        if (!(w.design.power() instanceof Power.TwinTractor twin)) {
            w.rule(Measure.ONE_MOTOR_OUT);
            return;
        }
        double pressure = safePressure(w);
        double force = Math.max(0, 0.5 * w.performance.fullThrottle().safeThrust()) + pressure * idle(drive);
        double rudder = w.rudderYaw * pressure * w.airframe.area() * w.airframe.span();
        double moment = force * twin.y();
        w.set(Measure.ONE_MOTOR_OUT, moment < HOPELESS * rudder ? moment / rudder : HOPELESS);
    }

    /**
     * Propeller torque at full throttle against what the model stands in roll. The swirl that torque leaves in the stream, and what a
     * fin in it feels, are left out (judgement): a twin's fin stands between its streams, and of a counter-rotating pair the two swirls
     * are mirror images besides.
     */
    private static void torque(Workbench w, Drive drive, int motors) {
        if (drive.rotor() instanceof Fan) {
            // A fan's stators take its swirl out again.
            w.rule(Measure.TORQUE_ROLL);
            return;
        }
        double weight = w.flight.weight();
        double span = w.airframe.span();
        double allowed = 0.03 * weight * span;
        if (w.design.controls().ailerons()) {
            allowed = 0.3 * w.rollPower * safePressure(w) * w.airframe.area() * span;
        }
        // Twins that turn the same way add up; against each other they cancel.
        boolean countering = w.design.power() instanceof Power.TwinTractor twin && twin.countering();
        double torque = countering ? 0 : motors * w.performance.fullThrottle().staticTorque();
        w.set(Measure.TORQUE_ROLL, torque < HOPELESS * allowed ? torque / allowed : HOPELESS);
    }

    /** Disc area of propellers ahead of body or wing, m². */
    static double streamArea(Workbench w) {
        Power power = w.design.power();
        if (power instanceof Power.Pusher || power instanceof Power.DuctedFan) {
            return 0;
        }
        double radius = 0.5 * drive(power).rotor().diameter();
        return power.motors() * Math.PI * radius * radius;
    }

    /** The design's power train, prepared. */
    static PowerTrain train(Workbench w) {
        Power power = w.design.power();
        PowerTrain train = w.train(drive(power), power.motors(), auxiliaryCurrent(w));
        train.install(Installation.thrustShare(w.airframe), Installation.inflow(w.design));
        train.chill(w.mission.site().temperature());
        return train;
    }

    private static Drive drive(Power power) {
        return Objects.requireNonNull(power.drive(), "only what has a motor gets here");
    }

    private static double servoCurrent(Workbench w) {
        return w.airframe.servos().current(w.design.radio());
    }

    /** Receiver and servos through a linear supply, loads by their power through a converter, A from the battery. */
    private static double auxiliaryCurrent(Workbench w) {
        Design design = w.design;
        double current = design.radio().receiver().current() + servoCurrent(w);
        for (int i = 0; i < design.loads().size(); i++) {
            Load load = design.loads().get(i);
            current += load.power()
                    / (LOAD_EFFICIENCY * MEAN_CELL * design.power().battery().cells());
        }
        return current;
    }
}
