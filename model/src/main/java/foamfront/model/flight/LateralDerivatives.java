package foamfront.model.flight;

/**
 * How side force, roll and yaw answer sideslip and rates, per rad and per p b / 2V or r b / 2V, about the balance point. Signs
 * as in {@link foamfront.model.aero.LateralSystem}: C_Yβ and C_lβ negative on a stable aeroplane, C_nβ positive.
 *
 * @param sideForce C_Yβ
 * @param rollSideslip C_lβ
 * @param rollDamping C_lp
 * @param rollYaw C_lr
 * @param yawStiffness C_nβ
 * @param yawRoll C_np
 * @param yawDamping C_nr
 */
public record LateralDerivatives(
        double sideForce,
        double rollSideslip,
        double rollDamping,
        double rollYaw,
        double yawStiffness,
        double yawRoll,
        double yawDamping) {
    /** C_lβ C_nr − C_lr C_nβ: above zero a spiral dies out (B. Etkin, Dynamics of Flight, from memory). */
    public double spiralCriterion() {
        return rollSideslip * yawDamping - rollYaw * yawStiffness;
    }
}
