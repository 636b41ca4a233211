package foamfront.model.propulsion;

import static foamfront.model.units.Unit.RPM_PER_VOLT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.design.PowerPlant;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Battery;
import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.PropellerCurves;
import foamfront.model.parts.Provenance;
import foamfront.model.validation.ErrorStatistics;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The whole train against published bench sheets and battery figures. */
class PowerTrainExternalTest {
    /** The sheets: flat within about 5 % from half to full command. */
    private static final double FLAT = 0.055;

    /** The sheets: 6 to 7 % lower at 30 % command. */
    private static final double LOW_COMMAND = 0.935;

    /** The supply is made of whole cells, so its voltage and with it the current are a little off the sheet's. */
    private static final double SUPPLY = 0.03;

    /** The two sheets differ by 6 % from each other at 40 % command. */
    private static final double SHEET_SCATTER = 0.03;

    /** Half of what the two sheets lie apart at most, and their readings' own scatter as much again. */
    private static final double SHEET_ROWS = 0.06;

    private static final Validation BENCH = Validation.of(
            Subject.PROPULSION,
            "Motors on the bench",
            "A maker's sheets of 2306.5-class motors on 5 in three-blade propellers, quoted in an open hobby component table, 2026.");

    /**
     * Relative efficiency of motor and controller, [n³/(V I)] over the same at full command. Rows: a
     * maker's sheets for 2306.5-class motors of 1960 and 1860 rpm/V on 5 in three-blade propellers, quoted in an open hobby
     * component table, 2026.
     */
    @ParameterizedTest(name = "{0} rpm/V")
    @CsvSource({
        "1960, 0.0602, 0.95, 23.3, 42, .937 .987 1.005 1.042 1.048 1.009 1.020",
        "1860, 0.0706, 0.90, 23.4, 36, .932 .928 .964 .977 .998 1.008 1.026"
    })
    void efficiencyStaysFlatToHalfCommandAndFallsAtThirtyPercent(
            double kv, double resistance, double idle, double volts, double amperes, String sheet) {
        Motor motor = new Motor(
                "2306", 0.034, 0.03, 0.03, RPM_PER_VOLT.toSi(kv), resistance, idle, 10, 0, 19, Provenance.OPEN_DATA);
        PowerTrain train = PowerTrain.of(
                new PowerPlant(motor, loading(motor, volts, amperes), supply(volts), controller()),
                1,
                Factors.NOMINAL,
                Plants.DENSITY,
                0);
        OperatingPoint full = train.fullThrottle(0, 0.5);
        assertThat(full.motorCurrent()).isCloseTo(amperes, within(SUPPLY * amperes));
        String what = String.format(Locale.ROOT, "%.0f rpm/V, efficiency over that of full command, at ", kv);
        ErrorStatistics rows = new ErrorStatistics();
        String[] found = sheet.split(" ", -1);
        for (int i = 0; i < found.length; i++) {
            rows.add(relative(train, full, 0.3 + 0.1 * i) - Double.parseDouble(found[i]));
        }
        BENCH.set(what + "30 to 90 %", rows, SHEET_ROWS, SHEET_ROWS, "");
        BENCH.value(what + "30 %", LOW_COMMAND, relative(train, full, 0.3), SHEET_SCATTER, "");
        for (int tenths = 5; tenths < 10; tenths++) {
            BENCH.value(what + tenths + "0 %", 1, relative(train, full, 0.1 * tenths), FLAT, "");
        }
    }

    /** At a command: thrust rises with it, so halve the thrust until the throttle is right. */
    private static double relative(PowerTrain train, OperatingPoint full, double command) {
        double low = 0;
        double high = full.thrust();
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            train.solveHolding(middle, 0, 0.5);
            if (train.throttle() > command) {
                high = middle;
            } else {
                low = middle;
            }
        }
        OperatingPoint part = train.point();
        return merit(part) / merit(full);
    }

    private static double merit(OperatingPoint p) {
        return p.rotation() * p.rotation() * p.rotation() / p.electricalPower();
    }

    /** A propeller of constant coefficients that takes the measured current at full command. */
    private static Propeller loading(Motor motor, double volts, double amperes) {
        MotorLaw law = MotorLaw.of(motor, Factors.NOMINAL);
        double omega = law.speed(volts - amperes * controller().resistance(), amperes);
        double n = omega / (2 * Math.PI);
        double d = 0.127;
        double power = law.torque(amperes, omega) * omega / (Plants.DENSITY * n * n * n * d * d * d * d * d);
        PropellerCurves curves = new PropellerCurves(
                new double[] {0.15, 0, -0.1, 0, 0, 0, 0}, new double[] {power, 0, -0.01, 0, 0, 0, 0}, 1, 2000, 1);
        return new Propeller("5 in", BladeFamily.SMALL, d, 0.1, 3, 0.005, curves, 1, Provenance.OPEN_DATA);
    }

    private static Controller controller() {
        return new Controller("bench", 60, 3, 0.03, 0.05, 0.03, 0.01, 0.004, 20, Provenance.INVENTED);
    }

    /** A bench supply: cells enough and no resistance to speak of. */
    private static Battery supply(double volts) {
        int cells = (int) Math.round(volts / Cell.openCircuitVoltage(0.5));
        return new Battery("bench", cells, 1e5, 100, 1, 1, 1, 1, 1e-9, 1, Provenance.INVENTED);
    }

    /** The same sheets: winding resistance alone over-predicts loaded speed by a fifth; 1.8 of it by less. */
    @ParameterizedTest(name = "{0} rpm/V, {3} A")
    @CsvSource({
        "1960, 0.0602, 23.25, 41.15, 32903, 1.24",
        "1960, 0.0602, 23.39, 44.54, 32652, 1.24",
        "1860, 0.0706, 23.47, 35.50, 32282, 1.21",
        "1860, 0.0706, 23.32, 36.86, 31222, 1.23"
    })
    void effectiveResistanceBringsLoadedSpeedTowardsTheBench(
            double kv, double winding, double volts, double amperes, double rpm, double published) {
        double bare = kv * (volts - amperes * winding) / rpm;
        double effective = kv * (volts - amperes * winding * MotorLaw.EFFECTIVE_RESISTANCE) / rpm;
        BENCH.value(
                String.format(
                        Locale.ROOT,
                        "%.0f rpm/V at %.2f A, predicted over found speed, winding resistance",
                        kv,
                        amperes),
                published,
                bare,
                0.006,
                "");
        assertThat(effective - 1).isLessThan(0.65 * (bare - 1)).isPositive();
    }

    /** V = S (V_oc - I r), derived: 3 cells of 5.5 mohm at half charge sag 0.33 V under 20 A. */
    @Test
    void packSagsByItsResistance() {
        PowerTrain train = PowerTrain.of(Plants.everyday(), 1, Factors.NOMINAL, Plants.DENSITY, 20);
        double open = 3 * Cell.openCircuitVoltage(0.5);
        double loaded = 3 * Cell.publishedVoltage(0.5) - 20 * 3 * 0.0055;
        Validation.of(Subject.PROPULSION, "Sag of a pack", "Published discharge curve of a lithium cell (derived).")
                .value("sag under 20 A", 0.33, open - train.holding(0, 0, 0.5).batteryVoltage(), 1e-9, "V")
                .value("voltage under 20 A", 11.08, loaded, 5.1e-3, "V");
    }
}
