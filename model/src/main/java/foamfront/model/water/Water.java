package foamfront.model.water;

/** Fresh water near 20 °C. */
public final class Water {
    /** kg/m³. */
    public static final double DENSITY = 1000;

    /** m²/s. */
    public static final double KINEMATIC_VISCOSITY = 1e-6;

    private Water() {}

    /**
     * Spray load K = C_Δ0 / (L_f / b)² with C_Δ0 = m / (ρ b³): J. B. Parkinson, NACA TN 1290 (1947), <i>from memory</i>. 0.0525
     * is very light, 0.0675 satisfactory, 0.0825 heavy but acceptable, 0.0975 excessive.
     *
     * @param mass on one bottom, kg
     * @param beam b, m
     * @param forebody L_f, m
     */
    public static double sprayLoad(double mass, double beam, double forebody) {
        double slender = forebody / beam;
        return mass / (DENSITY * beam * beam * beam) / (slender * slender);
    }
}
