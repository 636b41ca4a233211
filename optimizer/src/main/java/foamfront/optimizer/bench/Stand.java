package foamfront.optimizer.bench;

import foamfront.model.design.Drive;
import foamfront.model.factors.Factors;
import foamfront.model.propulsion.PowerTrain;

/**
 * What stands on the bench.
 *
 * @param motors that share the battery, each with its controller
 * @param density of the air, kg/m³
 * @param charge state of charge, 0 to 1
 * @param massKnown whether the motor's mass is: without it nobody can say what it bears
 */
public record Stand(Drive drive, int motors, double density, double charge, boolean massKnown) {
    PowerTrain train() {
        return PowerTrain.of(drive, motors, Factors.NOMINAL, density, 0);
    }

    /** The combination in words. */
    public String words() {
        return (motors > 1 ? motors + " x " : "") + drive.motor().name() + " with "
                + drive.rotor().name() + " on " + drive.battery().name();
    }
}
