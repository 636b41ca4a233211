package foamfront.model.appraisal;

/**
 * Trimmed level flight at one speed.
 *
 * @param speed m/s
 * @param reynolds number of the wing's mean aerodynamic chord
 * @param liftCoefficient on the reference area
 * @param profileDrag coefficient of wing and tail sections
 * @param inducedDrag coefficient
 * @param parasiteDrag coefficient of all else
 * @param drag N
 * @param incidence of the body axis, rad
 * @param elevator rad, trailing edge down positive
 */
public record PolarPoint(
        double speed,
        double reynolds,
        double liftCoefficient,
        double profileDrag,
        double inducedDrag,
        double parasiteDrag,
        double drag,
        double incidence,
        double elevator) {}
