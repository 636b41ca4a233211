package foamfront.model.aero;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Bay;
import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.Intakes;
import foamfront.model.airframe.Nacelle;
import foamfront.model.airframe.Pylon;
import foamfront.model.airframe.Stance;
import foamfront.model.airframe.Vents;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.Wing;
import foamfront.model.parts.Battery;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Fan;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.Receiver;
import foamfront.model.parts.Servo;
import foamfront.model.parts.Spar;
import foamfront.model.parts.Wheel;

/**
 * Which parts of an airframe drag without lifting, each by its own type's coefficients: body, motor mount, a pusher's pylon,
 * cooling vents, a fan's intakes, wheels and legs, floats, a biplane's struts, rubber bands, loads carried outside. Lifting surfaces
 * and fins are summed strip by strip elsewhere.
 */
public final class ParasiteBuildUp {
    /** Speeds between which the sum is taken, m/s. */
    private static final double SLOWEST = 4;

    private static final double FASTEST = 36;

    /** Nose edges sanded round, m (common practice). */
    private static final double NOSE_RADIUS = 0.010;

    private static final double LEG_WIRE = 0.003; // m, common practice
    private static final int BANDS = 8; // two crossed pairs a side (common practice)
    private static final double BAND = 0.002; // m

    /** Shorter legs are not bent from wire, m (judgement). */
    private static final double SHORTEST_LEG = 0.02;

    /**
     * Drag area of a fan's two side intakes over their area beyond the ram drag that its thrust counts: lips and spilled air
     * (judgement, 0.05 to 0.3).
     */
    private static final double INTAKES = 0.15;

    /** Drag area of a stopped fan, whose duct then hardly flows, over its annulus (judgement, 0.4 to 0.8). */
    private static final double BLOCKED = 0.6;

    private ParasiteBuildUp() {}

    /** Drag area of everything that does not lift. */
    public static ParasiteDrag of(Airframe airframe, Atmosphere air) {
        double nu = air.kinematicViscosity();
        BodyShape shape = airframe.body();
        Flotation water = airframe.stations().flotation();
        double base = shape.width() * shape.height();
        if (water != null && water.count() == 1) {
            base = shape.width() * water.form().sternDepth();
        }
        BoxBody body = new BoxBody(shape.full(), shape.width(), shape.height(), NOSE_RADIUS, base);
        Design design = airframe.design();
        double fixed = wheels(design.undercarriage()) + motor(airframe) + vents(design);
        return ParasiteDrag.of(
                speed -> fixed
                        + body.dragArea(speed, nu)
                        + boom(design, speed, nu)
                        + exposed(airframe, speed, nu)
                        + loads(design, speed, nu)
                        + legs(airframe, speed, nu)
                        + (water == null ? 0 : WaterGearDrag.dragArea(water, shape, speed, nu))
                        + pylon(airframe, speed, nu)
                        + nacelles(airframe, speed, nu)
                        + struts(airframe, speed, nu)
                        + bands(airframe, speed, nu),
                SLOWEST,
                FASTEST);
    }

    /** Drag area of the propeller in a glide, m²: folded, or stopped by the controller's brake. */
    public static double idlePropeller(Propeller propeller) {
        return PropellerDrag.dragArea(
                propeller.folds() ? PropellerDrag.State.FOLDED : PropellerDrag.State.STOPPED,
                propeller.diameter(),
                propeller.blades());
    }

    /** Drag area of a stopped fan, m². */
    public static double idleFan(Fan fan) {
        return BLOCKED * fan.annulus();
    }

    private static double wheels(Undercarriage gear) {
        if (gear instanceof Undercarriage.TailWheel tail) {
            return 2 * drag(tail.wheel());
        }
        if (gear instanceof Undercarriage.Tricycle tricycle) {
            return 3 * drag(tricycle.wheel());
        }
        if (gear instanceof Undercarriage.Amphibian amphibian) {
            return 2 * drag(amphibian.wheel());
        }
        return 0;
    }

    private static double drag(Wheel wheel) {
        return WheelDrag.dragArea(wheel.diameter(), wheel.width());
    }

    /** Straight wires, the main ones from the body's lower edges out to the track, a nose leg straight down. */
    private static double legs(Airframe airframe, double speed, double nu) {
        Undercarriage gear = airframe.design().undercarriage();
        if (gear instanceof Undercarriage.TailWheel tail) {
            return 2 * leg(mainLeg(airframe, tail.wheel()), speed, nu);
        }
        if (gear instanceof Undercarriage.Tricycle tricycle) {
            return 2 * leg(mainLeg(airframe, tricycle.wheel()), speed, nu)
                    + leg(height(airframe, tricycle.wheel()), speed, nu);
        }
        if (gear instanceof Undercarriage.Amphibian amphibian) {
            // Swung up along the sides they stand in the stream as before.
            return 2 * leg(mainLeg(airframe, amphibian.wheel()), speed, nu);
        }
        return 0;
    }

    private static double leg(double length, double speed, double nu) {
        return WireDrag.dragArea(LEG_WIRE, Math.max(SHORTEST_LEG, length), speed, nu);
    }

