package foamfront.model.fabrication;

import foamfront.model.design.WingSection;
import foamfront.model.section.SectionShape;

/**
 * Whether board of its thickness can be folded, bent or stepped to a section at one chord: what is left of the
 * narrowest part.
 */
public final class FoldRoom {
    /** Narrowest strip cut by hand, m (common practice). */
    private static final double LEAST_STRIP = 0.010;

    /** Foam that a score without a kerf may crush, m (common practice). */
    static final double MOST_CRUSHED = 0.001;

    private FoldRoom() {}

    /**
     * Room to spare, m; negative where it cannot be made.
     *
     * <p>A fold's first facet has the square nose on one side and the first bend on the other ({@link Folding#leastFacet}). A
     * stepped plate's shorter part is a strip. A curved plate's scores stand a board apart at least and crush at most a
     * millimetre of foam; its radius is that of the arc through its camber, c (1 / 8f + f / 2).
     *
     * @param board thickness, m
     * @param chord m
     */
    public static double of(WingSection section, double board, double chord) {
        if (section instanceof WingSection.FoldedFlatBottom flat) {
            return facet(flat.thickness(), board, chord);
        }
        if (section instanceof WingSection.FoldedSymmetrical both) {
            return facet(0.5 * both.thickness(), board, chord);
        }
        if (section instanceof WingSection.SteppedPlate stepped) {
            return Math.min(stepped.step(), 1 - stepped.step()) * chord - LEAST_STRIP;
        }
        if (section instanceof WingSection.CurvedPlate curved && curved.camber() > 0) {
            double camber = curved.camber();
            double pitch = chord / (PlateParts.ARC_SCORES + 1);
            double radius = chord * (0.125 / camber + 0.5 * camber);
            return Math.min(pitch - board, MOST_CRUSHED - Folding.closingKerf(board, radius, pitch));
        }
        return chord - LEAST_STRIP;
    }

    /** Of the first facet, which rises to three quarters of {@code top}. */
    private static double facet(double top, double board, double chord) {
        double rise = SectionShape.FIRST_HEIGHT * top;
        double first = StrictMath.atan2(rise, SectionShape.FIRST_FOLD);
        double second = StrictMath.atan2(top - rise, SectionShape.SPAR_STATION - SectionShape.FIRST_FOLD);
        double width = chord * Outline.distance(0, 0, SectionShape.FIRST_FOLD, rise);
        return width - Folding.leastFacet(board, 0.5 * Math.PI - first, first - second);
    }
}
