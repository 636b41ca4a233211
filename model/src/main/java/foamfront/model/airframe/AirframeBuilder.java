package foamfront.model.airframe;

import foamfront.model.design.Body;
import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import foamfront.model.design.Fin;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Tail;
import foamfront.model.design.TailPlane;
import foamfront.model.design.Wing;
import foamfront.model.design.WingKind;
import foamfront.model.design.WingTips;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Surfaces and body of a design; {@link Stations} places what goes inside and on them. */
final class AirframeBuilder {
    /** Between the outer fins of a tailless wing, of its span. */
    private static final double FIN_SPREAD = 0.6;

    /** Elevons of a delta leave the fin's foot a strip of the tip, of the semispan (common practice). */
    private static final double DELTA_ELEVON_END = 0.97;

    private AirframeBuilder() {}

    static Airframe build(Design design) {
        Surface wing = wing(design);
        List<Surface> surfaces = new ArrayList<>(6);
        surfaces.add(wing);
        double area = wing.area();
        double chordX = chordX(wing);
        if (design.wing() instanceof Wing.Biplane biplane) {
            Surface upper = SurfaceBuilder.wing(
                    Surface.Role.SECOND_WING,
                    biplane.planform(),
                    biplane.build().section(),
                    biplane.x() - biplane.stagger(),
                    biplane.z() + biplane.gap(),
                    wing.controls());
            surfaces.add(upper);
            area += upper.area();
            chordX -= 0.5 * biplane.stagger();
        }
        Surface tail = tail(design);
        if (tail != null) {
            surfaces.add(tail);
        }
        List<Surface> fins = fins(design, wing);
        for (int i = 0; i < fins.size(); i++) {
            surfaces.add(fins.get(i));
        }
        if (design.wing().build().tips() == WingTips.WINGLETS) {
            surfaces.add(Winglet.on(wing, 1));
            surfaces.add(Winglet.on(wing, -1));
        }
        Body body = design.body();
        BodyShape shape = new BodyShape(
                body.length(),
                body.width(),
                body.height(),
                body.bayLength(),
                design.board().thickness(),
                body instanceof Body.TwoBayTube ? 1 : 0);
        Servos servos = Servos.of(design, surfaces);
        double chord = wing.meanAerodynamicChord();
        return new Airframe(
                design,
                wing,
                surfaces,
                tail,
                fins,
                shape,
                servos,
                Stations.of(design, wing, shape, servos),
                area,
                wing.span(),
                chord,
                chordX);
    }

    private static Surface wing(Design design) {
        Wing wing = design.wing();
        return SurfaceBuilder.wing(
                Surface.Role.WING,
                wing.planform(),
                wing.build().section(),
                wing.x(),
                wing.z(),
                wingControls(design.controls(), wing.kind()));
    }

    private static List<Control> wingControls(Controls controls, WingKind kind) {
        Control flap = controls.flaps() == FlapKind.FLAPS
                ? new Control(Control.Kind.FLAP, controls.flapChord(), Controls.FLAP_ROOT, controls.flapEnd())
                : null;
        if (!controls.ailerons()) {
            return flap == null ? List.of() : List.of(flap);
        }
        boolean tailless = kind == WingKind.FLYING_WING || kind == WingKind.DELTA;
        Control.Kind turns = tailless
                ? Control.Kind.ELEVON
                : controls.flaps() == FlapKind.FLAPERONS ? Control.Kind.FLAPERON : Control.Kind.AILERON;
        double inner = 1 - controls.aileronSpan();
        double outer = kind == WingKind.DELTA ? DELTA_ELEVON_END : 1;
        Control aileron = new Control(turns, controls.aileronChord(), inner, outer);
        return flap == null ? List.of(aileron) : List.of(aileron, flap);
    }

    private static @Nullable Surface tail(Design design) {
        double elevator = design.controls().elevatorChord();
        if (design.tail() instanceof Tail.Conventional tail) {
            return SurfaceBuilder.tail(tail.plane(), elevator);
        }
        if (design.tail() instanceof Tail.TTail tail) {
            return SurfaceBuilder.tail(tail.plane(), elevator);
        }
        if (design.tail() instanceof Tail.VTail tail) {
            return SurfaceBuilder.tail(tail.plane(), elevator);
        }
        return null;
    }

    private static List<Surface> fins(Design design, Surface wing) {
        Tail tail = design.tail();
        double top = 0.5 * design.body().tailHeight();
        List<Control> rudder = design.controls().rudder()
                ? List.of(new Control(Control.Kind.RUDDER, design.controls().rudderChord(), 0, 1))
                : List.of();
        if (tail instanceof Tail.Conventional conventional) {
            return row(
                    conventional.fin(),
                    trailing(conventional.plane()),
                    conventional.plane().span(),
                    top,
                    rudder);
        }
        if (tail instanceof Tail.TTail tee) {
            return row(tee.fin(), trailing(tee.plane()), 0, top, rudder);
        }
        if (tail instanceof Tail.None none) {
            double spread = design.wing() instanceof Wing.Delta ? 1 : FIN_SPREAD;
            return onWing(none.fin(), wing, spread, rudder);
        }
        return List.of();
    }

    /** One fin on the centre line, or several spread evenly over {@code spread}. */
    private static List<Surface> row(Fin fin, double trailing, double spread, double z, List<Control> controls) {
        Surface[] row = new Surface[fin.count()];
        for (int i = 0; i < row.length; i++) {
            double y = row.length == 1 ? 0 : spread * ((double) i / (row.length - 1) - 0.5);
            row[i] = SurfaceBuilder.fin(fin, trailing, y, z, controls);
        }
        return List.of(row);
    }

    /**
     * Fins on a tailless wing: one on the centre line, or spread over a share of the span, where the wing's trailing edge is.
     *
     * @param spread 1 for a delta, whose tips are folded up
     */
    private static List<Surface> onWing(Fin fin, Surface wing, double spread, List<Control> controls) {
        List<Surface> list = new ArrayList<>(fin.count());
        for (int i = 0; i < fin.count(); i++) {
            double y = fin.count() == 1 ? 0 : spread * wing.span() * ((double) i / (fin.count() - 1) - 0.5);
            Panel panel = abreast(wing, Math.abs(y));
            double t = (Math.abs(y) - panel.rootY()) / (panel.tipY() - panel.rootY());
            double root = panel.rootX() + panel.rootChord();
            double tip = panel.tipX() + panel.tipChord();
            double z = panel.rootZ() + t * (panel.tipZ() - panel.rootZ());
            list.add(SurfaceBuilder.fin(fin, root + t * (tip - root), y, z, controls));
        }
        return list;
    }

    private static Panel abreast(Surface wing, double y) {
        for (int i = 0; i < wing.panels().size(); i++) {
            Panel panel = wing.panels().get(i);
            if (y <= panel.tipY()) {
                return panel;
            }
        }
        return wing.panels().get(wing.panels().size() - 1);
    }

    private static double trailing(TailPlane plane) {
        return plane.x() + plane.chord();
    }

    /** Leading edge of the mean aerodynamic chord: ∫ x c / ∫ c over the panels, exact for straight edges. */
    private static double chordX(Surface wing) {
        double moment = 0;
        double area = 0;
        for (int i = 0; i < wing.panels().size(); i++) {
            Panel panel = wing.panels().get(i);
            double c1 = panel.rootChord();
            double c2 = panel.tipChord();
            double mean = (panel.rootX() * (2 * c1 + c2) + panel.tipX() * (c1 + 2 * c2)) / (3 * (c1 + c2));
            moment += mean * panel.area();
            area += panel.area();
        }
        return moment / area;
    }
}
