package foamfront.model.propulsion;

import static foamfront.model.units.Unit.RPM_PER_VOLT;

import foamfront.model.factors.Factors;
import foamfront.model.validation.ErrorStatistics;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import org.junit.jupiter.api.Test;

/** The small data sets of motors and cells as largest and RMS error; their rows are tested one by one elsewhere. */
class PropulsionSetsExternalTest {
    /** Five significant digits are printed. */
    private static final double PRINTED = 6e-4;

    /** The last digit of the restated curve, V. */
    private static final double MILLIVOLT = 5.1e-4;

    /** What 1.8 windings leave of the fifth that one winding misses, found when it was chosen. */
    private static final double SPEED = 0.16;

    private static final double[][] WORKED = {
        // rpm/V, ohm, A, V; best-efficiency current A, efficiency, rpm, N m, W
        {1000, 0.090, 0.8, 11.1, 9.933, 0.8454, 10206, 0.0872, 93.2},
        {760, 0.045, 1.1, 11.1, 16.472, 0.8709, 7872.7, 0.1931, 159.2},
        {900, 0.142, 0.52, 11.1, 6.376, 0.8435, 9175, 0.0621, 59.7},
        {830, 0.042, 1.06, 14.8, 19.327, 0.8933, 11610, 0.2102, 255.5}
    };

    private static final double[][] BENCH = {
        {1960, 0.0602, 23.25, 41.15, 32903},
        {1960, 0.0602, 23.39, 44.54, 32652},
        {1860, 0.0706, 23.47, 35.50, 32282},
        {1860, 0.0706, 23.32, 36.86, 31222}
    };

    private static final double[] CELL = {
        1.0, 4.103, 0.9, 4.017, 0.8, 3.946, 0.7, 3.888, 0.6, 3.841, 0.5, 3.803, 0.4, 3.773, 0.3, 3.748, 0.2, 3.725, 0.1,
        3.675, 0.05, 3.516
    };

    @Test
    void workedMotors() {
        ErrorStatistics errors = new ErrorStatistics();
        for (double[] row : WORKED) {
            MotorLaw law = new MotorLaw(RPM_PER_VOLT.toSi(row[0]), row[1], row[2], 0);
            double current = Math.sqrt(row[3] * row[2] / row[1]);
            double omega = law.speed(row[3], current);
            double torque = law.torque(current, omega);
            errors.add(current / row[4] - 1);
            errors.add(law.efficiency(row[3], current) / row[5] - 1);
            errors.add(omega * 30 / Math.PI / row[6] - 1);
            errors.add(torque / row[7] - 1);
            errors.add(torque * omega / row[8] - 1);
        }
        Validation.of(Subject.PROPULSION, "Motors, worked", "The three-constant motor's closed forms (derived).")
                .set(
                        "current, efficiency, speed, torque, power at the best point, relative",
                        errors,
                        PRINTED,
                        PRINTED,
                        "");
    }

    /** Half of (V / R + I₀): 337.8 W at 62.07 A, just under half of the input. */
    @Test
    void greatestShaftPower() {
        MotorLaw law = new MotorLaw(RPM_PER_VOLT.toSi(1000), 0.090, 0.8, 0);
        double most = 0;
        double at = 0;
        for (double current = 1; current < 123; current += 0.01) {
            double omega = law.speed(11.1, current);
            double power = law.torque(current, omega) * omega;
            if (power > most) {
                most = power;
                at = current;
            }
        }
        Validation.of(Subject.PROPULSION, "Motors, worked", "The three-constant motor's closed forms (derived).")
                .value("greatest shaft power, 1000 rpm/V at 11.1 V", 337.8, most, 0.051, "W")
                .value("greatest shaft power, its current", 62.07, at, 0.011, "A")
                .value("greatest shaft power, its efficiency", 0.490, law.efficiency(11.1, at), 6e-4, "");
    }

    @Test
    void noLoadCurrentGrowsWithSpeed() {
        MotorLaw law = MotorLaw.of(Plants.motor("2212-1000"), Factors.NOMINAL);
        double rise = law.noLoadCurrent(law.unloadedSpeed(16)) / law.noLoadCurrent(law.unloadedSpeed(8)) - 1;
        Validation.of(
                        Subject.PROPULSION,
                        "No-load current",
                        "Form after M. Drela, Second-Order DC Electric Motor Model, MIT (from memory); the rise from memory, low confidence.")
                .band("rise from 8 to 16 V", 0.3, 0.6, rise, "");
    }

