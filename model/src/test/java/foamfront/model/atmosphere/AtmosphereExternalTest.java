package foamfront.model.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 2533 (1975), standard atmosphere by geopotential height; off-standard days from its constants. */
class AtmosphereExternalTest {
    /** The table's own digits. */
    private static final double TABLE_PERCENT = 1e-3;

    /** Viscosity is printed to six digits, its constants carry four. */
    private static final double VISCOSITY_PERCENT = 1e-2;

    /** Half the last printed digit of the four-digit density, in percent. */
    private static final double DAY_PERCENT = 5e-3;

    private static final double HALF_DIGIT_VISCOSITY = 5e-9;

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

        assertThat(air.temperature()).isCloseTo(temperature, withinPercentage(TABLE_PERCENT));
        assertThat(air.pressure()).isCloseTo(pressure, withinPercentage(TABLE_PERCENT));
        assertThat(air.density()).isCloseTo(density, withinPercentage(TABLE_PERCENT));
        assertThat(air.dynamicViscosity()).isCloseTo(viscosity, withinPercentage(VISCOSITY_PERCENT));
        assertThat(air.kinematicViscosity()).isCloseTo(kinematic, withinPercentage(VISCOSITY_PERCENT));
    }

    @ParameterizedTest(name = "{0} degrees")
    @CsvSource({"0, 1.2923, 1.328e-5", "25, 1.1839, 1.5518e-5", "35, 1.1455, 1.6450e-5"})
    void followsTheDaysTemperatureAtSeaLevel(double celsius, double density, double kinematic) {
        Atmosphere air = Atmosphere.at(0, 273.15 + celsius);

        assertThat(air.density()).isCloseTo(density, withinPercentage(DAY_PERCENT));
        assertThat(air.kinematicViscosity()).isCloseTo(kinematic, within(HALF_DIGIT_VISCOSITY));
    }

    @Test
    void warmAirAtASiteKeepsTheStandardPressure() {
        assertThat(Atmosphere.at(1500, 305).pressure())
                .isEqualTo(Atmosphere.standard(1500).pressure());
    }
}
