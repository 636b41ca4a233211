package foamfront.model.units;

/** What a number measures. */
public enum Dimension {
    LENGTH,
    AREA,
    MASS,
    TIME,
    SPEED,
    ANGLE,
    ANGULAR_SPEED,
    TEMPERATURE,
    VOLTAGE,
    CURRENT,
    RESISTANCE,
    POWER,
    CHARGE,
    SPEED_CONSTANT,
    ROTATION,
    FORCE,
    TORQUE,
    PRESSURE,
    AREAL_DENSITY,
    DENSITY,
    LINEAR_MASS,
    PACE,
    POWER_LOADING,
    MONEY,
    NUMBER,
    COUNT
}
