package foamfront.optimizer.bench;

import foamfront.model.design.Drive;
import foamfront.model.propulsion.Cell;
import foamfront.model.propulsion.Loads;
import foamfront.model.propulsion.MotorLaw;
import foamfront.model.propulsion.OperatingPoint;
import foamfront.model.units.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a sweep comes to, in one sentence, and the cautions that belong to its figures. */
public final class Verdict {
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

    /** How hard one part is worked, in words, and over what it bears. */
    private record Strain(double load, String words) {}

    /** All that is asked too much, or else what is nearest to it. */
    private static String strain(Stand stand, OperatingPoint full) {
        List<Strain> all = strains(stand, full);
        List<String> beyond = all.stream()
                .filter(strain -> strain.load() > 1)
                .map(Strain::words)
                .toList();
        if (!beyond.isEmpty()) {
            return "is asked too much: " + String.join("; ", beyond);
        }
        Strain worst = all.get(0);
        for (Strain each : all) {
            worst = each.load() > worst.load() ? each : worst;
        }
        return worst.words();
    }

    private static List<Strain> strains(Stand stand, OperatingPoint full) {
        Drive drive = stand.drive();
        List<Strain> all = new ArrayList<>();
        if (stand.massKnown()) {
            all.add(works("motor", Loads.motor(drive.motor(), full.motorInput())));
            double heat = Loads.motorHeat(drive.motor(), full.motorHeat());
            all.add(new Strain(heat, "the motor heats to " + percent(heat) + " of what it sheds for long"));
        }
        all.add(works("controller", Loads.controller(drive.controller(), full.motorCurrent())));
        all.add(works("battery", Loads.battery(drive.battery(), full.batteryCurrent())));
        double tips = Loads.tip(drive.rotor(), full.rotation());
        all.add(new Strain(tips, "the blades' tips move at " + percent(tips) + " of the speed they bear"));
        double low = Loads.cell(drive.battery(), full.batteryVoltage());
        if (low > 1) {
            String volts = Numbers.fixed(full.batteryVoltage() / drive.battery().cells(), 2);
            all.add(new Strain(
                    low,
                    "the cells fall to " + volts + " V, where the controller cuts off or the pack suffers, below "
                            + Cell.LOWEST_LOADED_VOLTAGE + " V"));
        }
        return all;
    }

    private static Strain works(String part, double load) {
        return new Strain(load, "the " + part + " works at " + percent(load) + " of what it bears");
    }

    /** Where the motor's losses go at the hardest row, and how long it bears them. */
    private static String heat(Sweep sweep) {
        Stand stand = sweep.stand();
        Point hardest = sweep.hardest();
        MotorLaw law = stand.motor();
        StringBuilder out = new StringBuilder("At full throttle")
                .append(stand.motors() > 1 ? " each motor's winding takes " : " the motor's winding takes ")
                .append(Numbers.fixed(hardest.copperLoss(law), 0))
                .append(" W as heat and its iron ")
                .append(Numbers.fixed(hardest.ironLoss(law), 0))
                .append(" W");
        if (stand.massKnown()) {
            double heat = hardest.at().motorHeat();
            out.append(": ")
                    .append(percent(Loads.motorHeat(stand.drive().motor(), heat)))
                    .append(" of what it sheds for long, ")
                    .append(percent(Loads.motorHeatBurst(stand.drive().motor(), heat)))
                    .append(" of what it bears for 30 s");
        }
        return out.append(".\n").toString();
    }

    /** What a builder must know before holding a meter against it. */
    public static String cautions(Sweep sweep) {
        StringBuilder out = new StringBuilder();
        if (sweep.hardest().at().reached()) {
            out.append(heat(sweep));
        }
        if (sweep.points().stream().anyMatch(point -> !point.at().insideMeasured())) {
            out.append("Rows marked 'held or extended' lie outside the speeds or advance ratios that were measured.\n");
        }
        if (!sweep.stand().massKnown()) {
            out.append("Without the motor's mass nobody can say how much it bears: give --motor-mass.\n");
        }
        out.append(
                        "What parts bear is the trade's practice or recalled, not measured: 5 W per gram of motor, a quarter of it as heat, half of")
                .append(" a pack's label up to 30 C, the tip speed of a blade family. The makers' sheets come first.\n")
                .append(
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
