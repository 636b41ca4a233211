package foamfront.model.airframe;

import foamfront.model.design.Design;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One design's geometry, derived once and read by everything after it.
 *
 * @param design what it came from
 * @param wing the (lower) wing
 * @param surfaces every lifting surface: wings first, then tail, then fins, then winglets, which are fins on the tips
 * @param tail the stabiliser, or null for a tailless aeroplane
 * @param fins alike; empty for a V-tail
 * @param body outside of the body
 * @param servos how many move the surfaces
 * @param stations where things sit
 * @param area reference area: all wings, projected, m²
 * @param span reference span, m
 * @param chord mean aerodynamic chord of the wing, m
 * @param chordX leading edge of that chord, a biplane's half-way between its wings', m from the nose
 */
public record Airframe(
        Design design,
        Surface wing,
        List<Surface> surfaces,
        @Nullable Surface tail,
        List<Surface> fins,
        BodyShape body,
        Servos servos,
        Stations stations,
        double area,
        double span,
        double chord,
        double chordX) {
    /** Chord of a strut that ties a biplane's wings or carries a float, m (common practice, as cut). */
    public static final double STRUT_CHORD = 0.030;

    public Airframe {
        surfaces = List.copyOf(surfaces);
        fins = List.copyOf(fins);
    }

    /** Height of the wings over the body axis, mean by area, m. */
    public double wingHeight() {
        double moment = 0;
        double sum = 0;
        for (int i = 0; i < surfaces.size(); i++) {
            Surface surface = surfaces.get(i);
            for (int k = 0; surface.isWing() && k < surface.panels().size(); k++) {
                Panel panel = surface.panels().get(k);
                moment += panel.area() * 0.5 * (panel.rootZ() + panel.tipZ());
                sum += panel.area();
            }
        }
        return moment / sum;
    }

    public static Airframe of(Design design) {
        return AirframeBuilder.build(design);
    }
}
