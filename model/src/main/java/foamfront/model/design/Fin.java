package foamfront.model.design;

import static foamfront.model.units.Require.positive;
import static foamfront.model.units.Require.within;

/**
 * Flat-plate fins, their trailing edge over the tail's (tailless: over the wing's), rudder included.
 *
 * @param count how many alike
 * @param height of one, m
 * @param chord at the root, m
 * @param taper tip chord over root chord
 */
public record Fin(int count, double height, double chord, double taper, FinJoint joint) {
    public Fin {
        within("fin count", count, 1, 3, "");
        positive("fin height", height, "m");
        positive("fin chord", chord, "m");
        within("fin taper", taper, 0.05, 3, "");
    }
}
