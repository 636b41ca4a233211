package foamfront.model.appraisal;

import foamfront.model.aero.LiftingSystem;
import foamfront.model.aero.Resolution;
import foamfront.model.aero.SectionLift;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Surfaces as flat plates of slope 2π without twist: the plain figures that a specialist compares with handbooks. */
final class Inviscid {
    private Inviscid() {}

    static LiftingSystem solve(List<Surface> surfaces) {
        List<Surface> flat = new ArrayList<>();
        for (Surface surface : surfaces) {
            // A tail by itself is its own reference.
            Surface.Role role = surfaces.size() == 1 ? Surface.Role.WING : surface.role();
            flat.add(new Surface(
                    role,
                    surface.section(),
                    surface.panels().stream().map(Inviscid::untwisted).toList(),
                    surface.mirrored(),
                    List.of()));
        }
        LiftingSystem system = new LiftingSystem(Resolution.DEFAULT);
        system.solve(flat, Collections.nCopies(flat.size(), SectionLift.FLAT_PLATE));
        return system;
    }

    static double spanEfficiency(LiftingSystem system) {
        return system.spanEfficiency(0.1, 0, 0);
    }

    private static Panel untwisted(Panel p) {
        return new Panel(
                p.rootX(), p.rootY(), p.rootZ(), p.rootChord(), 0, p.tipX(), p.tipY(), p.tipZ(), p.tipChord(), 0);
    }
}
