package foamfront.model.fabrication;

import static foamfront.model.fabrication.PatternLine.Kind.BEVEL;
import static foamfront.model.fabrication.PatternLine.Kind.CUT;
import static foamfront.model.fabrication.PatternLine.Kind.FOLD;
import static foamfront.model.fabrication.PatternLine.Kind.TAPE;

import java.util.List;

/**
 * A square-cornered tube wrapped from one board, outer paper as hinge: four sides and a glue tab, so the developed width is the
 * outer perimeter plus the tab and the bends add up to 360°. Where that is wider than the sheet it comes as two angles of two
 * sides and a tab each. Each corner is a V of two 45° walls, 2 t wide at the inner face (derived, {@link Folding}).
 *
 * @param length m
 * @param side outside width, m
 * @param height outside height, m
 * @param thickness of the board, m
 * @param angle whether this is one of two angles rather than the whole wrap
 * @param hatch length of a lid cut in one side on three edges and taped on the fourth, 0 for none, m
 */
public record Tube(double length, double side, double height, double thickness, boolean angle, double hatch)
        implements Pattern {
    /** Glue tab, m (common practice 10 to 15 mm). */
    public static final double TAB = 0.012;

    /** Developed width of a whole wrap of these outside dimensions, m. */
    public static double wrap(double side, double height) {
        return 2 * (side + height) + TAB;
    }

    @Override
    public double width() {
        return angle ? side + height + TAB : wrap(side, height);
    }

    @Override
    public double area() {
        return length * width();
    }

    @Override
    public double cut() {
        return 2 * (length + width()) + 2 * hatch + (hatch > 0 ? lid() : 0);
    }

    @Override
    public double bevelled() {
        return 2 * folded();
    }

    @Override
    public double folded() {
        return folds() * length;
    }

    @Override
    public double taped() {
        return hatch > 0 ? lid() : 0;
    }

    @Override
    public int folds() {
        return angle ? 2 : 4;
    }

    /** Width of the lid: the clear width inside. */
    double lid() {
        return side - 2 * thickness;
    }

    @Override
    public int bevels() {
        return 2 * folds();
    }

    @Override
    public Outline outline() {
        return Outline.rectangle(length, width());
    }

    @Override
    public List<PatternLine> lines() {
        List<PatternLine> lines = outline().cuts();
        double y = 0;
        for (int fold = 0; fold < folds(); fold++) {
            y += fold % 2 == 0 ? side : height;
            lines.add(new PatternLine(FOLD, 0, y, length, y));
            lines.add(new PatternLine(BEVEL, 0, y - thickness, length, y - thickness));
            lines.add(new PatternLine(BEVEL, 0, y + thickness, length, y + thickness));
        }
        if (hatch > 0) {
            double from = 0.5 * (length - hatch);
            lines.add(new PatternLine(CUT, from, thickness, from + hatch, thickness));
            lines.add(new PatternLine(CUT, from, thickness + lid(), from + hatch, thickness + lid()));
            lines.add(new PatternLine(CUT, from, thickness, from, thickness + lid()));
            lines.add(new PatternLine(TAPE, from + hatch, thickness, from + hatch, thickness + lid()));
        }
        return lines;
    }
}
