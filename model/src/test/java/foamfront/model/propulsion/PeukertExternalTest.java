package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.design.PowerPlant;
import foamfront.model.factors.Factors;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What leaving out the loss of capacity with rate means. L. W. Traub, "Range and Endurance Estimates for Battery-Powered Aircraft",
 * Journal of Aircraft 48(2), 2011: E = Rt^(1-n) (eta V C / P)^n; his aeroplane's inputs from memory, figures derived from them, the
 * abstract's 12.5 and 15.1 % read. The model takes n = 1; 1.00 to 1.05 was fitted to lithium-polymer packs, 1.3 is his illustration.
 */
class PeukertExternalTest {
    private static final double PRINTED = 5.1e-4;

    /** P_min and that of best range, W; total efficiency; V. */
    private static final double POWER = 8.572;

    private static final double RANGE_POWER = 9.770;
    private static final double EFFICIENCY = 0.5;
    private static final double VOLTS = 11.1;

    /** Speed of best range, m/s. */
    private static final double SPEED = 11.84;

    private static final Validation RATE = Validation.of(
            Subject.PROPULSION,
            "Capacity against rate",
            "L. W. Traub, Journal of Aircraft 48(2), 2011: closed form (derived), effect of an exponent of 1.3 (abstract).");

    private static double hours(double n, double ampereHours, double power) {
        return Math.pow(EFFICIENCY * VOLTS * ampereHours / power, n);
    }

    @ParameterizedTest(name = "n {0}, {1} Ah")
    @CsvSource({
        "1, 1, 0.6474, 24.22",
        "1, 2, 1.2949, 48.44",
        "1, 4, 2.5898, 96.89",
        "1.3, 1, 0.5683, 20.44",
        "1.3, 2, 1.3993, 50.33",
        "1.3, 4, 3.4454, 123.9"
    })
    void theClosedFormsFigures(double n, double capacity, double endurance, double kilometres) {
        String what = String.format(Locale.ROOT, "n %.1f, %.0f Ah, ", n, capacity);
        RATE.relative(what + "endurance", endurance, hours(n, capacity, POWER), PRINTED, "h")
                .relative(what + "range", kilometres, 3.6 * SPEED * hours(n, capacity, RANGE_POWER), 2 * PRINTED, "km");
    }

    @Test
    void theAbstractsLosses() {
        double endurance = 1 - hours(1.3, 1, POWER) / hours(1, 1, POWER);
        double range = 1 - hours(1.3, 1, RANGE_POWER) / hours(1, 1, RANGE_POWER);
        RATE.value("loss of endurance at n 1.3, 1 Ah", 0.125, endurance, 0.006, "")
                .value("loss of range at n 1.3, 1 Ah", 0.151, range, 0.006, "");
    }

    /** The sign turns where the one-hour current equals the draw. */
    @Test
    void anExponentLengthensOnlyFlightsOfMoreThanAnHour() {
        double hour = POWER / (EFFICIENCY * VOLTS);
        assertThat(hours(1.3, 0.99 * hour, POWER)).isLessThan(hours(1, 0.99 * hour, POWER));
        assertThat(hours(1.3, 1.01 * hour, POWER)).isGreaterThan(hours(1, 1.01 * hour, POWER));
    }

    /** The fitted 1.05 takes 3 % off a flight of half an hour and 7 % off one of a quarter: inside the spread of capacity. */
    @Test
    void whatTheModelLeavesOutIsSmall() {
        for (double flown : new double[] {0.25, 0.5, 0.75}) {
            double loss = 1 - Math.pow(flown, 1.05) / flown;
            assertThat(loss).isBetween(0.0, 0.07);
        }
    }

    /** A pack that holds a constant thrust lasts in proportion to its charge, as n = 1 says; more charge sags no less here. */
    @Test
    void theModelsDischargeHasAnExponentOfOne() {
        var plant = Plants.everyday();
        var larger = new PowerPlant(
                plant.motor(),
                plant.propeller(),
                Plants.withCapacity(plant.battery(), 3 * plant.battery().capacity()),
                plant.controller());
        var factors = Factors.NOMINAL;
        double one = Discharge.endurance(PowerTrain.of(plant, 1, factors, Plants.DENSITY, 0), 1, 9, 1, 0.2);
        double three = Discharge.endurance(PowerTrain.of(larger, 1, factors, Plants.DENSITY, 0), 1, 9, 1, 0.2);
        RATE.value("exponent of the model's discharge", 1, Math.log(three / one) / Math.log(3), 1e-9, "");
    }
}
