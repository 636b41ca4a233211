package foamfront.model.mass;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Bay;
import foamfront.model.airframe.Control;
import foamfront.model.airframe.Shaft;
import foamfront.model.airframe.Stance;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Design;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.Wing;
import foamfront.model.design.WingJoint;
import foamfront.model.parts.Wheel;

/**
 * What is bought and fitted, the battery excepted, with the floors no model escapes: 12 g of power leads (from
 * memory), 8 g of firewall and screws, 5 g of strap round each pack, a receiver of at least 5 g, and for each servo 3 g of horn and
 * pushrod and 4 g of lead (judgement). Wheels weigh what the catalogue says, with their share of axle and leg.
 */
final class EquipmentMasses {
    private static final double POWER_LEADS = 0.012; // kg each motor
    private static final double FIREWALL = 0.008; // kg each motor
    private static final double STRAP = 0.005; // kg each pack

    /** Two short pairs of 2.5 mm² leads and a third connector that join one more pack, kg (judgement). */
    private static final double HARNESS = 0.010;

    private static final double LEAST_RECEIVER = 0.005; // kg
    private static final double HORN_AND_PUSHROD = 0.003; // kg each servo
    private static final double SERVO_LEAD = 0.004; // kg each servo
    private static final double RUBBER_BANDS = 0.010; // kg, four bands and two dowels, judgement
    private static final double TAIL_SKID = 0.0025; // kg, 100 mm of 2 mm steel wire from the scrap box, judgement

    /** What feeds the radio of a model without a speed controller, with its leads, kg (judgement). */
    private static final double RADIO_SUPPLY = 0.008;

    /** Pivots and clips that swing two wheels up beside a hull, kg, judgement. */
    private static final double WHEEL_HINGES = 0.012;

    /** A pair of 1.5 mm² leads along a wing to its motor, kg/m (from memory of copper and silicone). */
    private static final double WING_LEADS = 0.035;

    /** Two pairs of hooks and their bands over the joint of a folding wing, kg (judgement). */
    private static final double WING_CATCH = 0.005;

    /** Four pegs and two bands round the joint of a replaceable nose, kg (judgement). */
    private static final double NOSE_BANDS = 0.006;

    private EquipmentMasses() {}

    static void add(Airframe airframe, MassTable items) {
        power(airframe, items);
        radio(airframe, items);
        wheels(airframe, items);
        Design design = airframe.design();
        Bay bay = airframe.stations().bay();
        int packs = design.power().battery().packs();
        double middle = 0.5 * (bay.from() + bay.to());
        items.point("battery strap", packs * STRAP, middle, 0, bay.batteryZ(), MassGroup.POWER);
        if (packs > 1) {
            items.point(
                    "battery harness", (packs - 1) * HARNESS, bay.controllerX(), 0, bay.batteryZ(), MassGroup.POWER);
        }
        double nose = design.body().nosePiece();
        if (nose > 0) {
            items.point("nose pegs and bands", NOSE_BANDS, nose, 0, 0, MassGroup.BODY);
        }
        if (design.wing().build().joint() == WingJoint.FOLDING) {
            double x = design.wing().x() + 0.5 * design.wing().planform().rootChord();
            items.point(
                    "hooks of the folding joint",
                    WING_CATCH,
                    x,
                    0,
                    design.wing().z(),
                    MassGroup.WING);
        }
        if (design.wing().build().holdDown() == HoldDown.RUBBER_BANDS) {
            double x = design.wing().x() + 0.5 * design.wing().planform().rootChord();
            items.point("rubber bands", RUBBER_BANDS, x, 0, design.wing().z(), MassGroup.WING);
        }
    }

    private static void power(Airframe airframe, MassTable items) {
        Shaft shaft = airframe.stations().shaft();
        double inside = airframe.stations().bay().controllerX();
        Power power = airframe.design().power();
        if (power instanceof Power.NoseTractor tractor) {
            plant(tractor.plant(), shaft, inside, 0, items);
        } else if (power instanceof Power.Pusher pusher) {
            plant(pusher.plant(), shaft, inside, 0, items);
        } else if (power instanceof Power.TwinTractor twin) {
            double x = airframe.design().wing().x();
            plant(twin.plant(), shaft, x, shaft.y(), items);
            plant(twin.plant(), shaft, x, -shaft.y(), items);
            items.point("leads in the wing", 2 * WING_LEADS * shaft.y(), x, 0, shaft.z(), MassGroup.POWER);
        } else if (power instanceof Power.DuctedFan fan) {
            double x = shaft.motorX();
            items.point("fan with motor", fan.fan().mass(), x, 0, 0, MassGroup.POWER);
            items.point("controller", fan.controller().mass(), inside, 0, 0, MassGroup.POWER);
            items.point("power leads", POWER_LEADS, 0.5 * (inside + x), 0, 0, MassGroup.POWER);
            items.point("fan mount", FIREWALL, x, 0, 0, MassGroup.POWER);
        } else {
            double x = airframe.stations().bay().radioX();
            items.point("switch and regulator", RADIO_SUPPLY, x, 0, 0, MassGroup.POWER);
        }
    }

