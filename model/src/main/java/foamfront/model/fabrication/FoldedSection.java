package foamfront.model.fabrication;

import foamfront.model.design.WingSection;
import foamfront.model.section.SectionShape;
import org.jspecify.annotations.Nullable;

/**
 * The corners of a folded section in fractions of chord: bottom from the trailing edge to the nose, then top from the nose to
 * the trailing edge. A flat-bottomed top bends at 7.5 % and 30 % of chord, at three quarters and all of the outside thickness,
 * and comes down to the bottom's edge; a symmetrical one does so with half the thickness on each side (the worked example 15,
 * 18; 60, 24; 200, 0 mm; judgement).
 *
 * <p>The trailing edge is as high as the board that is left of both skins after bevelling, one board (common practice): a
 * flat-bottomed top ends that high over the underside, a symmetrical one half of it either side of the middle.
 */
final class FoldedSection {
    private final double thickness;
    private final boolean symmetrical;
    private final double end;

    private FoldedSection(double thickness, boolean symmetrical, double end) {
        this.thickness = thickness;
        this.symmetrical = symmetrical;
        this.end = end;
    }

    /** The folded section with a sharp trailing edge, or null for one that is cut flat. */
    static @Nullable FoldedSection of(WingSection section) {
        if (section instanceof WingSection.FoldedFlatBottom flat) {
            return new FoldedSection(flat.thickness(), false, 0);
        }
        if (section instanceof WingSection.FoldedSymmetrical both) {
            return new FoldedSection(both.thickness(), true, 0);
        }
        return null;
    }

    /** The same section ending {@code height} (fraction of chord) high at its trailing edge. */
    FoldedSection ending(double height) {
        return new FoldedSection(thickness, symmetrical, height);
    }

    /** Outside thickness, fraction of chord. */
    double thickness() {
        return thickness;
    }

    /** Corners on the bottom, both ends counted. */
    int bottomCorners() {
        return symmetrical ? 4 : 2;
    }

    /** All corners; the nose counts twice. */
    int corners() {
        return bottomCorners() + 4;
    }

    double x(int corner) {
        if (corner >= bottomCorners()) {
            return station(corner - bottomCorners());
        }
        return station(symmetrical ? 3 - corner : 3 - 3 * corner);
    }

    double z(int corner) {
        double top = symmetrical ? 0.5 * thickness : thickness;
        if (corner >= bottomCorners()) {
            return height(top, corner - bottomCorners());
        }
        return symmetrical ? -height(top, 3 - corner) : 0;
    }

    /** Developed width without the fold allowance, fraction of chord. */
    double developed() {
        double sum = 0;
        for (int i = 1; i < corners(); i++) {
            sum += Outline.distance(x(i - 1), z(i - 1), x(i), z(i));
        }
        return sum;
    }

    private static double station(int i) {
        return i == 0 ? 0 : i == 1 ? SectionShape.FIRST_FOLD : i == 2 ? SectionShape.SPAR_STATION : 1;
    }

    private double height(double top, int i) {
        if (i == 3) {
            return symmetrical ? 0.5 * end : end;
        }
        return i == 1 ? SectionShape.FIRST_HEIGHT * top : i == 2 ? top : 0;
    }
}
