package foamfront.model.structure;

import foamfront.model.aero.FinYaw;
import foamfront.model.aero.Helmbold;
import foamfront.model.aero.PlainFlap;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Body;
import foamfront.model.design.FinJoint;
import foamfront.model.design.Tail;
import java.util.List;

/**
 * Bending of stabiliser and fins where they leave what carries them, each one board whose two papers bear the moment M
 * over the root chord c: σ = M / (t_f d c). Load even over the plate, so that a panel of breadth s bends with
 * p s² (c + 2 c_t) / 6 (derived).
 *
 * <p>Stabiliser, the greatest of: the elevator at full travel at the manoeuvring speed V_s √n or the top speed if that
 * is less, since faster the pilot may pull no harder than the wing bears (14 CFR 23.423, from memory); the gust in
 * cruise, U / V of incidence and no downwash (23.425, from memory; on the safe side); the trim load times the limit
 * load factor. A body carries it over its own width. Fin: 15° of sideslip or full rudder in cruise. A V-tail's panels
 * are both, β sin ν being a sideslip's incidence; elevator and rudder travel are taken one at a time (judgement: a
 * mixer limits their sum). No plate lifts beyond its greatest coefficient. Lift slopes by {@link Helmbold}, controls by
 * {@link PlainFlap}; the elevator, in one piece across, bends with its plate (judgement). On a T-tail the fin's root
 * also takes the stabiliser's weight times the limit load factor, sideways, and the rolling moment of a stabiliser
 * loaded half as much on one side as on the other (judgement after the unsymmetrical tail loads of 14 CFR 23.427, from
 * memory). Reinforcing tape or rod, which many add, is not counted.
 *
 * <p>A fin that folds stands between two strips of tape along its root, a board apart: the couple bears 3 kN/m (as a folding
 * wing's hinge, {@link FoldJoint}) times thickness and chord.
 */
final class TailPlates {
    private static final double RADIAN = Math.PI / 180;
    private static final double SIDESLIP = 15 * RADIAN;
    private static final double LESS_LOADED_SIDE = 0.5;

    private TailPlates() {}

    /** Strength over load of the hardest loaded plate. */
    static double reserve(Airframe airframe, FlightLoads loads, double limit, Sandwich board, double strength) {
        // Moment per chord that the papers bear, N.
        double bears = strength * board.face() * board.depth();
        double least = StructureMargins.UNLOADED;
        double atop = 0;
        Surface tail = airframe.tail();
        if (tail != null) {
            double pressure = tailPressure(airframe, tail, loads, limit);
            double held = held(airframe, tail);
            least = StructureMargins.reserve(bears * chord(tail, held), pressure * firstMoment(tail, held));
            if (airframe.design().tail() instanceof Tail.TTail) {
                atop = (1 - LESS_LOADED_SIDE) * pressure * firstMoment(tail, 0)
                        + weightMoment(airframe, tail, loads, limit);
            }
        }
        boolean folding = airframe.design().tail().finJoint() == FinJoint.FOLDING;
        for (int i = 0; i < airframe.fins().size(); i++) {
            Surface fin = airframe.fins().get(i);
            double moment = finPressure(fin, loads) * firstMoment(fin, 0) + atop;
            least = Math.min(least, StructureMargins.reserve(bears * chord(fin, 0), moment));
            if (folding) {
                least = Math.min(
                        least,
                        StructureMargins.reserve(FoldJoint.TAPE_BEARS * board.thickness() * chord(fin, 0), moment));
            }
        }
        return least;
    }

    /** Load over area of the stabiliser, Pa. */
    static double tailPressure(Airframe airframe, Surface tail, FlightLoads loads, double limit) {
        double breadth = breadth(tail);
        double aspect = 4 * breadth * breadth / tail.area();
        double cruise = loads.cruiseSpeed();
        double manoeuvring = Math.min(loads.topSpeed(), loads.stallSpeed() * Math.sqrt(limit));
        double elevator = pressure(loads, manoeuvring) * lift(aspect, controlled(tail, Control.Kind.ELEVATOR));
        double gust = pressure(loads, cruise) * lift(aspect, loads.gust() / cruise);
        double trim = limit * Atmosphere.GRAVITY * loads.mass() * Math.abs(loads.tailLift()) / tail.area();
        double greatest = Math.max(Math.max(elevator, gust), trim);
        if (airframe.design().tail() instanceof Tail.VTail) {
            double cant = Math.abs(rise(tail)) / breadth;
            double angle = Math.max(
                    SIDESLIP * cant, worth(tail, Control.Kind.ELEVATOR, ServoLoad.travel(Control.Kind.RUDDER)));
            greatest = Math.max(greatest, pressure(loads, cruise) * lift(aspect, angle));
        }
        return greatest;
    }

