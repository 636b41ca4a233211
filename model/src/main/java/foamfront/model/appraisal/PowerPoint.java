package foamfront.model.appraisal;

/**
 * What the power plant does at one speed.
 *
 * @param speed m/s
 * @param available thrust at full throttle, N
 * @param required thrust for level flight, N
 * @param throttle for level flight, 0 to 1; NaN where full throttle does not hold it
 * @param current from the battery in level flight, A; NaN likewise
 * @param electrical power from the battery in level flight, W; NaN likewise
 * @param climb rate at full throttle, m/s
 */
public record PowerPoint(
        double speed,
        double available,
        double required,
        double throttle,
        double current,
        double electrical,
        double climb) {}
