package foamfront.model.airframe;

import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.Wing;
import foamfront.model.parts.Battery;
import foamfront.model.parts.Fan;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Propeller;

/**
 * Where things sit, by workshop rule (common practice unless a line says otherwise): loads for the nose first, then those behind
 * it, then the battery, which slides back as far as the wing's trailing edge; receiver and servos behind that, then a fan with
 * its intakes in the body's sides, as large as its swept annulus, just ahead of it and its jet pipe to the body's end. Wheels stand so
 * that the propeller clears the ground by 25 mm or a tenth of its diameter; a tail wheel's main axle lies 14 degrees ahead of
 * the balance point, a tricycle's 15 degrees behind.
 */
final class StationRules {
    /** Room between things in a row, m. */
    static final double GAP = 0.005;

    /** Firewall and screws, m. */
    private static final double FIREWALL = 0.005;

    private static final double GROUND_CLEARANCE = 0.025; // m
    private static final double FOAM_CLEARANCE = 0.010; // m
    private static final double TAIL_WHEEL_ANGLE = 14 * Math.PI / 180;
    private static final double TRICYCLE_ANGLE = 15 * Math.PI / 180;

    private StationRules() {}

    static Stations place(Design design, BodyShape body) {
        Wing wing = design.wing();
        double trailing = wing.x() + wing.planform().rootChord();
        double propellerX = 0;
        double propellerZ = 0;
        double motorX = 0;
        double radius = 0;
        if (design.power() instanceof Power.NoseTractor tractor) {
            Motor motor = tractor.plant().motor();
            motorX = -0.5 * motor.length();
            propellerX = -motor.length() - FIREWALL;
            radius = 0.5 * tractor.plant().propeller().diameter();
        } else if (design.power() instanceof Power.Pusher pusher) {
            Motor motor = pusher.plant().motor();
            Propeller propeller = pusher.plant().propeller();
            radius = 0.5 * propeller.diameter();
            propellerX = trailing + 0.05 * propeller.diameter() + FOAM_CLEARANCE;
            motorX = propellerX - 0.5 * motor.length();
            propellerZ = 0.5 * body.height() + radius + FOAM_CLEARANCE;
        } else if (design.power() instanceof Power.TwinTractor twin) {
            Motor motor = twin.plant().motor();
            motorX = wing.x() - 0.5 * motor.length();
            propellerX = wing.x() - motor.length() - FIREWALL;
            propellerZ = wing.z();
            radius = 0.5 * twin.plant().propeller().diameter();
        }
        Fan fan = design.power() instanceof Power.DuctedFan ducted ? ducted.fan() : null;
        double fanRoom = fan == null ? 0 : Fan.LENGTH * fan.diameter() + GAP;
        double front = FIREWALL + GAP;
        for (Load load : design.loads()) {
            if (load.place() == Place.NOSE || load.place() == Place.BEHIND_NOSE) {
                front += load.length() + GAP;
            }
        }
        Battery battery = design.power().battery();
        double behind = 2 * GAP
                + design.radio().servo().length()
                + GAP
                + design.radio().receiver().length()
                + fanRoom;
        double rear = Math.max(front + battery.length(), Math.min(trailing, body.length() - behind));
        double servoX = rear + GAP + 0.5 * design.radio().servo().length();
        double radioX = servoX
                + 0.5 * design.radio().servo().length()
                + GAP
                + 0.5 * design.radio().receiver().length();
        if (fan != null) {
            motorX = radioX + 0.5 * design.radio().receiver().length() + GAP + 0.5 * Fan.LENGTH * fan.diameter();
            propellerX = motorX - fan.diameter();
        }
        double batteryZ = design.body() instanceof Body.TwoBayTube
                ? 0.5 * body.height() - body.wall() - GAP - 0.5 * battery.height()
                : -0.5 * body.height() + body.wall() + GAP + 0.5 * battery.height();
        return wheels(
                design,
                body,
                radius,
                new Stations(
                        propellerX,
                        propellerZ,
                        motorX,
                        front,
                        rear,
                        batteryZ,
                        radioX,
                        servoX,
                        0,
                        0,
                        -0.5 * body.height()));
    }

    /** The same stations with wheels under them. */
    private static Stations wheels(Design design, BodyShape body, double radius, Stations s) {
        double clearance = Math.max(GROUND_CLEARANCE, 0.2 * radius);
        double belly = -0.5 * body.height();
        double lowest = Math.min(belly - GROUND_CLEARANCE, s.propellerZ() - radius - clearance);
        if (design.undercarriage() instanceof Undercarriage.TailWheel) {
            double ground = lowest;
            return with(s, ground * StrictMath.tan(TAIL_WHEEL_ANGLE), 0.95 * body.length(), ground);
        }
        if (design.undercarriage() instanceof Undercarriage.Tricycle tricycle) {
            double ground = Math.min(lowest, belly - 0.5 * tricycle.wheel().diameter());
            return with(s, -ground * StrictMath.tan(TRICYCLE_ANGLE), 0.08 * body.length(), ground);
        }
        return s;
    }

    private static Stations with(Stations s, double mainAxle, double secondAxle, double ground) {
        return new Stations(
                s.propellerX(),
                s.propellerZ(),
                s.motorX(),
                s.batteryFrom(),
                s.batteryTo(),
                s.batteryZ(),
                s.radioX(),
                s.servoX(),
                mainAxle,
                secondAxle,
                ground);
    }
}
