package foamfront.model.structure;

import foamfront.model.factors.Factors;
import foamfront.model.parts.Board;
import foamfront.model.parts.Spar;

/**
 * Strengths against the stresses of {@link WingStress}.
 *
 * <p>Compressed paper: the lesser of its crushing and wrinkling stress. Stock spar: its design stress. Shear at the
 * root divides between boards and spar as the bending does, each piece growing its own moment (dM/dy = V; exact for an
 * even wing). In a fold the boards' part passes the web: V / (H 2 t_f) in its two papers, at half their crushing
 * strength (judgement; a strip laid flat bears at least as much by its core, 30 mm at 0.10 MPa). A plate's part is
 * borne by its core, 0.10 MPa (low end). The spar's by {@link SparShear}.
 *
 * <p>A plug-in wing's boards are cut at the root: there the tube alone carries moment and shear, as {@link JointTube}.
 * Its sleeve bears 0.45 MPa: foam at 0.15 MPa under a card lining three tubes wide (judgement).
 */
final class WingReserve {
    private static final double PAPER_SHEAR = 0.5; // of its compressive strength
    private static final double CORE_SHEAR = 0.10e6; // Pa
    private static final double LINED_BEARING = 0.45e6; // Pa

    private WingReserve() {}

    /** Stress of the faces, film and all, at which the compressed paper fails, Pa: its strain is the film's. */
    static double faceStrength(Board board, Sandwich sandwich, Factors factors) {
        double film = sandwich.faceModulus() / (factors.boardStiffness() * board.faceModulus());
        return Math.min(film * factors.boardStrength() * board.faceStrength(), sandwich.wrinklingStress());
    }

    /** Bending: compressed paper and stock spar, worst section. */
    static double bending(WingStress stress, WingBeam beam, double faceStrength) {
        double paper = StructureMargins.reserve(faceStrength, stress.face());
        Spar spar = beam.spar();
        return spar == null ? paper : Math.min(paper, StructureMargins.reserve(spar.strength(), stress.spar()));
    }

    /** Shear at the root. */
    static double shear(WingStress stress, WingBeam beam, double rootChord, Board board, Factors factors) {
        double share = beam.skinStiffness(rootChord) / beam.bendingStiffness(rootChord);
        double boards = StructureMargins.reserve(
                factors.boardStrength() * boardsBear(beam, rootChord, board), share * stress.rootShear());
        Spar spar = beam.spar();
        return spar == null
                ? boards
                : Math.min(boards, StructureMargins.reserve(SparShear.bears(spar), (1 - share) * stress.rootShear()));
    }

    /** Glue between the boards. */
    static double glue(WingStress stress, Factors factors) {
        return StructureMargins.reserve(factors.boardStrength() * GlueBead.BOND, stress.glue());
    }

    /** Shear force that web or core bears, N. */
    private static double boardsBear(WingBeam beam, double chord, Board board) {
        return beam.isPlate()
                ? CORE_SHEAR * chord * beam.board().depth()
                : PAPER_SHEAR * board.faceStrength() * beam.webHeight(chord) * 2 * board.faceThickness();
    }

    /** Bending of a plug-in tube, and its pressure on the sleeve. */
    static double joint(JointTube joint, Spar tube) {
        return Math.min(
                StructureMargins.reserve(tube.moment(), joint.moment()),
                StructureMargins.reserve(LINED_BEARING, joint.pressure()));
    }

    /** Shear of a plug-in tube. */
    static double jointShear(JointTube joint, Spar tube) {
        return StructureMargins.reserve(SparShear.bears(tube), joint.shear());
    }
}
