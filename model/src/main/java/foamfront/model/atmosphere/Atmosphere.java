package foamfront.model.atmosphere;

import static foamfront.model.units.Require.positive;
import static foamfront.model.units.Require.within;

/**
 * Still air at one place.
 *
 * <p>Source: ISO 2533, Standard Atmosphere (1975): T = T₀ + βH, p = p₀ (T / T₀)^(−g / βR), ρ = p / RT with its defining
 * constants, in geopotential height H; viscosity by Sutherland's formula with the same standard's constants,
 * μ = β_S T^1.5 / (T + S).
 *
 * @param density kg/m³
 * @param dynamicViscosity Pa s
 * @param temperature K
 * @param pressure Pa
 */
public record Atmosphere(double density, double dynamicViscosity, double temperature, double pressure) {
    private static final double SEA_LEVEL_TEMPERATURE = 288.15; // K
    private static final double SEA_LEVEL_PRESSURE = 101_325; // Pa
    private static final double LAPSE_RATE = -0.0065; // K/m
    private static final double GAS_CONSTANT = 287.05287; // J/(kg K)
    /** Standard gravity, m/s² (CGPM 1901). */
    public static final double GRAVITY = 9.80665;

    private static final double SUTHERLAND_FACTOR = 1.458e-6; // kg/(m s √K)
    private static final double SUTHERLAND_TEMPERATURE = 110.4; // K
    private static final double LOWEST = -1000; // m
    private static final double TROPOPAUSE = 11_000; // m

    public Atmosphere {
        positive("air density", density, "kg/m3");
        positive("air viscosity", dynamicViscosity, "Pa s");
        positive("air temperature", temperature, "K");
        positive("air pressure", pressure, "Pa");
    }

    /**
     * The standard atmosphere.
     *
     * @param height geopotential, m
     */
    public static Atmosphere standard(double height) {
        return at(height, SEA_LEVEL_TEMPERATURE + LAPSE_RATE * height);
    }

    /**
     * Standard pressure at the site's elevation with the day's own temperature.
     *
     * @param elevation above the sea, m
     * @param temperature K
     */
    public static Atmosphere at(double elevation, double temperature) {
        within("elevation", elevation, LOWEST, TROPOPAUSE, "m");
        positive("air temperature", temperature, "K");
        double ratio = 1 + LAPSE_RATE * elevation / SEA_LEVEL_TEMPERATURE;
        double pressure = SEA_LEVEL_PRESSURE * StrictMath.pow(ratio, -GRAVITY / (LAPSE_RATE * GAS_CONSTANT));
        double viscosity =
                SUTHERLAND_FACTOR * temperature * Math.sqrt(temperature) / (temperature + SUTHERLAND_TEMPERATURE);
        return new Atmosphere(pressure / (GAS_CONSTANT * temperature), viscosity, temperature, pressure);
    }

    /** μ / ρ, m²/s. */
    public double kinematicViscosity() {
        return dynamicViscosity / density;
    }
}
