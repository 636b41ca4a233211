package foamfront.model.design;

import foamfront.model.parts.Battery;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.Rotor;

/** A motor with its propeller, controller and battery. */
public record PowerPlant(Motor motor, Propeller propeller, Battery battery, Controller controller) implements Drive {
    @Override
    public Rotor rotor() {
        return propeller;
    }
}
