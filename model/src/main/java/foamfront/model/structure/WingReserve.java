package foamfront.model.structure;

import foamfront.model.design.WingBuild;
import foamfront.model.design.WingJoint;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Board;
import foamfront.model.parts.Spar;

/**
 * Strengths against the stresses of {@link WingStress}.
 *
 * <p>Compressed paper: the lesser of its crushing and wrinkling stress. Stock spar: its design stress; a plug-in joint hangs on the
 * spar alone. Shear at the root: a strip on edge by its two papers, at half their crushing strength (judgement); a
 * plate by its core, 0.10 MPa (low end); a stock spar by twice the mean over its section against 3 % of its
 * design stress (41 of 1370 MPa, one supplier's figures for pultruded carbon). Joint sleeve: p = 6 M / (d l²), a linear couple over one
 * root chord (derived), against 0.45 MPa of foam at 0.15 MPa under a card lining three tubes wide (judgement).
 */
final class WingReserve {
    private static final double PAPER_SHEAR = 0.5; // of its compressive strength
    private static final double CORE_SHEAR = 0.10e6; // Pa
    private static final double SPAR_SHEAR = 0.03; // of its design stress
    private static final double LINED_BEARING = 0.45e6; // Pa

    private WingReserve() {}

    /** Stress at which the compressed paper fails, Pa. */
    static double faceStrength(Board board, Sandwich sandwich, Factors factors) {
        return Math.min(factors.boardStrength() * board.faceStrength(), sandwich.wrinklingStress());
    }

    /** Bending: compressed paper and stock spar, worst section. */
    static double bending(WingStress stress, WingBeam beam, WingBuild build, double faceStrength) {
        double least = StructureMargins.reserve(faceStrength, stress.face());
        Spar spar = beam.spar();
        if (spar != null) {
            least = Math.min(least, StructureMargins.reserve(spar.strength(), stress.spar()));
            if (build.joint() == WingJoint.PLUG_IN) {
                least = Math.min(least, StructureMargins.reserve(spar.moment(), stress.rootMoment()));
            }
        }
        return least;
    }

    /** Shear at the root. */
    static double shear(WingStress stress, WingBeam beam, double rootChord, Board board, Factors factors) {
        double v = stress.rootShear();
        Spar spar = beam.spar();
        double sparBears = spar == null ? 0 : 0.5 * SPAR_SHEAR * spar.strength() * spar.linearMass() / spar.density();
        if (!beam.isPlate()) {
            double height = beam.stripHeight(rootChord);
            double strip =
                    PAPER_SHEAR * factors.boardStrength() * board.faceStrength() * height * 2 * board.faceThickness();
            return StructureMargins.reserve(spar == null ? strip : sparBears, v);
        }
        double core =
                CORE_SHEAR * factors.boardStrength() * rootChord * beam.board().depth();
        double share = beam.skinStiffness(rootChord) / beam.bendingStiffness(rootChord);
        double plate = StructureMargins.reserve(core, share * v);
        return spar == null ? plate : Math.min(plate, StructureMargins.reserve(sparBears, (1 - share) * v));
    }

    /** Bearing of a plug-in tube in its sleeve. */
    static double joint(WingStress stress, WingBeam beam, WingBuild build, double engaged) {
        Spar spar = beam.spar();
        if (spar == null || build.joint() != WingJoint.PLUG_IN) {
            return StructureMargins.UNLOADED;
        }
        return StructureMargins.reserve(LINED_BEARING, bearing(stress.rootMoment(), spar.height(), engaged));
    }

    /** Peak bearing pressure of a rod of diameter d, engaged over l, under a moment: 6 M / (d l²), Pa. */
    static double bearing(double moment, double diameter, double engaged) {
        return 6 * moment / (diameter * engaged * engaged);
    }
}
