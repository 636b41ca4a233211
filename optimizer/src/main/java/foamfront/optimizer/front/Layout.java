package foamfront.optimizer.front;

import foamfront.model.design.Design;
import foamfront.model.design.PowerKind;
import foamfront.model.design.TailKind;

/** The arrangement of a design as people say it: wing, tail and power. */
public final class Layout {
    private Layout() {}

    public static String words(Design design) {
        TailKind tail = design.tail().kind();
        PowerKind power = design.power().kind();
        return design.wing().kind().words()
                + (tail == TailKind.NONE ? "" : ", " + tail.words() + " tail")
                + ", "
                + (power == PowerKind.NONE ? "no motor" : power.words());
    }
}
