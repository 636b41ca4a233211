package foamfront.model.aero;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Stations;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Design;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;
import foamfront.model.design.Undercarriage;
import foamfront.model.parts.Fan;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.Wheel;

/**
 * Which parts of an airframe drag without lifting, each by its own type's coefficients: body, motor mount, wheels and legs, rubber
 * bands, loads carried outside. Lifting surfaces and fins are summed strip by strip elsewhere.
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
    private static final double PYLON_CHORD = 0.06; // m

    /** C_D of a box in the stream on its frontal area (S. F. Hoerner, Fluid-Dynamic Drag, 1965, ch. 3, cube, from memory). */
    private static final double BOX = 1.05;

    /**
     * Drag area of a fan's two side intakes over its swept annulus beyond the ram drag that its thrust counts: lips and spilled air
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
        BoxBody body =
                new BoxBody(shape.length(), shape.width(), shape.height(), NOSE_RADIUS, shape.width() * shape.height());
        double fixed = wheels(airframe.design().undercarriage()) + loads(airframe.design()) + motor(airframe.design());
        return ParasiteDrag.of(
                speed -> fixed
                        + body.dragArea(speed, nu)
                        + legs(airframe, speed, nu)
                        + pylon(airframe, speed, nu)
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
        return 0;
    }

    private static double drag(Wheel wheel) {
        return WheelDrag.dragArea(wheel.diameter(), wheel.width());
    }

    private static double legs(Airframe airframe, double speed, double nu) {
        int legs = airframe.design().undercarriage() instanceof Undercarriage.Tricycle
                ? 3
                : airframe.design().undercarriage() instanceof Undercarriage.TailWheel ? 2 : 0;
        if (legs == 0) {
            return 0;
        }
        double height = -airframe.stations().groundZ() - 0.5 * airframe.body().height();
        return legs * WireDrag.dragArea(LEG_WIRE, Math.max(0.02, height), speed, nu);
    }

    private static double motor(Design design) {
        if (design.power() instanceof Power.Pusher pusher) {
            return bare(pusher.plant());
        }
        if (design.power() instanceof Power.DuctedFan ducted) {
            return INTAKES * ducted.fan().annulus();
        }
        // A nose motor stands in front of the body, whose forebody drag covers it.
        return design.power() instanceof Power.TwinTractor twin ? 2 * bare(twin.plant()) : 0;
    }

    private static double bare(PowerPlant plant) {
        return Fittings.bareMotor(plant.motor().diameter(), plant.motor().length());
    }

    private static double pylon(Airframe airframe, double speed, double nu) {
        if (!(airframe.design().power() instanceof Power.Pusher)) {
            return 0;
        }
        Stations s = airframe.stations();
        Panel root = airframe.wing().panels().get(0);
        double height = s.propellerZ() - Math.max(0.5 * airframe.body().height(), root.rootZ());
        return Fittings.pylon(
                Math.max(0.01, height), PYLON_CHORD, 2 * airframe.body().wall(), speed, nu);
    }

    private static double bands(Airframe airframe, double speed, double nu) {
        if (airframe.design().wing().build().holdDown() != HoldDown.RUBBER_BANDS) {
            return 0;
        }
        return Fittings.rubberBands(BANDS, BAND, 0.5 * airframe.body().width(), speed, nu);
    }

    private static double loads(Design design) {
        double sum = 0;
        for (Load load : design.loads()) {
            if (load.place() == Place.ON_TOP || load.place() == Place.BELOW) {
                sum += BOX * load.width() * load.height();
            }
        }
        return sum;
    }
}
