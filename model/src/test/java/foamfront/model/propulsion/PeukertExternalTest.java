package foamfront.model.propulsion;

import foamfront.model.design.PowerPlant;
import foamfront.model.factors.Factors;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import org.junit.jupiter.api.Test;

/**
 * Loss of capacity with rate, which the model leaves out: L. W. Traub, "Range and Endurance Estimates for Battery-Powered Aircraft",
 * Journal of Aircraft 48(2), 2011, has E = Rt^(1-n) (eta V C / P)^n, so endurance grows as capacity to the power n. Fits to
 * lithium-polymer packs gave n of 1.00 to 1.05 (from memory); the model's is 1.
 */
class PeukertExternalTest {
    private static final Validation RATE = Validation.of(
            Subject.PROPULSION,
            "Capacity against rate",
            "L. W. Traub, Journal of Aircraft 48(2), 2011: endurance as capacity to the power n, here with n of 1.");

    /** A pack that holds a constant thrust lasts in proportion to its charge, as n = 1 says; more charge sags no less here. */
    @Test
    void theModelsDischargeHasAnExponentOfOne() {
        var plant = Plants.everyday();
        var larger = new PowerPlant(
                plant.motor(),
                plant.propeller(),
                Plants.withCapacity(plant.battery(), 3 * plant.battery().capacity()),
                plant.controller());
        var factors = Factors.NOMINAL;
        double one = Discharge.endurance(PowerTrain.of(plant, 1, factors, Plants.DENSITY, 0), 1, 9, 1, 0.2);
        double three = Discharge.endurance(PowerTrain.of(larger, 1, factors, Plants.DENSITY, 0), 1, 9, 1, 0.2);
        RATE.value("exponent of the model's discharge", 1, Math.log(three / one) / Math.log(3), 1e-9, "");
    }
}
