package foamfront.model.airframe;

import foamfront.model.design.Tail;
import foamfront.model.section.SectionShape;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether one surface of an aeroplane stands inside another, which no lifting system makes sense of: two of wings and
 * stabiliser, or a tail's fin and a wing. Surfaces are compared abreast of each other at evenly spaced stations.
 */
public final class Crossing {
    private static final int STATIONS = 32;

    private Crossing() {}

    /** What crosses what, as the rest of a sentence, or null where all stand clear. */
    public static @Nullable String of(Airframe airframe) {
        double board = airframe.design().board().thickness();
        List<Surface> surfaces = airframe.surfaces();
        for (int i = 0; i < surfaces.size(); i++) {
            for (int k = 0; k < i; k++) {
                Surface one = surfaces.get(k);
                Surface other = surfaces.get(i);
                if (one.mirrored() && other.mirrored() && meet(one, other, board)) {
                    return "the " + name(other) + " stands in the " + name(one);
                }
            }
        }
        if (!(airframe.design().tail() instanceof Tail.None)) {
            for (Surface fin : airframe.fins()) {
                for (Surface wing : surfaces) {
                    if (wing.isWing() && pierces(fin.panels().get(0), wing)) {
                        return "a fin stands in the " + name(wing);
                    }
                }
            }
        }
        return null;
    }

    private static boolean meet(Surface one, Surface other, double board) {
        double reach = 0.5 * Math.min(one.span(), other.span());
        double before = Double.NaN;
        for (int k = 0; k <= STATIONS; k++) {
            double y = reach * k / STATIONS;
            Panel a = abreast(one, y);
            Panel b = abreast(other, y);
            double apart = Double.NaN;
            if (overlap(a, along(a, y), b, along(b, y))) {
                apart = height(b, y) - height(a, y);
                double thick = 0.5 * (thickness(one, a, y, board) + thickness(other, b, y, board));
                if (Math.abs(apart) < thick || apart * before < 0) {
                    return true;
                }
            }
            before = apart;
        }
        return false;
    }

    private static boolean pierces(Panel fin, Surface wing) {
        double y = Math.abs(fin.rootY());
        if (y > 0.5 * wing.span()) {
            return false;
        }
        Panel panel = abreast(wing, y);
        double z = height(panel, y);
        return z > fin.rootZ() && z < fin.tipZ() && overlap(panel, along(panel, y), fin, 0);
    }

    /** Whether two chords share a length of the stream. */
    private static boolean overlap(Panel a, double s, Panel b, double t) {
        double ahead = Math.max(a.leadingEdge(s), b.leadingEdge(t));
        double behind = Math.min(a.leadingEdge(s) + a.chord(s), b.leadingEdge(t) + b.chord(t));
        return ahead < behind;
    }

    private static Panel abreast(Surface surface, double y) {
        Panel found = surface.panels().get(0);
        for (Panel panel : surface.panels()) {
            found = panel.rootY() <= y ? panel : found;
        }
        return found;
    }

    private static double along(Panel panel, double y) {
        return (y - panel.rootY()) / (panel.tipY() - panel.rootY());
    }

    private static double height(Panel panel, double y) {
        return panel.rootZ() + along(panel, y) * (panel.tipZ() - panel.rootZ());
    }

    private static double thickness(Surface surface, Panel panel, double y, double board) {
        double chord = panel.chord(along(panel, y));
        return chord * SectionShape.of(surface.section(), board, chord).thickness();
    }

    private static String name(Surface surface) {
        return switch (surface.role()) {
            case WING -> "wing";
            case SECOND_WING -> "upper wing";
            case TAIL -> "tail";
            case FIN -> "fin";
        };
    }
}