    /** One motor with its propeller, controller at {@code controllerX}, leads between it and the motor. */
    private static void plant(PowerPlant plant, Shaft shaft, double controllerX, double y, MassTable items) {
        double z = shaft.z();
        MassGroup group = MassGroup.POWER;
        double mount = shaft.motorX() + 0.5 * plant.motor().length();
        items.point("motor", plant.motor().mass(), shaft.motorX(), y, z, group);
        items.point("propeller", plant.propeller().mass(), shaft.x(), y, z, group);
        items.point("controller", plant.controller().mass(), controllerX, y, 0, group);
        items.point("power leads", POWER_LEADS, 0.5 * (controllerX + shaft.motorX()), y, 0, group);
        items.point("firewall and screws", FIREWALL, mount, y, z, group);
    }

    private static void radio(Airframe airframe, MassTable items) {
        Design design = airframe.design();
        Bay bay = airframe.stations().bay();
        MassGroup group = MassGroup.RADIO;
        double receiver = Math.max(LEAST_RECEIVER, design.radio().receiver().mass());
        items.point("receiver", receiver, bay.radioX(), 0, 0, group);
        double servo = design.radio().servo().mass();
        int tail = airframe.servos().tail();
        if (tail > 0) {
            items.point("tail servos", tail * servo, bay.servoX(), 0, 0, group);
            items.point("tail servo leads", tail * SERVO_LEAD, bay.servoX(), 0, 0, group);
            // A pushrod reaches from its servo to the horn at the tail.
            double middle = 0.5 * (bay.servoX() + airframe.body().length());
            items.point("tail horns and pushrods", tail * HORN_AND_PUSHROD, middle, 0, 0, group);
        }
        for (int i = 0; i < airframe.wing().controls().size(); i++) {
            Control control = airframe.wing().controls().get(i);
            double each = servo + SERVO_LEAD + HORN_AND_PUSHROD;
            double y = 0.25 * (control.from() + control.to()) * airframe.span();
            double hinge = hinge(airframe.wing(), control, y);
            double z = design.wing().z();
            items.point("wing servo, starboard", each, hinge, y, z, group);
            items.point("wing servo, port", each, hinge, -y, z, group);
            if (design.wing() instanceof Wing.Biplane biplane) {
                double middle = z + 0.5 * biplane.gap();
                double x = hinge - 0.5 * biplane.stagger();
                items.point("link to the upper wing, starboard", HORN_AND_PUSHROD, x, y, middle, group);
                items.point("link to the upper wing, port", HORN_AND_PUSHROD, x, -y, middle, group);
            }
        }
    }

    /** The servo sits a fifth of the chord ahead of its hinge (common practice), on the surface's straight taper. */
    private static double hinge(Surface wing, Control control, double y) {
        for (int i = 0; i < wing.panels().size(); i++) {
            var panel = wing.panels().get(i);
            if (y <= panel.tipY() || i == wing.panels().size() - 1) {
                double breadth = panel.tipY() - panel.rootY();
                double f = breadth > 0 ? (y - panel.rootY()) / breadth : 0;
                double leading = panel.rootX() + f * (panel.tipX() - panel.rootX());
                double chord = panel.rootChord() + f * (panel.tipChord() - panel.rootChord());
                return leading + (0.8 - control.chordFraction()) * chord;
            }
        }
        throw new IllegalStateException("a surface without panels");
    }

    private static void wheels(Airframe airframe, MassTable items) {
        Undercarriage gear = airframe.design().undercarriage();
        double x = airframe.stations().stance().secondAxle();
        double belly = -0.5 * airframe.body().height();
        MassGroup group = MassGroup.UNDERCARRIAGE;
        if (gear instanceof Undercarriage.TailWheel tailWheel) {
            main(airframe, tailWheel.wheel(), items);
            items.point("tail skid", TAIL_SKID, x, 0, belly, group);
        } else if (gear instanceof Undercarriage.Tricycle tricycle) {
            main(airframe, tricycle.wheel(), items);
            items.point("nose wheel", tricycle.wheel().mass(), x, 0, belly, group);
        } else if (gear instanceof Undercarriage.Amphibian amphibian) {
            main(airframe, amphibian.wheel(), items);
            items.point("tail skid", TAIL_SKID, x, 0, belly, group);
            items.relative(
                    "wheel hinges", WHEEL_HINGES, airframe.stations().stance().mainAxle(), 0, belly, group);
        }
    }

    private static void main(Airframe airframe, Wheel wheel, MassTable items) {
        Stance stance = airframe.stations().stance();
        Wing wing = airframe.design().wing();
        double y = 0.5 * Stance.TRACK * wing.planform().span();
        double z = stance.groundZ() + 0.5 * wheel.diameter();
        MassGroup group = MassGroup.UNDERCARRIAGE;
        items.relative("main wheel, starboard", wheel.mass(), stance.mainAxle(), y, z, group);
        items.relative("main wheel, port", wheel.mass(), stance.mainAxle(), -y, z, group);
    }
}
