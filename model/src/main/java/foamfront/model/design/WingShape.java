package foamfront.model.design;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A straight-tapered wing that bends once along its span and has a piece cut from the trailing edge of its centre, in the
 * dimensions a builder would name; {@link Planform} has it as breaks. A gull has less dihedral outboard, a polyhedral wing
 * more. The cut-out narrows the root and runs out straight to the wing's own trailing edge; the leading edge stays as it is.
 *
 * @param rootChord without the cut-out, m
 * @param taper tip chord over that
 * @param sweep of the quarter-chord line outside the cut-out, rad
 * @param dihedral inboard of the bend, rad
 * @param bend where dihedral changes, fraction of the semispan
 * @param outerDihedral outboard of it, rad; the same as inboard for a wing without a bend
 * @param cutOutDepth at the root, share of its chord; 0 without one
 * @param cutOutBreadth where it has run out, fraction of the semispan
 */
public record WingShape(
        double rootChord,
        double taper,
        double sweep,
        double dihedral,
        double bend,
        double outerDihedral,
        double cutOutDepth,
        double cutOutBreadth) {
    /** How nearly an edge must be straight to be read as one, m. */
    private static final double STRAIGHT = 1e-6;

    /** Nearer than this a bend and the end of a cut-out are one station, fraction of the semispan. */
    private static final double TOGETHER = 1e-6;

    /** As a planform. */
    public Planform planform(double span, double incidence, double tipIncidence) {
        List<Planform.Break> breaks = new ArrayList<>(2);
        boolean cut = cutOutDepth > 0;
        boolean bends = outerDihedral != dihedral;
        boolean together = Math.abs(bend - cutOutBreadth) < TOGETHER;
        double afterBend = bends ? outerDihedral : dihedral;
        double narrow = rootChord * (1 - cutOutDepth);
        // The quarter-chord line starts further ahead at the narrowed root and meets the wing's own past the cut-out.
        double inner = cut
                ? StrictMath.atan(StrictMath.tan(sweep) + (rootChord - narrow) / (2 * span * cutOutBreadth))
                : sweep;
        if (bends && cut && bend < cutOutBreadth - TOGETHER) {
            double chord = narrow + bend / cutOutBreadth * (chord(cutOutBreadth) - narrow);
            breaks.add(new Planform.Break(bend, chord, inner, afterBend));
        }
        if (cut) {
            double beyond = bends && bend <= cutOutBreadth + TOGETHER ? afterBend : dihedral;
            breaks.add(new Planform.Break(cutOutBreadth, chord(cutOutBreadth), sweep, beyond));
        }
        if (bends && !(cut && (together || bend < cutOutBreadth))) {
            breaks.add(new Planform.Break(bend, chord(bend), sweep, afterBend));
        }
        return new Planform(span, narrow, taper / (1 - cutOutDepth), inner, dihedral, incidence, tipIncidence, breaks);
    }

    /** Without the cut-out, m. */
    private double chord(double at) {
        return rootChord * (1 - (1 - taper) * at);
    }

    /** The nearest such shape: exact for a planform that {@link #planform} made. */
    public static WingShape of(Planform plan) {
        double dihedral = plan.dihedral();
        double bend = Double.NaN;
        double outer = dihedral;
        Planform.Break end = cutOutEnd(plan);
        for (Planform.Break at : plan.breaks()) {
            if (Double.isNaN(bend) && at.dihedral() != dihedral) {
                bend = at.at();
                outer = at.dihedral();
            }
        }
        double tip = plan.tipChord();
        if (end == null) {
            return new WingShape(plan.rootChord(), plan.taper(), plan.sweep(), dihedral, bend, outer, 0, Double.NaN);
        }
        double root = wholeRoot(plan, end);
        double depth = 1 - plan.rootChord() / root;
        return new WingShape(root, tip / root, end.sweep(), dihedral, bend, outer, depth, end.at());
    }

    /** The root chord of the straight taper outboard of a break, m. */
    private static double wholeRoot(Planform plan, Planform.Break from) {
        return (from.chord() - from.at() * plan.tipChord()) / (1 - from.at());
    }

    /** The break where a cut-out has run out: the leading edge is straight past it, and the taper outboard asks for more root. */
    private static Planform.@Nullable Break cutOutEnd(Planform plan) {
        double semispan = 0.5 * plan.span();
        for (Planform.Break at : plan.breaks()) {
            double root = wholeRoot(plan, at);
            double quarter = 0.25 * plan.rootChord() + at.at() * semispan * StrictMath.tan(plan.sweep());
            double straight = 0.25 * root + at.at() * semispan * StrictMath.tan(at.sweep());
            if (root > plan.rootChord() + STRAIGHT && Math.abs(quarter - straight) < STRAIGHT) {
                return at;
            }
        }
        return null;
    }
}
