package foamfront.model.propulsion;

/**
 * What cold does to a lithium-polymer pack. It is taken to the field warm and heats itself, so that it stays about 10 K above the
 * air (judgement); at 25 degrees of its own and more nothing changes. Below, its resistance follows Arrhenius' law and doubles by
 * the freezing point, and its capacity falls by half a per cent a kelvin (both from memory, half as much either way).
 */
final class Cold {
    /** Warmth of a pack over the air, K. */
    private static final double OWN_HEAT = 10;

    private static final double WARM = 298.15;

    /** K: doubles the resistance from 25 degrees to the freezing point. */
    private static final double ACTIVATION = StrictMath.log(2) / (1 / 273.15 - 1 / WARM);

    private static final double CAPACITY_LOSS = 0.005;
    private static final double LEAST_CAPACITY = 0.5;

    private Cold() {}

    /** Resistance over that of a warm pack, in air of a temperature in K. */
    static double resistance(double air) {
        double pack = air + OWN_HEAT;
        return pack >= WARM ? 1 : StrictMath.exp(ACTIVATION * (1 / pack - 1 / WARM));
    }

    /** Capacity over that of a warm pack. */
    static double capacity(double air) {
        double below = Math.max(0, WARM - air - OWN_HEAT);
        return Math.max(LEAST_CAPACITY, 1 - CAPACITY_LOSS * below);
    }
}
