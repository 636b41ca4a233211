package foamfront.model.design;

import static foamfront.model.units.Require.finite;
import static foamfront.model.units.Require.positive;
import static foamfront.model.units.Require.within;

import java.util.List;

/**
 * A wing's shape seen from above and in front, symmetric about its root.
 *
 * @param span tip to tip, projected, m
 * @param rootChord m
 * @param taper tip chord over root chord
 * @param sweep of the quarter-chord line, rad
 * @param dihedral of each side, rad
 * @param incidence of the root section's chord line to the body axis, rad
 * @param tipIncidence rad; less than the root's is washout
 * @param breaks from root to tip, where chord, sweep or dihedral change; empty for a straight-tapered wing
 */
public record Planform(
        double span,
        double rootChord,
        double taper,
        double sweep,
        double dihedral,
        double incidence,
        double tipIncidence,
        List<Break> breaks) {
    /**
     * A station where the wing's geometry changes.
     *
     * @param at fraction of the semispan
     * @param chord m
     * @param sweep of the quarter-chord line outboard of the station, rad
     * @param dihedral outboard of the station, rad
     */
    public record Break(double at, double chord, double sweep, double dihedral) {
        public Break {
            within("break", at, 0.02, 0.98, "of the semispan");
            positive("chord at a break", chord, "m");
            within("sweep", sweep, -1.2, 1.2, "rad");
            within("dihedral", dihedral, -1.2, 1.2, "rad");
        }
    }

    public Planform {
        positive("span", span, "m");
        positive("root chord", rootChord, "m");
        within("taper", taper, 0.05, 3, "");
        within("quarter-chord sweep", sweep, -1.2, 1.2, "rad");
        within("dihedral", dihedral, -1.2, 1.2, "rad");
        finite("incidence", incidence);
        finite("tip incidence", tipIncidence);
        breaks = List.copyOf(breaks);
        for (int i = 1; i < breaks.size(); i++) {
            if (!(breaks.get(i).at() > breaks.get(i - 1).at())) {
                throw new IllegalArgumentException("wing breaks must run from root to tip");
            }
        }
    }

    public double tipChord() {
        return taper * rootChord;
    }
}
