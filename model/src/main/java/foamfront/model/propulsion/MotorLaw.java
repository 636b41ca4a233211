package foamfront.model.propulsion;

import foamfront.model.factors.Factors;
import foamfront.model.parts.Motor;

/**
 * A brushless motor by its constants: with K_v in rad/s/V,
 *
 * <pre>  I = (V − ω/K_v) / R,   Q = (I − I₀) / K_v,   I₀ = i₀ + i₁ ω</pre>
 *
 * Form: M. Drela, "First-Order DC Electric Motor Model", MIT, 2007 (from memory); the consequences are derived. The
 * effective resistance of a loaded motor is {@value #EFFECTIVE_RESISTANCE} times its winding's: judgement between 1.2 and
 * 2.6; published bench rows give 2.4 to 2.6 at racing currents, where the winding alone over-predicts speed by a fifth.
 *
 * @param speedConstant K_v, rad/s per volt
 * @param resistance R, ohm
 * @param standstillCurrent i₀, A
 * @param currentSlope i₁, A s/rad
 */
public record MotorLaw(double speedConstant, double resistance, double standstillCurrent, double currentSlope) {
    /** Effective over winding resistance. */
    public static final double EFFECTIVE_RESISTANCE = 1.8;

    /**
     * Share of the quoted no-load current that is proportional to speed. A half gives a rise of 45 % from 8 to 16 V for a
     * motor quoted at 10 V, the middle of the 30 to 60 % usually seen (from memory, low confidence).
     */
    public static final double VISCOUS_SHARE = 0.5;

    /** The law of a catalogue motor under load. */
    public static MotorLaw of(Motor motor, Factors factors) {
        double quotedSpeed = motor.speedConstant() * motor.noLoadVoltage();
        return new MotorLaw(
                motor.speedConstant(),
                motor.resistance() * EFFECTIVE_RESISTANCE * factors.motorResistance(),
                motor.noLoadCurrent() * (1 - VISCOUS_SHARE),
                motor.noLoadCurrent() * VISCOUS_SHARE / quotedSpeed);
    }

    /** I₀ at shaft speed ω rad/s, A. */
    public double noLoadCurrent(double omega) {
        return standstillCurrent + currentSlope * omega;
    }

    /** Current at motor voltage and shaft speed, A. */
    public double current(double voltage, double omega) {
        return (voltage - omega / speedConstant) / resistance;
    }

    /** Current that gives a torque in N m at a shaft speed, A. */
    public double currentForTorque(double torque, double omega) {
        return torque * speedConstant + noLoadCurrent(omega);
    }

    /** Voltage that drives a current at a shaft speed, V. */
    public double voltage(double current, double omega) {
        return omega / speedConstant + current * resistance;
    }

    /** Shaft torque, N m. */
    public double torque(double current, double omega) {
        return (current - noLoadCurrent(omega)) / speedConstant;
    }

    /** Shaft power over electrical input at voltage V and current I. */
    public double efficiency(double voltage, double current) {
        double omega = speed(voltage, current);
        return torque(current, omega) * omega / (voltage * current);
    }

    /** Shaft speed at voltage and current, rad/s. */
    public double speed(double voltage, double current) {
        return (voltage - current * resistance) * speedConstant;
    }

    /** Unloaded shaft speed at a voltage, rad/s: from I = I₀. */
    public double unloadedSpeed(double voltage) {
        return (voltage - standstillCurrent * resistance) / (1 / speedConstant + currentSlope * resistance);
    }
}