    /**
     * The loss at part throttle was set by bench sheets of motor and controller together; the ranges recalled of controllers alone are
     * harsher below half command, and the sheets, which were read, win.
     */
    @Test
    void controllersAlone() {
        double full = 1 - 12 * Plants.CONTROLLERS.get(2).resistance() / 11.4;
        double third = full / (1 + PowerTrain.PART_THROTTLE_LOSS * (1 - 0.35));
        Validation.of(
                        Subject.PROPULSION,
                        "Controllers alone",
                        "A. Gong, R. MacNeill, D. Verstraete, AIAA 2018-4584; C. Green, R. McDonald, AIAA 2015-3191 (ranges from memory, not"
                                + " read). Ours loses less because a motor's resistance under load, 1.8 times its winding's, carries the rest, and"
                                + " because bench sheets of both together, which were read, fall by only 6 to 7 % at 30 % command.")
                .outside("20 A at 12 A, efficiency at full command", 0.93, 0.98, full, "")
                .outside("20 A, efficiency at 35 % command", 0.80, 0.90, third, "");
    }

    @Test
    void loadedSpeeds() {
        ErrorStatistics bare = new ErrorStatistics();
        ErrorStatistics effective = new ErrorStatistics();
        for (double[] row : BENCH) {
            bare.add(row[0] * (row[2] - row[3] * row[1]) / row[4] - 1);
            effective.add(row[0] * (row[2] - row[3] * row[1] * MotorLaw.EFFECTIVE_RESISTANCE) / row[4] - 1);
        }
        Validation.of(
                        Subject.PROPULSION,
                        "Loaded speed",
                        "A maker's sheets of 2306.5-class motors at racing currents, quoted in an open hobby component table, 2026.")
                .set("winding resistance alone, speed, relative", bare, 0.25, 0.25, "")
                .set("1.8 times the winding's, speed, relative", effective, SPEED, SPEED, "");
    }

    @Test
    void cellVoltages() {
        ErrorStatistics errors = new ErrorStatistics();
        for (int i = 0; i < CELL.length; i += 2) {
            errors.add(Cell.publishedVoltage(CELL[i]) - CELL[i + 1]);
        }
        Validation.of(
                        Subject.PROPULSION,
                        "Open-circuit voltage",
                        "M. Chen and G. Rincón-Mora, IEEE Transactions on Energy Conversion 21(2), 2006 (curve read in restatements,"
                                + " citation from memory).")
                .set("voltage from 5 to 100 % charge", errors, MILLIVOLT, MILLIVOLT, "V")
                .value("mean from 20 to 100 % charge", 3.866, meanVoltage(0.2), MILLIVOLT, "V")
                .value("mean from 0 to 100 % charge", 3.804, meanVoltage(0), MILLIVOLT, "V");
    }

    private static double meanVoltage(double from) {
        int steps = 4000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += Cell.publishedVoltage(from + (1 - from) * (i + 0.5) / steps);
        }
        return sum / steps;
    }

    /** Large cells of a high rate have 1 to 4 mohm; 12 mohm A h over capacity, half as much either way. */
    @Test
    void cellResistances() {
        Validation.of(
                        Subject.PROPULSION,
                        "Cell resistance",
                        "A hobby site's article on the resistance of packs, 2023 (read); 12 mohm A h over capacity (from memory, a factor of 1.5"
                                + " either way). Cells of 2006 had 63 mohm A h (M. Chen and G. Rincón-Mora, read in a restatement).")
                .band("3S 5000", 1, 4, cellResistance("3S 5000"), "mohm")
                .value("3S 2200", 5.5, cellResistance("3S 2200"), 0.06, "mohm")
                .value("3S 1300", 9, cellResistance("3S 1300"), 0.51, "mohm")
                .outside(
                        "3S 2200 against cells of 2006, give or take a third",
                        19,
                        38,
                        cellResistance("3S 2200"),
                        "mohm");
    }

    private static double cellResistance(String pack) {
        return 1000 * Plants.battery(pack).cellResistance();
    }
}
