package foamfront.optimizer.study;

import foamfront.model.appraisal.Appraisal;
import foamfront.model.design.Drive;
import foamfront.model.mission.Measure;
import foamfront.model.propulsion.PowerTrain;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * What was published of an aeroplane beside its mean power, where prediction needs fewer guesses.
 *
 * @param published the range that the source's words or figure leave open
 * @param format of the figures, with their unit's digits
 */
record FlownResult(
        String aeroplane, String what, String words, Range published, String format, Range predicted, String assumed) {
    private static final double SEA_LEVEL = 1.225; // kg/m³

    /** Resistance of cells over ours (Spread). */
    private static final double[] CELLS = {0.5, 1, 1.5};

    private static final double[] CHARGES = {0.8, 1};

    /** It left the hand without meeting the ground. */
    private static final Range ABOVE_GROUND = new Range(0, 1.8);

    static List<FlownResult> all() {
        return List.of(drag(), current(), roll(), thrown());
    }

    /**
     * Thrust power of the solar glider, W: what its battery gives less avionics, times what propeller (0.78 to 0.85), gear (0.97),
     * motor (0.80 to 0.85) and controller (0.95) of machines built for this leave of it (from memory of its author's tables).
     */
    private static FlownResult drag() {
        Range watts = Range.none();
        for (Appraisal build : FlownSweep.builds(Flown.SOLAR, "surface: tarmac")) {
            double speed = Flown.SOLAR.speeds().low();
            watts.add(speed * FlownTest.at(speed, build.power(), point -> point.required()));
        }
        double least = 0.78 * 0.97 * 0.80 * 0.95;
        double most = 0.85 * 0.97 * 0.85 * 0.95;
        Range published = new Range((16 - 3) * least, (16 - 1) * most);
        return new FlownResult(
                "3.2 m solar motor glider",
                "thrust power in level flight [W]",
                published.words("%.1f") + " of 16 W electrical",
                published,
                "%.1f",
                FlownTest.banded(watts),
                "1 to 3 W of avionics, 0.58 to 0.67 from battery to thrust by its author's tables, from memory; drag only");
    }

    private static FlownResult current() {
        Range amperes = Range.none();
        for (Appraisal build : FlownSweep.builds(Flown.AMPHIBIAN, "surface: tarmac")) {
            Drive drive =
                    Objects.requireNonNull(build.airframe().design().power().drive());
            for (double motor : Flown.MOTOR_RESISTANCE) {
                for (double cells : CELLS) {
                    for (double charge : CHARGES) {
                        amperes.add(PowerTrain.of(drive, 2, Flown.electric(motor, cells), SEA_LEVEL, 0)
                                .fullThrottle(0, charge)
                                .batteryCurrent());
                    }
                }
            }
        }
        return new FlownResult(
                "1.05 m twin amphibian",
                "both motors at full throttle, at rest [A]",
                "24 A",
                new Range(23.5, 24.5),
                "%.1f",
                amperes,
                "6x3 in blades of three families; motors 1.2 to 2.6 times their winding's resistance, cells 0.5 to 1.5 of ours; 80 % to full charge");
    }

    private static FlownResult roll() {
        Range metres = Range.none();
        for (String surface : List.of("tarmac", "short grass")) {
            for (Appraisal build : FlownSweep.builds(Flown.SHORT_FIELD, "surface: " + surface)) {
                metres.add(build.measures().of(Measure.TAKE_OFF_DISTANCE));
            }
        }
        return new FlownResult(
                "1.5 m short-field high wing",
                "take-off roll [m]",
                "< 3 m",
                new Range(0, 3),
                "%.1f",
                metres,
                "tarmac or short grass, no wind, flaps up; mass and area tied by the stall");
    }

    private static FlownResult thrown() {
        Range metres = Range.none();
        for (String arm : List.of("normal", "strong")) {
            for (Appraisal build : FlownSweep.builds(Flown.TWIN, "launch: " + arm)) {
                metres.add(build.measures().of(Measure.LAUNCH_HEIGHT));
            }
        }
        return new FlownResult(
                "1.2 m twin-motor glider",
                "lowest height after a throw from 1.8 m [m]",
                "hand thrown",
                ABOVE_GROUND,
                "%.1f",
                metres,
                "mass and area tied by the stall; two motors of 53 or 71 g on 4 cells");
    }

    String line() {
        double spread = predicted.high() / predicted.low();
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | %s | %.1f | %s | %s |\n",
                aeroplane,
                what,
                words,
                predicted.words(format),
                spread,
                FlownTest.verdict(predicted, published, spread),
                assumed);
    }
}
