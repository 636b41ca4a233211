package foamfront.model.propulsion;

import static foamfront.model.units.Unit.RPM_PER_VOLT;

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
                .set("voltage from 5 to 100 % charge", errors, MILLIVOLT, MILLIVOLT, "V");
    }
}
