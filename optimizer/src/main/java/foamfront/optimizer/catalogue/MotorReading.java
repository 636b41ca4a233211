package foamfront.optimizer.catalogue;

/**
 * One reading of a motor on the bench at full throttle.
 *
 * @param voltage into the controller, V
 * @param current into it, A
 * @param rotation of the shaft, rev/s
 * @param loaded whether it turned a propeller
 */
public record MotorReading(double voltage, double current, double rotation, boolean loaded) {}
