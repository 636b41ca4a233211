package foamfront.model.propulsion;

import static foamfront.model.units.Unit.*;

import foamfront.model.design.PowerPlant;
import foamfront.model.parts.Battery;
import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Fan;
import foamfront.model.parts.FanLaw;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.PropellerCurves;
import foamfront.model.parts.Provenance;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Power plants to test with: the catalogue's parts, and combinations of them by seed. */
public final class Plants {
    public static final double DENSITY = 1.225;

    static final List<Motor> MOTORS = motors();
    static final List<Propeller> PROPELLERS = propellers();
    static final List<Battery> BATTERIES = batteries();
    static final List<Controller> CONTROLLERS = controllers();

    static final List<Fan> FANS = fans();

    private Plants() {}

    /** A catalogue combination that need not be wise. */
    public static PowerPlant random(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return new PowerPlant(
                MOTORS.get(random.nextInt(MOTORS.size())),
                PROPELLERS.get(random.nextInt(PROPELLERS.size())),
                BATTERIES.get(random.nextInt(BATTERIES.size())),
                CONTROLLERS.get(random.nextInt(CONTROLLERS.size())));
    }

    /** The everyday plant: 2212-1000, 10x4.7 slow flyer, 3S 2200, 20 A. */
    public static PowerPlant everyday() {
        return new PowerPlant(
                motor("2212-1000"), propeller("10x4.7 slow flyer"), battery("3S 2200"), CONTROLLERS.get(2));
    }

    /** The catalogue's parts of these names. */
    public static PowerPlant of(String motor, String propeller, String battery, String controller) {
        return new PowerPlant(
                motor(motor),
                propeller(propeller),
                battery(battery),
                CONTROLLERS.stream()
                        .filter(c -> c.name().equals(controller))
                        .findFirst()
                        .orElseThrow());
    }

    /** A plant that turns a propeller at any speed a test asks for. */
    static PowerPlant strong(Propeller propeller) {
        Motor motor = new Motor("strong", 10, 0.1, 0.1, 1000, 1e-4, 1e-6, 10, 0, 1, Provenance.INVENTED);
        Battery battery = new Battery("strong", 4, 1e6, 100, 10, 1, 1, 1, 1e-6, 1, Provenance.INVENTED);
        Controller controller = new Controller("strong", 1000, 10, 1, 1, 1, 1, 1e-6, 1, Provenance.INVENTED);
        return new PowerPlant(motor, propeller, battery, controller);
    }

    static Motor motor(String name) {
        return MOTORS.stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
    }

