package foamfront.model.parts;

/** Anything that can be bought for a build. */
public sealed interface Part permits Board, Spar, Motor, Rotor, Controller, Battery, Servo, Receiver, Wheel {
    /** Trade size, unique in its table, for example {@code 2212-920}. */
    String name();

    /** Price of one piece, in the catalogue's currency (spars: one stock length; boards: one sheet). */
    double price();

    Provenance provenance();
}
