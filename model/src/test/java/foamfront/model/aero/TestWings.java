package foamfront.model.aero;

import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.WingSection;
import java.util.ArrayList;
import java.util.List;

/** Surfaces for tests, their root quarter chord at a given x. */
final class TestWings {
    static final List<SectionLift> PLATE = List.of(SectionLift.FLAT_PLATE);
    static final List<SectionLift> PLATES = List.of(SectionLift.FLAT_PLATE, SectionLift.FLAT_PLATE);

    private TestWings() {}

    /** A tapered wing at the origin; sweep of the quarter chord in degrees. */
    static Surface wing(double aspectRatio, double taper, double sweep) {
        return surface(Surface.Role.WING, aspectRatio, taper, sweep, 0.3, 0, 0, 0);
    }

    static Surface surface(
            Surface.Role role,
            double aspectRatio,
            double taper,
            double sweep,
            double area,
            double x,
            double z,
            double dihedral) {
        double span = Math.sqrt(aspectRatio * area);
        double root = 2 * area / (span * (1 + taper));
        double tip = root * taper;
        double half = 0.5 * span;
        double tipX = x + half * Math.tan(Math.toRadians(sweep)) - 0.25 * tip;
        double tipZ = z + half * Math.tan(Math.toRadians(dihedral));
        Panel panel = new Panel(x - 0.25 * root, 0, z, root, 0, tipX, half, tipZ, tip, 0);
        return of(role, List.of(panel));
    }

    static Surface of(Surface.Role role, List<Panel> panels) {
        return new Surface(role, new WingSection.FlatPlate(), panels, true, List.of());
    }

    static Surface twisted(Surface surface, double root, double tip) {
        Panel p = surface.panels().get(0);
        return of(
                surface.role(),
                List.of(new Panel(
                        p.rootX(),
                        p.rootY(),
                        p.rootZ(),
                        p.rootChord(),
                        root,
                        p.tipX(),
                        p.tipY(),
                        p.tipZ(),
                        p.tipChord(),
                        tip)));
    }

    static Surface with(Surface surface, Control control) {
        return new Surface(surface.role(), surface.section(), surface.panels(), surface.mirrored(), List.of(control));
    }

    /** The same surface in a number of collinear pieces. */
    static Surface split(Surface surface, int pieces) {
        Panel p = surface.panels().get(0);
        List<Panel> parts = new ArrayList<>();
        for (int k = 0; k < pieces; k++) {
            parts.add(part(p, k / (double) pieces, (k + 1) / (double) pieces));
        }
        return of(surface.role(), parts);
    }

    private static Panel part(Panel p, double from, double to) {
        return new Panel(
                at(p.rootX(), p.tipX(), from),
                at(p.rootY(), p.tipY(), from),
                at(p.rootZ(), p.tipZ(), from),
                at(p.rootChord(), p.tipChord(), from),
                at(p.rootTwist(), p.tipTwist(), from),
                at(p.rootX(), p.tipX(), to),
                at(p.rootY(), p.tipY(), to),
                at(p.rootZ(), p.tipZ(), to),
                at(p.rootChord(), p.tipChord(), to),
                at(p.rootTwist(), p.tipTwist(), to));
    }

    private static double at(double root, double tip, double t) {
        return root + (tip - root) * t;
    }

    /** An elliptic wing with a straight quarter-chord line, in straight pieces that crowd at the tip. */
    static Surface elliptic(double span, double area, int pieces) {
        double root = 4 * area / (Math.PI * span);
        List<Panel> parts = new ArrayList<>();
        for (int k = 0; k < pieces; k++) {
            double in = 0.5 * Math.PI * k / pieces;
            double out = 0.5 * Math.PI * (k + 1) / pieces;
            double a = root * Math.cos(in);
            double b = root * Math.max(Math.cos(out), 1e-3);
            double half = 0.5 * span;
            parts.add(new Panel(-0.25 * a, half * Math.sin(in), 0, a, 0, -0.25 * b, half * Math.sin(out), 0, b, 0));
        }
        return of(Surface.Role.WING, parts);
    }

    static LiftingSystem solved(Resolution resolution, Surface... surfaces) {
        LiftingSystem system = new LiftingSystem(resolution);
        List<SectionLift> sections = new ArrayList<>();
        for (int i = 0; i < surfaces.length; i++) {
            sections.add(SectionLift.FLAT_PLATE);
        }
        system.solve(List.of(surfaces), sections);
        return system;
    }

    static LiftingSystem solved(Surface... surfaces) {
        return solved(Resolution.DEFAULT, surfaces);
    }
}
