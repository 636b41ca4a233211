package foamfront.optimizer.bench;

import foamfront.model.propulsion.MotorLaw;
import foamfront.model.propulsion.OperatingPoint;

/**
 * One row of a sweep.
 *
 * @param speed airspeed, m/s
 */
public record Point(double speed, OperatingPoint at) {
    /** Thrust times airspeed over shaft power; 0 at rest. */
    public double propellerEfficiency() {
        return share(at.thrust() * speed, at.shaftPower());
    }

    /** Shaft power over what the battery gives, motor and controller together. */
    public double motorEfficiency() {
        return share(at.shaftPower(), at.electricalPower());
    }

    /** Heat in each motor's winding by I² R, W; the rest of its heat is in the iron. */
    public double copperLoss(MotorLaw motor) {
        return at.motorCurrent() * at.motorCurrent() * motor.resistance();
    }

    /** Heat in each motor's iron and bearings, W. */
    public double ironLoss(MotorLaw motor) {
        return at.motorHeat() - copperLoss(motor);
    }

    /** Thrust times airspeed over what the battery gives. */
    public double efficiency() {
        return share(at.thrust() * speed, at.electricalPower());
    }

    private static double share(double part, double whole) {
        return whole > 0 ? Math.max(0, part) / whole : 0;
    }
}
