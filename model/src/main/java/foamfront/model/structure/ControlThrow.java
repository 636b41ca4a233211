package foamfront.model.structure;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import java.util.ArrayList;
import java.util.List;

/**
 * One kind of control as it is set up: its size, the throw for a first flight and the full one, and what it asks of its servo.
 * First-flight throws are common practice: elevator and elevons 10° (8 to 12), ailerons 12° (10 to 15), rudder 22° (20 to 25),
 * flaps 30° (15 to 45), with {@value #EXPO} % of expo.
 *
 * @param kind what it does
 * @param area of all alike, m²
 * @param share of the surface that carries it
 * @param chord of the control at its inner end, where its throw is measured, m
 * @param first throw, rad
 * @param full travel, rad
 * @param hingeMoment of one side at full travel and top speed, N m
 */
public record ControlThrow(
        Control.Kind kind, double area, double share, double chord, double first, double full, double hingeMoment) {
    /** Softening of the stick about its centre for a first flight, percent (30 to 40, common practice). */
    public static final int EXPO = 30;

    private static final double RADIAN = Math.PI / 180;

    /** Every kind of control, in the order of the surfaces that carry them. */
    public static List<ControlThrow> of(Airframe airframe, FlightLoads loads) {
        List<ControlThrow> list = new ArrayList<>();
        for (Surface surface : airframe.surfaces()) {
            for (Control control : surface.controls()) {
                boolean listed = list.stream().anyMatch(other -> other.kind() == control.kind());
                if (!listed) {
                    list.add(one(airframe, surface, control, loads));
                }
            }
        }
        return list;
    }

    private static ControlThrow one(Airframe airframe, Surface surface, Control control, FlightLoads loads) {
        double area = 0;
        double all = 0;
        for (Surface other : airframe.surfaces()) {
            for (Control like : other.controls()) {
                if (like.kind() == control.kind()) {
                    int halves = other.role() == Surface.Role.FIN ? 1 : 2;
                    area += halves * area(other, like);
                    all += halves * half(other);
                }
            }
        }
        return new ControlThrow(
                control.kind(),
                area,
                area / all,
                control.chordFraction() * chord(surface, control.from()),
                first(control.kind()),
                ServoLoad.travel(control.kind()),
                ServoLoad.moment(surface, control, loads));
    }

    /** How far the trailing edge moves at an angle, m. */
    public double atTrailingEdge(double angle) {
        return chord * StrictMath.sin(angle);
    }

    private static double first(Control.Kind kind) {
        return RADIAN
                * switch (kind) {
                    case ELEVATOR, ELEVON -> 10;
                    case AILERON, FLAPERON -> 12;
                    case RUDDER -> 22;
                    case FLAP -> 30;
                };
    }

    private static double half(Surface surface) {
        double sum = 0;
        for (Panel panel : surface.panels()) {
            sum += panel.breadth() * 0.5 * (panel.rootChord() + panel.tipChord());
        }
        return sum;
    }

    private static double breadth(Surface surface) {
        double sum = 0;
        for (Panel panel : surface.panels()) {
            sum += panel.breadth();
        }
        return sum;
    }

    /** Of the control on one half: chord straight within each panel. */
    private static double area(Surface surface, Control control) {
        double whole = breadth(surface);
        double at = 0;
        double sum = 0;
        for (Panel panel : surface.panels()) {
            double from = Math.max(at, control.from() * whole);
            double to = Math.min(at + panel.breadth(), control.to() * whole);
            if (to > from) {
                sum += (to - from) * chord(surface, 0.5 * (from + to) / whole);
            }
            at += panel.breadth();
        }
        return control.chordFraction() * sum;
    }

    /** Chord of the surface at a fraction of its semispan, m. */
    private static double chord(Surface surface, double fraction) {
        double y = fraction * breadth(surface);
        Panel last = surface.panels().get(0);
        double at = 0;
        for (Panel panel : surface.panels()) {
            last = panel;
            if (y <= at + panel.breadth()) {
                return panel.rootChord() + (y - at) / panel.breadth() * (panel.tipChord() - panel.rootChord());
            }
            at += panel.breadth();
        }
        return last.tipChord();
    }
}