    /** Load over area of a fin, Pa. */
    static double finPressure(Surface fin, FlightLoads loads) {
        double height = breadth(fin);
        double aspect = FinYaw.ON_BODY * height * height / fin.area();
        double angle = Math.max(SIDESLIP, controlled(fin, Control.Kind.RUDDER));
        return pressure(loads, loads.cruiseSpeed()) * lift(aspect, angle);
    }

    private static double pressure(FlightLoads loads, double speed) {
        return 0.5 * loads.density() * speed * speed;
    }

    private static double lift(double aspectRatio, double angle) {
        return Math.min(TailBoom.PLATE_LIFT, Helmbold.liftSlope(aspectRatio, 1) * angle);
    }

    /** Incidence that the control at full travel is worth, rad; 0 without one. */
    private static double controlled(Surface surface, Control.Kind kind) {
        return worth(surface, kind, ServoLoad.travel(kind));
    }

    private static double worth(Surface surface, Control.Kind kind, double travel) {
        double most = 0;
        for (int i = 0; i < surface.controls().size(); i++) {
            Control control = surface.controls().get(i);
            if (control.kind() == kind) {
                most = Math.max(
                        most, PlainFlap.effectiveness(control.chordFraction()) * PlainFlap.efficiency(travel) * travel);
            }
        }
        return most;
    }

    /** Of the stabiliser's weight on top of the fin, N m; the group's mass goes by area. */
    private static double weightMoment(Airframe airframe, Surface tail, FlightLoads loads, double limit) {
        double area = tail.area();
        double height = 0;
        for (int i = 0; i < airframe.fins().size(); i++) {
            Surface fin = airframe.fins().get(i);
            area += fin.area();
            height = Math.max(height, breadth(fin));
        }
        return limit * Atmosphere.GRAVITY * loads.tailMass() * tail.area() / area * height;
    }

    /** How far from the middle the body holds the stabiliser, m. */
    private static double held(Airframe airframe, Surface tail) {
        Body body = airframe.design().body();
        boolean lies = airframe.design().tail() instanceof Tail.Conventional && !(body instanceof Body.PodAndBoom);
        return lies ? Math.min(0.5 * body.width(), 0.5 * breadth(tail)) : 0;
    }

    private static double rise(Surface surface) {
        List<Panel> panels = surface.panels();
        return panels.get(panels.size() - 1).tipZ() - panels.get(0).rootZ();
    }

    private static double breadth(Surface surface) {
        double sum = 0;
        for (int i = 0; i < surface.panels().size(); i++) {
            Panel panel = surface.panels().get(i);
            sum += panel.breadth();
        }
        return sum;
    }

    /** ∫ c (s − from) ds along one half from there to the tip, m³. */
    static double firstMoment(Surface surface, double from) {
        double sum = 0;
        double at = 0;
        for (int i = 0; i < surface.panels().size(); i++) {
            Panel panel = surface.panels().get(i);
            double start = Math.max(at, from);
            double end = at + panel.breadth();
            if (end > start) {
                double b = end - start;
                double c = chord(panel, start - at);
                sum += b * (start - from) * 0.5 * (c + panel.tipChord()) + b * b * (c + 2 * panel.tipChord()) / 6;
            }
            at = end;
        }
        return sum;
    }

    private static double chord(Surface surface, double from) {
        double at = 0;
        for (int i = 0; i < surface.panels().size(); i++) {
            Panel panel = surface.panels().get(i);
            if (from <= at + panel.breadth()) {
                return chord(panel, from - at);
            }
            at += panel.breadth();
        }
        return surface.panels().get(surface.panels().size() - 1).tipChord();
    }

    private static double chord(Panel panel, double from) {
        double breadth = panel.breadth();
        return panel.rootChord() + (breadth > 0 ? from / breadth * (panel.tipChord() - panel.rootChord()) : 0);
    }
}
