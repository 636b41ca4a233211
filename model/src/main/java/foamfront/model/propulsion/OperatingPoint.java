package foamfront.model.propulsion;

/**
 * A power train in equilibrium at one airspeed, throttle and state of charge.
 *
 * @param outcome whether it runs as asked; if not, the figures are those of full throttle
 * @param thrust of all propellers, N
 * @param rotation of each propeller, rev/s
 * @param throttle share of the battery's voltage that each motor sees, 0 to 1
 * @param motorCurrent in each motor, A
 * @param motorVoltage at each motor, V
 * @param batteryCurrent of motors and radio, A
 * @param batteryVoltage under load, V
 * @param shaftPower of all propellers, W
 * @param torque of each propeller, N m
 * @param advanceRatio V / (n D)
 * @param insideMeasured whether speed and advance ratio lie inside the propeller's measured range
 */
public record OperatingPoint(
        Outcome outcome,
        double thrust,
        double rotation,
        double throttle,
        double motorCurrent,
        double motorVoltage,
        double batteryCurrent,
        double batteryVoltage,
        double shaftPower,
        double torque,
        double advanceRatio,
        boolean insideMeasured) {
    public boolean reached() {
        return outcome == Outcome.REACHED;
    }

    /** Power out of the battery's terminals, W. */
    public double electricalPower() {
        return batteryVoltage * batteryCurrent;
    }

    /** Electrical input of each motor, W. */
    public double motorInput() {
        return motorVoltage * motorCurrent;
    }

    /** What each motor turns into heat, in its winding (I² R) and its iron (I₀ ω / K_v) together, W. */
    public double motorHeat() {
        return motorInput() - torque * PowerTrain.TURN * rotation;
    }
}
