package foamfront.model.propulsion;

/**
 * How long a battery carries steady flight, and what short bursts take from it.
 *
 * <p>Derived: charge leaves at the battery's current, so dt = −C ds / I(s) and t = C ∫ ds / I(s). The current rises as
 * the voltage falls; three Gauss points follow that within 0.1 % (DischargeTest). No loss of capacity with rate: the
 * Peukert exponent of lithium-polymer cells is 1.00 to 1.05 (from memory).
 */
public final class Discharge {
    /** State of charge that stays in the pack: common practice plans with 80 % of capacity. */
    public static final double RESERVE = 0.2;

    private static final double OUTER_NODE = 0.5 * Math.sqrt(0.6);
    private static final double OUTER_WEIGHT = 5 / 18.0;
    private static final double INNER_WEIGHT = 8 / 18.0;

    private Discharge() {}

    /**
     * Time a thrust in N can be held at a speed in m/s while the state of charge falls from {@code from} to {@code to}, s.
     * Stretches where full throttle falls short count nothing; {@link PowerTrain#outcome()} then names the failure. The
     * train is left at the last stretch, that of the emptiest battery.
     */
    public static double endurance(PowerTrain train, double thrust, double speed, double from, double to) {
        double used = from - to;
        if (!(used > 0)) {
            train.solveHolding(thrust, speed, to);
            return 0;
        }
        double middle = 0.5 * (from + to);
        double sum = OUTER_WEIGHT * inverseCurrent(train, thrust, speed, middle + OUTER_NODE * used)
                + INNER_WEIGHT * inverseCurrent(train, thrust, speed, middle)
                + OUTER_WEIGHT * inverseCurrent(train, thrust, speed, middle - OUTER_NODE * used);
        return train.capacity() * used * sum;
    }

    /**
     * State of charge after full throttle at a speed for a time, from the current midway; the train is left there. May
     * fall below zero: then the battery is too small.
     */
    public static double afterFullThrottle(PowerTrain train, double speed, double seconds, double from) {
        train.solveFullThrottle(speed, from);
        double halfway = from - 0.5 * share(train, seconds);
        train.solveFullThrottle(speed, Math.max(0, halfway));
        return from - share(train, seconds);
    }

    private static double share(PowerTrain train, double seconds) {
        return train.batteryCurrent() * seconds / train.capacity();
    }

    private static double inverseCurrent(PowerTrain train, double thrust, double speed, double stateOfCharge) {
        Outcome outcome = train.solveHolding(thrust, speed, stateOfCharge);
        double current = train.batteryCurrent();
        return outcome == Outcome.REACHED && current > 0 ? 1 / current : 0;
    }
}
