package foamfront.model.design;

import static foamfront.model.units.Require.finite;
import static foamfront.model.units.Require.positive;
import static foamfront.model.units.Require.within;

/**
 * A flat-plate stabiliser, symmetric about its root.
 *
 * @param span tip to tip, projected, m
 * @param chord at the root, m
 * @param taper tip chord over root chord
 * @param sweep of the quarter-chord line, rad
 * @param dihedral of each side, rad
 * @param incidence to the body axis, rad
 * @param x of the root's leading edge from the nose, m
 * @param z of the root over the body axis, m
 */
public record TailPlane(
        double span, double chord, double taper, double sweep, double dihedral, double incidence, double x, double z) {
    public TailPlane {
        positive("tail span", span, "m");
        positive("tail chord", chord, "m");
        within("tail taper", taper, 0.05, 3, "");
        within("tail sweep", sweep, -1.2, 1.2, "rad");
        within("tail dihedral", dihedral, -1.2, 1.2, "rad");
        finite("tail incidence", incidence);
        finite("tail x", x);
        finite("tail z", z);
    }
}
