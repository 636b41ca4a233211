package foamfront.model.fabrication;

import foamfront.model.airframe.Panel;
import foamfront.model.design.WingSection;
import foamfront.model.parts.Spar;
import foamfront.model.section.SectionShape;

/**
 * The straight piece of stock across a joint of a wing's spar. Where the wing turns up there by β it lies aslant in both halves,
 * as far as it stays between the skins of a folded wing:
 *
 * <pre>l tan(β / 2) ≤ h − d</pre>
 *
 * with the height h inside the fold behind the web, where it lies, and its own height d (derived). At the joint it is half of that
 * rise over the middle, at its ends as much below. On a wing that is cut flat it lies on the board, where wedges of offcut fill
 * the gap (judgement).
 */
public final class Joiner {
    /** A joint that turns by less is straight, rad. */
    private static final double STRAIGHT = 1e-6;

    private Joiner() {}

    /**
     * How far it runs into each half, m; at least its own height, so that what hardly has room is judged as weak.
     *
     * @param wished where the wing is straight, m
     * @param section of the wing
     * @param chord at the joint, m
     * @param board thickness, m
     * @param stock what it is sawn from
     * @param bend by which the outer half turns up or down against the inner, rad
     */
    public static double reach(
            double wished, WingSection section, double chord, double board, Spar stock, double bend) {
        FoldedSection folded = FoldedSection.of(section);
        double turn = Math.abs(bend);
        if (folded == null || turn < STRAIGHT) {
            return wished;
        }
        double room = inside(folded, chord, board, stock) - stock.height();
        return Math.min(wished, Math.max(stock.height(), room / StrictMath.tan(0.5 * turn)));
    }

    /** Between the skins behind the web, whose height falls straight to one board below none at the trailing edge, m. */
    private static double inside(FoldedSection folded, double chord, double board, Spar stock) {
        double height = Folding.insideHeight(chord, folded.thickness(), board);
        double behind = FoldedPanel.besideWeb(board, stock.width()) / ((1 - SectionShape.SPAR_STATION) * chord);
        return height - behind * (height + board);
    }

    /** How far over the middle between the skins it passes the joint, m. */
    static double lift(double reach, double bend) {
        return 0.5 * reach * StrictMath.tan(0.5 * bend);
    }

    /** Dihedral of a panel, rad. */
    public static double rise(Panel panel) {
        return StrictMath.atan2(panel.tipZ() - panel.rootZ(), panel.tipY() - panel.rootY());
    }
}
