package foamfront.optimizer.bench;

import foamfront.model.propulsion.Loads;
import foamfront.model.propulsion.OperatingPoint;
import foamfront.model.units.Numbers;
import java.util.Locale;

/** What a sweep comes to, in one sentence, and the cautions that belong to its figures. */
public final class Verdict {
    /** How hard the hardest row works each part, in the order of the sentence. */
    private static final String[] PARTS = {"motor", "controller", "battery"};

    private static final int TIPS = PARTS.length;

    private static final double PERCENT = 100;

    private Verdict() {}

    /** The sentence. */
    public static String of(Sweep sweep) {
        OperatingPoint full = sweep.hardest().at();
        if (!full.reached()) {
            return sweep.stand().words() + " does not run: " + full.outcome().words() + ".";
        }
        String at = sweep.hardest().speed() > 0 ? "at " + speed(sweep.hardest().speed()) : "at rest";
        StringBuilder out = new StringBuilder(String.format(
                Locale.ROOT,
                "%s pulls %s N %s for %s A and %s W",
                sweep.stand().words(),
                Numbers.fixed(full.thrust(), 1),
                at,
                Numbers.fixed(full.batteryCurrent(), 1),
                Numbers.fixed(full.electricalPower(), 0)));
        Point best = sweep.best();
        if (best.efficiency() > 0) {
            out.append(
                            sweep.axis() == Sweep.Axis.AIRSPEED
                                    ? ", is at its best at " + speed(best.speed())
                                    : ", is at its best at " + percent(best.at().throttle()) + " throttle")
                    .append(" where ")
                    .append(percent(best.efficiency()))
                    .append(" of the battery's power becomes thrust");
        }
        return out.append(", and ")
                .append(strain(sweep.stand(), full))
                .append('.')
                .toString();
    }

    private static String strain(Stand stand, OperatingPoint full) {
        double[] loads = {
            stand.massKnown() ? Loads.motor(stand.drive().motor(), full.motorInput()) : 0,
            Loads.controller(stand.drive().controller(), full.motorCurrent()),
            Loads.battery(stand.drive().battery(), full.batteryCurrent()),
            Loads.tip(stand.drive().rotor(), full.rotation())
        };
        int worst = 0;
        for (int i = 1; i < loads.length; i++) {
            worst = loads[i] > loads[worst] ? i : worst;
        }
        String limit = worst == TIPS
                ? "the blades' tips move at " + percent(loads[worst]) + " of the speed they bear"
                : "the " + PARTS[worst] + " works at " + percent(loads[worst]) + " of what it bears";
        return loads[worst] > 1 ? "is asked too much: " + limit : limit;
    }

    /** What a builder must know before holding a meter against it. */
    public static String cautions(Sweep sweep) {
        StringBuilder out = new StringBuilder();
        if (sweep.points().stream().anyMatch(point -> !point.at().insideMeasured())) {
            out.append("Rows marked 'held or extended' lie outside the speeds or advance ratios that were measured.\n");
        }
        if (!sweep.stand().massKnown()) {
            out.append("Without the motor's mass nobody can say how much it bears: give --motor-mass.\n");
        }
        out.append(
                        "Clamp the stand, keep everyone behind the blades' plane and take nothing loose near it; stop when anything")
                .append(" exceeds its rating: current beyond it burns motors, controllers and packs.\n")
                .append(
                        "Charge lithium packs in a fireproof place, never unattended; a swollen, dented or pierced one may burn")
                .append(" hours later: lay it outdoors on stone and do not charge it again.\n");
        return out.toString();
    }

    private static String speed(double si) {
        return Numbers.fixed(si, 1) + " m/s";
    }

    private static String percent(double share) {
        return Numbers.fixed(PERCENT * share, 0) + " %";
    }
}
