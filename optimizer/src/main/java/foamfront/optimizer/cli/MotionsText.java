package foamfront.optimizer.cli;

import foamfront.model.flight.LateralModes;
import foamfront.model.flight.Motions;
import foamfront.model.flight.ShortPeriod;
import foamfront.model.units.Numbers;
import foamfront.model.units.Unit;
import foamfront.optimizer.front.Show;

/** How an aeroplane answers a disturbance, in sentences. */
final class MotionsText {
    private static final double SLOW = 1000; // s, longer than anybody watches

    private MotionsText() {}

    static String of(Motions motions, Show show) {
        return "After a gust, at " + show.quantity(motions.speed(), Unit.METRE_PER_SECOND) + ", hands off:\n  "
                + pitch(motions.shortPeriod()) + "\n  " + dutch(motions.lateral()) + "\n  "
                + spiral(motions.lateral()) + "\n";
    }

    private static String pitch(ShortPeriod mode) {
        if (Double.isNaN(mode.frequency())) {
            return "pitch diverges: it cannot be flown";
        }
        if (!mode.stable()) {
            return "pitch drifts away from its trim: it balances behind its neutral point and must be flown all the time";
        }
        double period = mode.period();
        return Double.isNaN(period)
                ? "pitch settles without a swing"
                : "pitch swings once in " + seconds(period) + ", damped by " + share(mode.damping()) + " of critical";
    }

    private static String dutch(LateralModes mode) {
        if (!mode.settled()) {
            return "rolling and the turn in a bank run together into one slow swing";
        }
        if (Double.isNaN(mode.dutchFrequency())) {
            return "yaw and roll do not swing together";
        }
        double period = 2
                * Math.PI
                / (mode.dutchFrequency() * Math.sqrt(Math.max(1e-6, 1 - mode.dutchDamping() * mode.dutchDamping())));
        return mode.dutchDamping() >= 1
                ? "yaw settles without a swing"
                : "yaw and roll swing once in " + seconds(period) + ", damped by " + share(mode.dutchDamping())
                        + " of critical";
    }

    private static String spiral(LateralModes mode) {
        if (!mode.settled()) {
            return "what becomes of a bank left alone is not told";
        }
        double doubling = mode.spiralDoubling();
        if (doubling > SLOW) {
            return "a bank dies out by itself";
        }
        return "a bank doubles in " + seconds(doubling);
    }

    private static String seconds(double time) {
        return Numbers.significant(time, 2) + " s";
    }

    private static String share(double damping) {
        return Numbers.significant(damping, 2);
    }
}
