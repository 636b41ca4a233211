package foamfront.optimizer.bench;

import foamfront.model.design.Drive;
import foamfront.model.factors.Factors;
import foamfront.model.propulsion.MotorLaw;
import foamfront.model.propulsion.PowerTrain;

/**
 * What stands on the bench.
 *
 * @param motors that share the battery, each with its controller
 * @param density of the air, kg/m³
 * @param temperature of the air, K
 * @param charge state of charge, 0 to 1
 * @param massKnown whether the motor's mass is: without it nobody can say what it bears
 */
public record Stand(Drive drive, int motors, double density, double temperature, double charge, boolean massKnown) {
    PowerTrain train() {
        PowerTrain train = PowerTrain.of(drive, motors, Factors.NOMINAL, density, 0);
        train.chill(temperature);
        return train;
    }

    MotorLaw motor() {
        return MotorLaw.of(drive.motor(), Factors.NOMINAL);
    }

    /** Motor and propeller; a fan's motor has no name of its own. */
    private String turned() {
        String rotor = drive.rotor().name();
        return drive.motor().name().equals(rotor)
                ? "the fan " + rotor
                : drive.motor().name() + " with " + rotor;
    }

    /** The combination in words. */
    public String words() {
        return (motors > 1 ? motors + " x " : "") + turned() + " on "
                + drive.battery().name();
    }
}
