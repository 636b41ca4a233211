package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import org.junit.jupiter.api.Test;

/**
 * The table of speeds on parabolic polars against their closed forms: J. D. Anderson, Introduction to Flight, ch. 6, and L. W.
 * Traub, "Range and Endurance Estimates for Battery-Powered Aircraft", Journal of Aircraft 48(2), 2011.
 */
class ParabolicPolarExternalTest {
    /** The table promises 0.05 % of a minimum's value; the figures compared with have four digits, one a product of two such. */
    private static final double VALUE = 3e-4;

    /** A flat minimum's place is known less well than its value. */
    private static final double PLACE = 0.02;

    private static final double DENSITY = 1.225;

    private static final Validation MODEL = Validation.of(
            Subject.FLIGHT,
            "A parabolic polar",
            "W 10 N, S 0.25 m², aspect ratio 5.76, C_D0 0.05, e 0.75: closed forms (derived; J. D. Anderson, Introduction to Flight,"
                    + " ch. 6).");

    private static final Validation TRAUB = Validation.of(
            Subject.FLIGHT,
            "Endurance and range by battery",
            "L. W. Traub, Journal of Aircraft 48(2), 2011: W 9.34 N, S 0.32 m², C_D0 0.015, k 0.13, total efficiency 0.5, 11.1 V"
                    + " (inputs from memory, figures derived).");

    private static final Polar SAMPLE = new Polar(10, 0.25, 0.05, 1 / (Math.PI * 5.76 * 0.75));

    private static SpeedTable table(Polar polar, double maximumLift) {
        SpeedTable table = new SpeedTable();
        table.spread(polar.speed(maximumLift));
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            table.drag[i] = polar.drag(table.speed[i]);
        }
        return table;
    }

    private static double[] power(SpeedTable table) {
        double[] power = new double[SpeedTable.SIZE];
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            power[i] = table.drag[i] * table.speed[i];
        }
        return power;
    }

    @Test
    void bestGlideAndLeastPowerFollowTheClosedForms() {
        SpeedTable table = table(SAMPLE, 2); // lifting enough to reach the speed of least power

        table.minimise(table.drag, 0, SAMPLE::drag);
        double glide = table.at();
        MODEL.relative("best lift over drag", 8.238, 10 / table.value(), VALUE, "")
                .relative("best lift over drag, its speed", 8.904, table.at(), PLACE, "m/s");
        table.minimise(power(table), 0, v -> SAMPLE.drag(v) * v);
        MODEL.relative("least power", 9.483, table.value(), VALUE, "W")
                .relative("least power, its speed", 6.765, table.at(), PLACE, "m/s")
                .relative(
                        "least power, its speed over that of best lift over drag",
                        0.7598,
                        table.at() / glide,
                        PLACE,
                        "")
                .relative(
                        "least power, drag coefficient over C_D0",
                        4,
                        SAMPLE.coefficient(table.at()) / 0.05,
                        4 * PLACE,
                        "")
                .relative("endurance, 11.1 V 2.2 A h", 4635, 0.5 * 11.1 * 2.2 * 3600 / table.value(), VALUE, "s");
    }

    /** The speed of least power is often too slow to fly: the table then ends at its slowest, just above the stall. */
    @Test
    void leastPowerBelowTheStallIsClipped() {
        SpeedTable table = table(SAMPLE, 1.1);

        MODEL.value("stall speed at C_L 1.1", 7.705, SAMPLE.speed(1.1), 5e-4, "m/s");
        table.minimise(power(table));
        assertThat(table.at()).isEqualTo(table.speed[0]).isGreaterThan(7.705);
        assertThat(table.value()).isEqualTo(power(table)[0]).isGreaterThan(9.483);
    }

    @Test
    void batteryEnduranceAndRangeFollowTheClosedForms() {
        Polar polar = new Polar(9.34, 0.32, 0.015, 0.13);
        SpeedTable table = table(polar, 1.1);

        table.minimise(power(table), 0, v -> polar.drag(v) * v);
        double leastPower = table.value();
        TRAUB.relative("least power", 8.572, leastPower, VALUE, "W")
                .relative("least power, its speed", 9.00, table.at(), PLACE, "m/s");
        table.minimise(table.drag, 0, polar::drag);
        double metresPerJoule = 1 / table.value();
        TRAUB.relative("best range, its speed", 11.84, table.at(), PLACE, "m/s")
                .relative("best range, power", 9.770, table.value() * 11.84, VALUE, "W");
        double[] hours = {0.6474, 1.2949, 2.5898};
        double[] kilometres = {24.22, 48.44, 96.89};
        for (int i = 0; i < 3; i++) {
            int ampereHours = 1 << i;
            double joules = 0.5 * 11.1 * ampereHours * 3600;
            double range = joules * metresPerJoule / 1000;
            TRAUB.relative("endurance at " + ampereHours + " A h", hours[i], joules / leastPower / 3600, VALUE, "h")
                    .relative("range at " + ampereHours + " A h", kilometres[i], range, VALUE, "km");
        }
    }

    /** W = ½ ρ V² S C_L (derived) through the trimmed aeroplane: the speed at a lift coefficient, and at a load factor of 2. */
    @Test
    void speedsFollowFromWeightAndLift() {
        TrimmedFlight one = Flights.trainer(10);
        TrimmedFlight two = Flights.trainer(20);
        double scale = Math.sqrt(one.referenceArea() / 0.25);

        Validation.of(Subject.FLIGHT, "Stall speeds", "W 10 N, S 0.25 m², C_L 1.1 (derived).")
                .value("level, C_L 1.1", 7.705, scale * one.speedAt(1.1), 5e-4, "m/s")
                .value("at a load factor of 2", 10.897, scale * two.speedAt(1.1), 5e-4, "m/s");
        assertThat(one.liftCoefficient(one.speedAt(0.6))).isCloseTo(0.6, within(1e-12));
    }

    /** C_D = C_D0 + k C_L². */
    private record Polar(double weight, double area, double zeroLift, double k) {
        double speed(double lift) {
            return Math.sqrt(2 * weight / (DENSITY * area * lift));
        }

        double coefficient(double speed) {
            double lift = 2 * weight / (DENSITY * speed * speed * area);
            return zeroLift + k * lift * lift;
        }

        double drag(double speed) {
            return 0.5 * DENSITY * speed * speed * area * coefficient(speed);
        }
    }
}
