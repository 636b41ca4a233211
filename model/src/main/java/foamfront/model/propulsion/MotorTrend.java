package foamfront.model.propulsion;

import foamfront.model.units.Unit;

/**
 * What the winding of an outrunner of some mass resists: R K_v² = 1.459e5 ohm (rpm/V)² (m / 50 g)^-1.669.
 *
 * <p>A regression on ten motors' trade figures, of 10 to 211 g, with 21 % RMS; the list of them is not kept (from memory). That R
 * goes as K_v^-2 in one frame is derived: half the turns of twice the section.
 */
public final class MotorTrend {
    private static final double SCALED = 1.459e5;
    private static final double MASS = 0.050;
    private static final double EXPONENT = 1.669;

    private MotorTrend() {}

    /** Of the winding, ohm. */
    public static double resistance(double mass, double speedConstant) {
        double kv = Unit.RPM_PER_VOLT.fromSi(speedConstant);
        return SCALED * StrictMath.pow(mass / MASS, -EXPONENT) / (kv * kv);
    }

    /** What a motor of such a winding weighs, kg. */
    public static double mass(double resistance, double speedConstant) {
        double kv = Unit.RPM_PER_VOLT.fromSi(speedConstant);
        return MASS * StrictMath.pow(SCALED / (resistance * kv * kv), 1 / EXPONENT);
    }
}