    static Propeller propeller(String name) {
        return PROPELLERS.stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    static Battery battery(String name) {
        return BATTERIES.stream().filter(b -> b.name().equals(name)).findFirst().orElseThrow();
    }

    /** The same pack with another capacity. */
    static Battery withCapacity(Battery b, double capacity) {
        return new Battery(
                b.name(),
                b.cells(),
                capacity,
                b.rating(),
                b.mass(),
                b.length(),
                b.width(),
                b.height(),
                b.cellResistance(),
                b.price(),
                b.provenance());
    }

    /** Cells of a catalogue table's parts, one row each. */
    static List<String[]> rows(String file) {
        List<String[]> lines = lines(file);
        return lines.subList(1, lines.size());
    }

    /** Cells of a catalogue table's header. */
    static String[] heads(String file) {
        return lines(file).get(0);
    }

    /** A comment stands first. */
    private static List<String[]> lines(String file) {
        try {
            return Files.readAllLines(Path.of("..", "studies", "catalogue", file), StandardCharsets.UTF_8).stream()
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A motor with turns for another speed constant: R as K_v^-2, I₀ as K_v. */
    static Motor wound(Motor motor, double rpmPerVolt) {
        double ratio = RPM_PER_VOLT.toSi(rpmPerVolt) / motor.speedConstant();
        return new Motor(
                motor.name(),
                motor.mass(),
                motor.diameter(),
                motor.length(),
                ratio * motor.speedConstant(),
                motor.resistance() / (ratio * ratio),
                ratio * motor.noLoadCurrent(),
                motor.noLoadVoltage(),
                motor.continuousPower(),
                motor.price(),
                motor.provenance());
    }

    /** A pack that neither sags nor empties. */
    static Battery stiff(int cells) {
        return new Battery("stiff", cells, 1e5, 100, 1, 1, 1, 1, 1e-9, 1, Provenance.INVENTED);
    }

    /** State of charge at which a cell rests at a voltage. */
    static double chargeAt(double volts) {
        double s = 0;
        while (Cell.openCircuitVoltage(s) < volts) {
            s += 1e-4;
        }
        return s;
    }

    private static double number(String[] row, int column) {
        return Double.parseDouble(row[column]);
    }

    private static Provenance provenance(String words) {
        return Arrays.stream(Provenance.values())
                .filter(p -> p.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private static List<Motor> motors() {
        List<Motor> all = new ArrayList<>();
        for (String[] r : rows("motors.csv")) {
            all.add(new Motor(
                    r[0],
                    GRAM.toSi(number(r, 1)),
                    MILLIMETRE.toSi(number(r, 2)),
                    MILLIMETRE.toSi(number(r, 3)),
                    RPM_PER_VOLT.toSi(number(r, 4)),
                    MILLIOHM.toSi(number(r, 5)),
                    number(r, 6),
                    number(r, 7),
                    number(r, 8),
                    number(r, 9),
                    provenance(r[10])));
        }
        return List.copyOf(all);
    }

    private static List<Propeller> propellers() {
        List<Propeller> all = new ArrayList<>();
        for (String[] r : rows("propellers.csv")) {
            double[] thrust = new double[PropellerCurves.TERMS];
            double[] power = new double[PropellerCurves.TERMS];
            for (int i = 0; i < PropellerCurves.TERMS; i++) {
                thrust[i] = number(r, 8 + i);
                power[i] = number(r, 8 + PropellerCurves.TERMS + i);
            }
            PropellerCurves curves = new PropellerCurves(
                    thrust,
                    power,
                    REVOLUTION_PER_MINUTE.toSi(number(r, 8 + 2 * PropellerCurves.TERMS)),
                    REVOLUTION_PER_MINUTE.toSi(number(r, 9 + 2 * PropellerCurves.TERMS)),
                    number(r, 10 + 2 * PropellerCurves.TERMS));
            BladeFamily family = Arrays.stream(BladeFamily.values())
                    .filter(f -> f.words().equals(r[1]))
                    .findFirst()
                    .orElseThrow();
            all.add(new Propeller(
                    r[0],
                    family,
                    INCH.toSi(number(r, 2)),
                    INCH.toSi(number(r, 3)),
                    Integer.parseInt(r[4]),
                    GRAM.toSi(number(r, 5)),
                    curves,
                    number(r, 6),
                    provenance(r[7])));
        }
        return List.copyOf(all);
    }

    private static List<Battery> batteries() {
        List<Battery> all = new ArrayList<>();
        for (String[] r : rows("batteries.csv")) {
            all.add(new Battery(
                    r[0],
                    Integer.parseInt(r[1]),
                    MILLIAMPERE_HOUR.toSi(number(r, 2)),
                    number(r, 3),
                    GRAM.toSi(number(r, 4)),
                    MILLIMETRE.toSi(number(r, 5)),
                    MILLIMETRE.toSi(number(r, 6)),
                    MILLIMETRE.toSi(number(r, 7)),
                    MILLIOHM.toSi(number(r, 8)),
                    number(r, 9),
                    provenance(r[10])));
        }
        return List.copyOf(all);
    }

    private static List<Fan> fans() {
        List<Fan> all = new ArrayList<>();
        for (String[] r : rows("fans.csv")) {
            Motor motor = new Motor(
                    r[0],
                    GRAM.toSi(number(r, 8)),
                    MILLIMETRE.toSi(number(r, 9)),
                    MILLIMETRE.toSi(number(r, 10)),
                    RPM_PER_VOLT.toSi(number(r, 11)),
                    MILLIOHM.toSi(number(r, 12)),
                    number(r, 13),
                    number(r, 14),
                    number(r, 15),
                    0,
                    provenance(r[17]));
            FanLaw law = new FanLaw(
                    MILLIMETRE.toSi(number(r, 1)),
                    MILLIMETRE.toSi(number(r, 2)),
                    PERCENT.toSi(number(r, 3)),
                    PERCENT.toSi(number(r, 4)),
                    number(r, 5),
                    REVOLUTION_PER_MINUTE.toSi(number(r, 6)));
            all.add(new Fan(r[0], law, GRAM.toSi(number(r, 7)), motor, number(r, 16), provenance(r[17])));
        }
        return List.copyOf(all);
    }

    private static List<Controller> controllers() {
        List<Controller> all = new ArrayList<>();
        for (String[] r : rows("controllers.csv")) {
            all.add(new Controller(
                    r[0],
                    number(r, 1),
                    number(r, 2),
                    GRAM.toSi(number(r, 3)),
                    MILLIMETRE.toSi(number(r, 4)),
                    MILLIMETRE.toSi(number(r, 5)),
                    MILLIMETRE.toSi(number(r, 6)),
                    MILLIOHM.toSi(number(r, 7)),
                    number(r, 8),
                    provenance(r[9])));
        }
        return List.copyOf(all);
    }
}
