package foamfront.model.airframe;

import foamfront.model.design.WingSection;
import java.util.List;

/**
 * A lifting surface: the panels of its starboard half when mirrored, or the whole of it (a fin on the centre line).
 *
 * @param role what it is
 * @param section folded from what
 * @param panels from root to tip
 * @param mirrored whether the other half lies at −y
 * @param controls hinged parts
 */
public record Surface(Role role, WingSection section, List<Panel> panels, boolean mirrored, List<Control> controls) {
    /** What a surface is. */
    public enum Role {
        WING,
        SECOND_WING,
        TAIL,
        FIN
    }

    public Surface {
        panels = List.copyOf(panels);
        controls = List.copyOf(controls);
    }

    /** Whether it is one of the wings. */
    public boolean isWing() {
        return role == Role.WING || role == Role.SECOND_WING;
    }

    /** Both halves' area in their own planes, m². */
    public double area() {
        double sum = 0;
        for (int i = 0; i < panels.size(); i++) {
            Panel panel = panels.get(i);
            sum += panel.area();
        }
        return mirrored ? 2 * sum : sum;
    }

    /** Area of one half between two fractions of its breadth, in its own plane, m². */
    public double areaBetween(double from, double to) {
        double length = 0;
        for (int j = 0; j < panels.size(); j++) {
            Panel panel = panels.get(j);
            length += panel.breadth();
        }
        double passed = 0;
        double sum = 0;
        for (int i = 0; i < panels.size(); i++) {
            Panel panel = panels.get(i);
            double breadth = panel.breadth();
            double inner = Math.max(0, (from * length - passed) / breadth);
            double outer = Math.min(1, (to * length - passed) / breadth);
            if (outer > inner) {
                sum += (outer - inner) * breadth * 0.5 * (panel.chord(inner) + panel.chord(outer));
            }
            passed += breadth;
        }
        return sum;
    }

    /** Its longest chord, which of a wing with a cut-out is not the root's, m. */
    public double longestChord() {
        double longest = 0;
        for (int i = 0; i < panels.size(); i++) {
            Panel panel = panels.get(i);
            longest = Math.max(longest, Math.max(panel.rootChord(), panel.tipChord()));
        }
        return longest;
    }

    /** The panel at a station y of the half that has them, the outermost beyond its tip. */
    Panel panelAt(double y) {
        Panel found = panels.get(0);
        for (int i = 0; i < panels.size(); i++) {
            Panel panel = panels.get(i);
            found = panel.rootY() <= y ? panel : found;
        }
        return found;
    }

    /** Projected span tip to tip when mirrored, height of a fin otherwise, m. */
    public double span() {
        Panel first = panels.get(0);
        Panel last = panels.get(panels.size() - 1);
        return mirrored ? 2 * last.tipY() : last.tipZ() - first.rootZ();
    }

    /** x of the area's mean quarter chord, m: Simpson's rule, exact on straight edges. */
    public double quarterChordX() {
        double sum = 0;
        double area = 0;
        for (int i = 0; i < panels.size(); i++) {
            Panel panel = panels.get(i);
            area += panel.area();
            double root = panel.rootX() + 0.25 * panel.rootChord();
            double tip = panel.tipX() + 0.25 * panel.tipChord();
            double middle = (root + tip) * (panel.rootChord() + panel.tipChord());
            sum += panel.breadth() * (root * panel.rootChord() + middle + tip * panel.tipChord()) / 6;
        }
        return sum / area;
    }

    /** Mean aerodynamic chord ∫c² / ∫c, m. */
    public double meanAerodynamicChord() {
        double square = 0;
        double area = 0;
        for (int i = 0; i < panels.size(); i++) {
            Panel panel = panels.get(i);
            square += panel.chordSquared();
            area += panel.area();
        }
        return square / area;
    }

    public double aspectRatio() {
        double span = span();
        return span * span / area();
    }
}
