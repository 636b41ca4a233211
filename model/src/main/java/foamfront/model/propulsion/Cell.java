package foamfront.model.propulsion;

/**
 * Open-circuit voltage of a lithium-polymer cell against its state of charge s.
 *
 * <pre>  V = −1.031 exp(−35 s) + 3.685 + 0.2156 s − 0.1178 s² + 0.3201 s³</pre>
 *
 * M. Chen and G. Rincón-Mora, "Accurate Electrical Battery Model Capable of Predicting Runtime and I-V Performance", IEEE
 * Transactions on Energy Conversion 21(2), 2006 (read in three independent restatements; the citation from memory). That
 * cell rests at 4.103 V when full, a hobby cell at 4.20 V (from memory), so a shift is added that grows linearly from
 * nothing when empty (judgement).
 */
public final class Cell {
    /** Resting voltage of a full hobby cell, V; from memory. */
    public static final double FULL_VOLTAGE = 4.20;

    /** Lowest voltage of a cell at full throttle, V: common practice. */
    public static final double LOWEST_LOADED_VOLTAGE = 3.3;

    private static final double TOP_SHIFT = FULL_VOLTAGE - publishedVoltage(1);

    private Cell() {}

    /** The published curve, V. */
    public static double publishedVoltage(double s) {
        return -1.031 * StrictMath.exp(-35 * s) + 3.685 + s * (0.2156 + s * (-0.1178 + s * 0.3201));
    }

    /** Open-circuit voltage of a hobby cell, V. */
    public static double openCircuitVoltage(double s) {
        return publishedVoltage(s) + TOP_SHIFT * s;
    }
}
