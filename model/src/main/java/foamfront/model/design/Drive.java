package foamfront.model.design;

import foamfront.model.parts.Battery;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Rotor;

/** A motor with what it turns and what feeds it, whether propeller or fan. */
public sealed interface Drive permits PowerPlant, Power.DuctedFan {
    Motor motor();

    Rotor rotor();

    Battery battery();

    Controller controller();
}
