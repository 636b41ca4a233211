package foamfront.model.factors;

/**
 * How far each factor may lie from 1, as the half-width of a band that holds the truth four times in five, with its reason.
 */
public enum Spread {
    SECTION_DRAG(
            0.20,
            "published low-Reynolds-number sections of like thickness scatter by a fifth; a section that is known less widens it"),
    MAXIMUM_LIFT(0.12, "folded sections lie between measured faceted and smooth ones"),
    PARASITE_DRAG(0.15, "gaps, tape edges and hinges of home-made foam models"),
    AIRFRAME_MASS(0.08, "glue and tape differ from builder to builder"),
    THRUST(0.06, "the same propeller type measured again gave 6 % more static thrust"),
    SHAFT_POWER(0.04, "as for thrust; static power repeated within 1 %, sessions within 5 %"),
    MOTOR_RESISTANCE(0.35, "effective over winding resistance 1.2 to 2.6"),
    BATTERY_CAPACITY(0.06, "packs age and labels flatter"),
    BATTERY_RESISTANCE(0.50, "the rule for cell resistance is good to a factor of 1.5"),
    BOARD_STRENGTH(0.45, "paper compressive strength 8 to 20 MPa about 12.5"),
    BOARD_STIFFNESS(0.30, "paper modulus 2 to 5 GPa along the grain"),
    THROW_SPEED(0.12, "arms differ"),
    ROLLING_FRICTION(0.40, "grass is cut when it is cut"),
    PRICE(0.20, "retail prices move by half within years"),
    TIME(0.35, "hours differ from builder to builder");

    private final double halfWidth;
    private final String reason;

    Spread(double halfWidth, String reason) {
        this.halfWidth = halfWidth;
        this.reason = reason;
    }

    /** Half-width of the 10 to 90 % band about 1. */
    public double halfWidth() {
        return halfWidth;
    }

    public String reason() {
        return reason;
    }
}
