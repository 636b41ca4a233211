package foamfront.model.design;

import foamfront.model.parts.Spar;

/** What carries the wing's bending besides its skins. */
public sealed interface WingSpar {
    /** A strip of the wing's own board inside the fold; in a plate nothing at all. */
    record BoardStrip() implements WingSpar {}

    /** A stock tube, rod or stick from the catalogue. */
    record Stock(Spar spar) implements WingSpar {}
}