    private static double mainLeg(Airframe airframe, Wheel wheel) {
        double height = height(airframe, wheel);
        double out = Math.max(
                0, 0.5 * (Stance.TRACK * airframe.span() - airframe.body().width()));
        return Math.sqrt(height * height + out * out);
    }

    /** From the body's underside down to the axle, m. */
    private static double height(Airframe airframe, Wheel wheel) {
        double underside = -0.5 * airframe.body().height();
        return Math.max(0, underside - airframe.stations().stance().groundZ() - 0.5 * wheel.diameter());
    }

    private static double motor(Airframe airframe) {
        Design design = airframe.design();
        if (design.power() instanceof Power.Pusher pusher) {
            return bare(pusher.plant());
        }
        if (design.power() instanceof Power.DuctedFan ducted) {
            return INTAKES
                    * Intakes.ratio(airframe.body(), ducted.fan())
                    * ducted.fan().annulus();
        }
        // A nose motor stands in front of the body, whose forebody drag covers it.
        return design.power() instanceof Power.TwinTractor twin ? 2 * bare(twin.plant()) : 0;
    }

    private static double vents(Design design) {
        return Fittings.cooling(Vents.of(design).inlet(), Vents.ratio());
    }

    private static double bare(PowerPlant plant) {
        return Fittings.bareMotor(plant.motor().diameter(), plant.motor().length());
    }

    private static double pylon(Airframe airframe, double speed, double nu) {
        if (!(airframe.design().power() instanceof Power.Pusher pusher)) {
            return 0;
        }
        Pylon pylon = Pylon.of(pusher, airframe);
        return Fittings.pylon(pylon.height(), pylon.meanChord(), pylon.thickness(), speed, nu);
    }

    /** Two boards beside each of a twin's motors. */
    private static double nacelles(Airframe airframe, double speed, double nu) {
        if (!(airframe.design().power() instanceof Power.TwinTractor twin)) {
            return 0;
        }
        double height = Nacelle.height(twin.plant().motor().diameter());
        return 4 * Fittings.pylon(height, Nacelle.LENGTH, airframe.body().wall(), speed, nu);
    }

    /** Four boards edge-on between a biplane's wings, and two that hold the upper wing above the body. */
    private static double struts(Airframe airframe, double speed, double nu) {
        if (!(airframe.design().wing() instanceof Wing.Biplane biplane)) {
            return 0;
        }
        double wall = airframe.body().wall();
        double above = biplane.z() + biplane.gap() - 0.5 * airframe.body().height();
        double between = Fittings.pylon(biplane.gap(), Airframe.STRUT_CHORD, wall, speed, nu);
        double cabane = above > wall ? Fittings.pylon(above, 2 * Airframe.STRUT_CHORD, wall, speed, nu) : 0;
        return 4 * between + 2 * cabane;
    }

    private static double bands(Airframe airframe, double speed, double nu) {
        if (airframe.design().wing().build().holdDown() != HoldDown.RUBBER_BANDS) {
            return 0;
        }
        return Fittings.rubberBands(BANDS, BAND, 0.5 * airframe.body().width(), speed, nu);
    }

    /** Turbulent friction round a tail boom behind its pod, in the wake of the wing's root. */
    private static double boom(Design design, double speed, double nu) {
        if (!(design.body() instanceof Body.PodAndBoom pod) || pod.length() <= pod.bayLength()) {
            return 0;
        }
        double length = pod.length() - pod.bayLength();
        double around = pod.boom().shape() == Spar.Shape.ROUND
                ? Math.PI * pod.boom().height()
                : 2 * (pod.boom().height() + pod.boom().width());
        return around * length * SkinFriction.turbulent(speed * length / nu);
    }

    /** Battery, controller, receiver and tail servos on the sides of a profile board, each as a sharp box (judgement). */
    private static double exposed(Airframe airframe, double speed, double nu) {
        Design design = airframe.design();
        if (!(design.body() instanceof Body.ProfileBoard)) {
            return 0;
        }
        Battery battery = design.power().battery();
        double sum = Fittings.box(battery.length(), battery.width(), battery.height(), speed, nu);
        Receiver receiver = design.radio().receiver();
        sum += Fittings.box(receiver.length(), receiver.width(), receiver.height(), speed, nu);
        Controller controller = Bay.controller(design.power());
        if (controller != null) {
            sum += Fittings.box(controller.length(), controller.width(), controller.height(), speed, nu);
        }
        Servo servo = design.radio().servo();
        return sum + airframe.servos().tail() * Fittings.box(servo.length(), servo.width(), servo.height(), speed, nu);
    }

    private static double loads(Design design, double speed, double nu) {
        boolean outside = design.body() instanceof Body.ProfileBoard;
        double sum = 0;
        for (int i = 0; i < design.loads().size(); i++) {
            Load load = design.loads().get(i);
            if (outside || load.place() == Place.ON_TOP || load.place() == Place.BELOW) {
                sum += Fittings.box(load.length(), load.width(), load.height(), speed, nu);
            }
        }
        return sum;
    }
}
