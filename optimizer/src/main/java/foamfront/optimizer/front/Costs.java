package foamfront.optimizer.front;

import foamfront.model.appraisal.MeasureValues;
import foamfront.optimizer.study.Aim;

/** Aims as something to be minimised. */
public final class Costs {
    private Costs() {}

    /** The value of an aim's measure, turned so that less is better. */
    public static double of(Aim aim, double value) {
        return aim.most() ? -value : value;
    }

    /** The value of an aim's measure, turned so that less is better. */
    public static double of(Aim aim, MeasureValues values) {
        return of(aim, values.of(aim.measure()));
    }

    /** For example {@code most payload}. */
    static String words(Aim aim) {
        return (aim.most() ? "most " : "least ") + aim.measure().words();
    }
}
