package foamfront.model.parts;

/** What a motor turns: a propeller, or a fan in its duct. Both follow C_T and C_P against J = V / (n D). */
public sealed interface Rotor extends Part permits Propeller, Fan {
    /** Swept, m. */
    double diameter();

    /** Thrust and power coefficients against advance ratio and speed. */
    PropellerCurves curves();

    /** Nominal advance in a turn, m; thrust ends at about 1.25 times as much. */
    double pitch();

    /** Highest tip speed it stands, m/s. */
    double tipSpeed();
}
