package foamfront.model.airframe;

import foamfront.model.design.Fin;
import foamfront.model.design.Planform;
import foamfront.model.design.TailPlane;
import foamfront.model.design.WingSection;
import java.util.List;

/** Panels from the named dimensions of wings, stabilisers and fins. */
final class SurfaceBuilder {
    private static final WingSection PLATE = new WingSection.FlatPlate();

    private SurfaceBuilder() {}

    static Surface wing(
            Surface.Role role, Planform plan, WingSection section, double x, double z, List<Control> controls) {
        double semispan = 0.5 * plan.span();
        Panel[] panels = new Panel[plan.breaks().size() + 1];
        double at = 0;
        double quarter = x + 0.25 * plan.rootChord();
        double height = z;
        double chord = plan.rootChord();
        double sweep = plan.sweep();
        double dihedral = plan.dihedral();
        for (int i = 0; i < panels.length; i++) {
            boolean last = i == plan.breaks().size();
            double to = last ? 1 : plan.breaks().get(i).at();
            double tip = last ? plan.tipChord() : plan.breaks().get(i).chord();
            double dy = (to - at) * semispan;
            double nextQuarter = quarter + dy * StrictMath.tan(sweep);
            double nextHeight = height + dy * StrictMath.tan(dihedral);
            panels[i] = new Panel(
                    quarter - 0.25 * chord,
                    at * semispan,
                    height,
                    chord,
                    twist(plan, at),
                    nextQuarter - 0.25 * tip,
                    to * semispan,
                    nextHeight,
                    tip,
                    twist(plan, to));
            at = to;
            quarter = nextQuarter;
            height = nextHeight;
            chord = tip;
            if (!last) {
                sweep = plan.breaks().get(i).sweep();
                dihedral = plan.breaks().get(i).dihedral();
            }
        }
        return new Surface(role, section, List.of(panels), true, controls);
    }

    static Surface tail(TailPlane plane, double elevatorChord) {
        Planform plan = new Planform(
                plane.span(),
                plane.chord(),
                plane.taper(),
                plane.sweep(),
                plane.dihedral(),
                plane.incidence(),
                plane.incidence(),
                List.of());
        return wing(
                Surface.Role.TAIL,
                plan,
                PLATE,
                plane.x(),
                plane.z(),
                List.of(new Control(Control.Kind.ELEVATOR, elevatorChord, 0, 1)));
    }

    /** A fin standing on {@code z} at {@code y}, its trailing edge plumb at {@code trailingX}. */
    static Surface fin(Fin fin, double trailingX, double y, double z, List<Control> controls) {
        double tip = fin.taper() * fin.chord();
        Panel panel =
                new Panel(trailingX - fin.chord(), y, z, fin.chord(), 0, trailingX - tip, y, z + fin.height(), tip, 0);
        return new Surface(Surface.Role.FIN, PLATE, List.of(panel), false, controls);
    }

    private static double twist(Planform plan, double at) {
        return plan.incidence() + at * (plan.tipIncidence() - plan.incidence());
    }
}
