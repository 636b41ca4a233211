package foamfront.model.fabrication;

import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Controls of a surface seen by one piece of it. */
final class Hinges {
    /** Less of a control than this on a piece is left to its neighbour, fraction of the piece. */
    private static final double SLIVER = 0.02;

    private Hinges() {}

    /** From root to tip; a surface has two controls at most. */
    static List<Hinge> on(Surface surface, Panel piece) {
        if (surface.controls().isEmpty()) {
            return List.of();
        }
        Panel first = surface.panels().get(0);
        Panel last = surface.panels().get(surface.panels().size() - 1);
        double root = along(surface, first.rootY(), first.rootZ());
        double full = along(surface, last.tipY(), last.tipZ()) - root;
        double start = (along(surface, piece.rootY(), piece.rootZ()) - root) / full;
        double end = (along(surface, piece.tipY(), piece.tipZ()) - root) / full;
        Hinge one = hinge(surface.controls().get(0), start, end);
        Hinge other = surface.controls().size() > 1 ? hinge(surface.controls().get(1), start, end) : null;
        if (one == null || other == null) {
            Hinge lone = one == null ? other : one;
            return lone == null ? List.of() : List.of(lone);
        }
        return other.from() > one.from() ? List.of(one, other) : List.of(other, one);
    }

    /** What a piece between two fractions of the surface's breadth has of a control; null for none. */
    private static @Nullable Hinge hinge(Control control, double start, double end) {
        double from = Math.max(0, (control.from() - start) / (end - start));
        double to = Math.min(1, (control.to() - start) / (end - start));
        return to - from > SLIVER ? new Hinge(control.chordFraction(), snap(from), snap(to)) : null;
    }

    /** A mirrored surface is measured along y, a fin along z. */
    private static double along(Surface surface, double y, double z) {
        return surface.mirrored() ? y : z;
    }

    private static double snap(double fraction) {
        return fraction < SLIVER ? 0 : fraction > 1 - SLIVER ? 1 : fraction;
    }

    /** Controls of both halves of a piece that runs from tip to tip. */
    static List<Hinge> bothSides(List<Hinge> half) {
        List<Hinge> list = new ArrayList<>(4);
        for (int i = half.size() - 1; i >= 0; i--) {
            Hinge h = half.get(i);
            list.add(new Hinge(h.chordFraction(), 0.5 - 0.5 * h.to(), 0.5 - 0.5 * h.from()));
        }
        for (int j = 0; j < half.size(); j++) {
            Hinge h = half.get(j);
            list.add(new Hinge(h.chordFraction(), 0.5 + 0.5 * h.from(), 0.5 + 0.5 * h.to()));
        }
        return list;
    }
}
