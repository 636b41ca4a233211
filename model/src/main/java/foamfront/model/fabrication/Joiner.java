package foamfront.model.fabrication;

import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.WingSection;
import foamfront.model.parts.Spar;
import foamfront.model.section.SectionShape;
import java.util.List;

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

    /** Rises whose product with the other's breadth differs by less are one line, m². */
    private static final double SAME_RISE = 1e-9;

    private Joiner() {}

    /**
     * How much of a plug-in wing's tube lies in each half, m: a root chord, or as much of the half as is straight and has room.
     *
     * @param wing its half
     * @param board thickness, m
     */
    public static double plugged(Surface wing, double board, Spar tube) {
        List<Panel> panels = wing.panels();
        Panel root = panels.get(0);
        double straight = 0;
        for (int i = 0; i < straightUntil(panels, 0); i++) {
            straight += panels.get(i).breadth();
        }
        double wished = Math.min(root.rootChord(), straight);
        return reach(wished, wing.section(), root.rootChord(), board, tube, 2 * rise(root));
    }

    /** One past the last panel that goes on as the one at {@code from}, seen from ahead. */
    static int straightUntil(List<Panel> panels, int from) {
        Panel first = panels.get(from);
        int to = from + 1;
        while (to < panels.size() && !bends(first, panels.get(to))) {
            to++;
        }
        return to;
    }

    private static boolean bends(Panel one, Panel other) {
        double rise = (one.tipZ() - one.rootZ()) * (other.tipY() - other.rootY());
        return Math.abs(rise - (other.tipZ() - other.rootZ()) * (one.tipY() - one.rootY())) > SAME_RISE;
    }

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
