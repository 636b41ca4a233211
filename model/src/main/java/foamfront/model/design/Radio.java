package foamfront.model.design;

import foamfront.model.parts.Receiver;
import foamfront.model.parts.Servo;

/** The receiver, and the servo used for every moving surface. */
public record Radio(Receiver receiver, Servo servo) {}
