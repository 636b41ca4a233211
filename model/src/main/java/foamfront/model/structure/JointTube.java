package foamfront.model.structure;

/**
 * The tube of a plug-in wing inside its sleeve of length l, loaded at the mouth (the root rib) by a moment M and a
 * shear V of one sense. The sleeve presses back along a straight line over its length (rigid tube, even bedding;
 * derived from balance of forces and moments), x from the mouth:
 *
 * <pre>
 * p(x) = p₀ − (p₀ + p₁) x / l,   p₀ = 4 V / l + 6 M / l²,   p₁ = 2 V / l + 6 M / l²
 * </pre>
 *
 * Pressure is greatest at the mouth, 6 M / (d l²) without shear. Shear in the tube is V there and V − p₀² l / 2 (p₀ + p₁) where
 * p = 0; the moment grows until the shear has fallen to zero at V l² / (3 V l + 6 M).
 *
 * @param moment greatest in the tube, N m
 * @param shear greatest in the tube, N
 * @param pressure greatest in the sleeve, over the tube's diameter, Pa
 */
record JointTube(double moment, double shear, double pressure) {
    /** A tube of a diameter (m), engaged over a length (m); neither load below zero. */
    static JointTube of(double moment, double shear, double diameter, double engaged) {
        double l = engaged;
        double near = (4 * shear + 6 * moment / l) / l;
        double far = (2 * shear + 6 * moment / l) / l;
        double sum = near + far;
        if (!(sum > 0)) {
            return new JointTube(0, 0, 0);
        }
        double within = near * near * l / (2 * sum) - shear;
        double x = 2 * shear / sum;
        double most = moment + x * (shear - x * (0.5 * near - x * sum / (6 * l)));
        return new JointTube(most, Math.max(shear, within), near / diameter);
    }
}
