package foamfront.model.water;

/** Fresh water near 20 °C. */
public final class Water {
    /** kg/m³. */
    public static final double DENSITY = 1000;

    /** m²/s. */
    public static final double KINEMATIC_VISCOSITY = 1e-6;

    private Water() {}
}
