package foamfront.model.structure;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Wing;
import foamfront.model.design.WingBuild;
import foamfront.model.design.WingJoint;
import foamfront.model.fabrication.Joiner;
import foamfront.model.fabrication.SheetMargins;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Board;
import foamfront.model.parts.Spar;
import java.util.List;

/**
 * Where pieces of a wing meet end to end: the halves of a glued wing, panels, and pieces of a panel longer than the sheet. Strips of
 * tape along the joint, 24 mm on either piece, pull on one side, the boards press on the other (more than tape pulls); the pull
 * by {@link Lap}, the lever of a fold its mean height ({@link FoldJoint}), of a plate its papers' distance and what a step or an arc
 * adds. Braces of board on both sides of the web are not counted: by themselves they bear a tenth of it.
 *
 * <p>A stock spar bears its share past a joint of the skins. Where it ends too, in the middle of a wing that bends up, its joiner
 * bears what the glue over its reach l does, M = p l² / 6 ({@link JointTube} without shear), p the bond over its
 * width and a fillet on either side, beside what the tape bears: tape stretches and glue creeps before they let go (judgement).
 * Shear goes through the braces or the body.
 */
final class ButtJoint {
    private static final double TAPED = 0.024; // m, half of a strip's width

    /** Developed width of a folded section over its chord, at most (2.0 to 2.15, derived from folds). */
    private static final double DEVELOPED = 2.15;

    private static final double JOINER_DIAMETERS = 15;

    private ButtJoint() {}

    /** Strength over load of the weakest. */
    static double reserve(
            Airframe airframe, Surface wing, WingBeam beam, SpanLoad load, WingStress.Forces forces, Factors factors) {
        if (airframe.design().wing() instanceof Wing.Delta) {
            return StructureMargins.UNLOADED; // of one sheet
        }
        WingBuild build = airframe.design().wing().build();
        Board board = airframe.design().board();
        double pull = factors.boardStrength() * Lap.tape(beam.board(), TAPED);
        List<Panel> panels = wing.panels();
        Panel root = panels.get(0);
        double least = StructureMargins.UNLOADED;
        double chord = root.rootChord();
        if (build.joint() == WingJoint.ONE_PIECE && !whole(wing, board, beam)) {
            double moment = load.moment(forces, 0);
            double tape = pull * chord * beam.buttLever(chord);
            Spar spar = beam.spar();
            if (spar == null) {
                least = StructureMargins.reserve(tape, moment);
            } else if (root.rootZ() == root.tipZ() && 2 * root.breadth() <= spar.length()) {
                least = StructureMargins.reserve(tape, moment * share(beam, chord));
            } else {
                double bend = 2 * Joiner.rise(root);
                double reach = Joiner.reach(
                        JOINER_DIAMETERS * spar.height(), build.section(), chord, board.thickness(), spar, bend);
                double line = factors.boardStrength() * GlueBead.BOND * beam.besideSpar(spar.height());
                double joiner = Math.min(spar.moment(), line * reach * reach / 6);
                least = StructureMargins.reserve(tape + joiner, moment);
            }
        }
        double along = SheetMargins.usable(board.length());
        for (int i = 0; i < panels.size(); i++) {
            Panel panel = panels.get(i);
            double pieces = Math.max(1, Math.ceil(panel.breadth() / along - 1e-9));
            double from = i > 0 ? 0 : 1 / pieces;
            if (from < 1) {
                double y = panel.rootY() + from * (panel.tipY() - panel.rootY());
                double c = panel.rootChord() + from * (panel.tipChord() - panel.rootChord());
                double moment = load.moment(forces, y) * share(beam, c);
                least = Math.min(least, StructureMargins.reserve(pull * c * beam.buttLever(c), moment));
            }
        }
        return least;
    }

    private static double share(WingBeam beam, double chord) {
        return beam.skinStiffness(chord) / beam.bendingStiffness(chord);
    }

    /** Whether both halves surely come out of the sheet in one. */
    private static boolean whole(Surface wing, Board board, WingBeam beam) {
        Panel p = wing.panels().get(0);
        boolean level = wing.panels().size() == 1 && p.rootZ() == p.tipZ();
        boolean even = p.rootX() == p.tipX() && p.rootChord() == p.tipChord();
        double width = beam.isPlate() ? p.rootChord() + Math.abs(p.tipX() - p.rootX()) : DEVELOPED * p.rootChord();
        return level
                && (even || beam.isPlate())
                && 2 * p.breadth() <= SheetMargins.usable(board.length())
                && width <= SheetMargins.usable(board.width());
    }
}
