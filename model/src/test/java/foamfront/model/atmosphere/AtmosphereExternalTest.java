package foamfront.model.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 2533 (1975), standard atmosphere by geopotential height; off-standard days from its constants. */
class AtmosphereExternalTest {
    /** The table's own digits. */
    private static final double TABLE = 1e-5;

    /** Viscosity is printed to six digits, its constants carry four. */
    private static final double VISCOSITY = 1e-4;

    /** Half the last printed digit of the four-digit density. */
    private static final double DAY = 5e-5;

    private static final double HALF_DIGIT_VISCOSITY = 5e-9;

    private static final Validation STANDARD = Validation.of(
            Subject.AIR,
            "Standard atmosphere",
            "ISO 2533 (1975), by geopotential height; derived from its defining constants, Sutherland's viscosity.");

    private static final Validation WARM =
            Validation.of(Subject.AIR, "Days off the standard", "Derived from the same constants at 101 325 Pa.");

    @ParameterizedTest(name = "{0} m")
    @CsvSource({
        "0, 288.15, 101325, 1.22500, 1.78938e-5, 1.46072e-5",
        "500, 284.90, 95460.8, 1.16727, 1.77366e-5, 1.51949e-5",
        "1000, 281.65, 89874.6, 1.11164, 1.75785e-5, 1.58130e-5",
        "1500, 278.40, 84556.0, 1.05807, 1.74195e-5, 1.64635e-5",
        "2000, 275.15, 79495.2, 1.00649, 1.72596e-5, 1.71483e-5",
        "3000, 268.65, 70108.5, 0.90912, 1.69372e-5, 1.86303e-5",
        "5000, 255.65, 54019.9, 0.73612, 1.62812e-5, 2.21177e-5",
        "11000, 216.65, 22632.0, 0.36392, 1.42161e-5, 3.90641e-5",
    })
    void followsTheStandardTable(
            double height, double temperature, double pressure, double density, double viscosity, double kinematic) {
        Atmosphere air = Atmosphere.standard(height);

        String at = String.format(Locale.ROOT, " at %.0f m", height);
        STANDARD.relative("temperature" + at, temperature, air.temperature(), TABLE, "K")
                .relative("pressure" + at, pressure, air.pressure(), TABLE, "Pa")
                .relative("density" + at, density, air.density(), TABLE, "kg/m³")
                .relative("viscosity" + at, 1e6 * viscosity, 1e6 * air.dynamicViscosity(), VISCOSITY, "µPa s")
                .relative(
                        "kinematic viscosity" + at,
                        1e6 * kinematic,
                        1e6 * air.kinematicViscosity(),
                        VISCOSITY,
                        "mm²/s");
    }

    @ParameterizedTest(name = "{0} degrees")
    @CsvSource({"0, 1.2923, 1.328e-5", "25, 1.1839, 1.5518e-5", "35, 1.1455, 1.6450e-5"})
    void followsTheDaysTemperatureAtSeaLevel(double celsius, double density, double kinematic) {
        Atmosphere air = Atmosphere.at(0, 273.15 + celsius);

        String at = String.format(Locale.ROOT, " at %.0f °C", celsius);
        WARM.relative("density" + at, density, air.density(), DAY, "kg/m³")
                .value(
                        "kinematic viscosity" + at,
                        1e6 * kinematic,
                        1e6 * air.kinematicViscosity(),
                        1e6 * HALF_DIGIT_VISCOSITY,
                        "mm²/s");
    }

    @Test
    void warmAirAtASiteKeepsTheStandardPressure() {
        assertThat(Atmosphere.at(1500, 305).pressure())
                .isEqualTo(Atmosphere.standard(1500).pressure());
    }
}
