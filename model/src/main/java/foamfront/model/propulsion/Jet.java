package foamfront.model.propulsion;

/**
 * The jet of a ducted fan, from momentum theory (derived): T = ρ A_e V_e (V_e − V), the pressure at the pipe's end
 * being that of the air around.
 */
public final class Jet {
    private Jet() {}

    /** V_e of a thrust (N) at an airspeed (m/s), m/s. */
    public static double speed(double exitArea, double thrust, double speed, double density) {
        return 0.5 * speed + Math.sqrt(0.25 * speed * speed + Math.max(0, thrust) / (density * exitArea));
    }

    /**
     * Force across the intake per radian of incidence over dynamic pressure, m²: the air taken in, ρ A_e V_e each
     * second, loses its sideways speed V α, so N_α / q = 2 A_e V_e / V.
     */
    public static double turningArea(double exitArea, double thrust, double speed, double density) {
        return 2 * exitArea * speed(exitArea, thrust, speed, density) / speed;
    }
}
