package foamfront.model.airframe;

import foamfront.model.design.Tail;
import foamfront.model.section.SectionShape;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether one surface of an aeroplane stands inside another, which no lifting system makes sense of: two of wings and
 * stabiliser, or a tail's fin and a wing. Surfaces are compared abreast of each other at evenly spaced stations.
 *
 * @param words what crosses what, as the rest of a sentence
 * @param depth longest part of their chords that lies abreast of each other where they cross, m: moved by so much they are clear
 */
public record Crossing(String words, double depth) {
    private static final int STATIONS = 32;

    /** The deepest, or null where all stand clear. */
    public static @Nullable Crossing of(Airframe airframe) {
        @Nullable Crossing deepest = null;
        double board = airframe.design().board().thickness();
        List<Surface> surfaces = airframe.surfaces();
        for (int i = 0; i < surfaces.size(); i++) {
            for (int k = 0; k < i; k++) {
                Surface one = surfaces.get(k);
                Surface other = surfaces.get(i);
                if (one.mirrored() && other.mirrored()) {
                    deepest = deeper(deepest, "the ", other, one, shared(one, other, board));
                }
            }
        }
        if (!(airframe.design().tail() instanceof Tail.None)) {
            for (int m = 0; m < airframe.fins().size(); m++) {
                Surface fin = airframe.fins().get(m);
                for (int j = 0; j < surfaces.size(); j++) {
                    Surface wing = surfaces.get(j);
                    if (wing.isWing()) {
                        deepest = deeper(
                                deepest, "a ", fin, wing, pierced(fin.panels().get(0), wing));
                    }
                }
            }
        }
        return deepest;
    }

    private static @Nullable Crossing deeper(
            @Nullable Crossing before, String article, Surface inner, Surface outer, double depth) {
        return depth <= (before == null ? 0 : before.depth())
                ? before
                : new Crossing(article + name(inner) + " stands in the " + name(outer), depth);
    }

    /** Longest chord shared where two surfaces meet, m; 0 where they do not. */
    private static double shared(Surface one, Surface other, double board) {
        double reach = 0.5 * Math.min(one.span(), other.span());
        double before = Double.NaN;
        double shared = 0;
        for (int k = 0; k <= STATIONS; k++) {
            double y = reach * k / STATIONS;
            Panel a = one.panelAt(y);
            Panel b = other.panelAt(y);
            double apart = Double.NaN;
            double overlap = overlap(a, a.along(y), b, b.along(y));
            if (overlap > 0) {
                apart = b.height(y) - a.height(y);
                double thick = 0.5 * (thickness(one, a, y, board) + thickness(other, b, y, board));
                if (Math.abs(apart) < thick || apart * before < 0) {
                    shared = Math.max(shared, overlap);
                }
            }
            before = apart;
        }
        return shared;
    }

    private static double pierced(Panel fin, Surface wing) {
        double y = Math.abs(fin.rootY());
        if (y > 0.5 * wing.span()) {
            return 0;
        }
        Panel panel = wing.panelAt(y);
        double z = panel.height(y);
        return z > fin.rootZ() && z < fin.tipZ() ? overlap(panel, panel.along(y), fin, 0) : 0;
    }

    /** Length of the stream that two chords share, m. */
    private static double overlap(Panel a, double s, Panel b, double t) {
        double ahead = Math.max(a.leadingEdge(s), b.leadingEdge(t));
        double behind = Math.min(a.leadingEdge(s) + a.chord(s), b.leadingEdge(t) + b.chord(t));
        return Math.max(0, behind - ahead);
    }

    private static double thickness(Surface surface, Panel panel, double y, double board) {
        double chord = panel.chord(panel.along(y));
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
