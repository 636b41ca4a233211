package foamfront.model.aero;

/**
 * Profile drag of streamlined shapes over the friction of a flat plate of their wetted area.
 *
 * <p>Sources: S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. 6; D. P. Raymer, Aircraft Design, section 12.5 (both <i>from
 * memory</i>). They fit streamlined shapes: square-cornered bodies take {@link BoxBody} instead.
 */
public final class FormFactor {
    private FormFactor() {}

    /** Lifting surface, Hoerner: 1 + 2 t/c + 60 (t/c)⁴. */
    public static double surface(double thickness) {
        double square = thickness * thickness;
        return 1 + 2 * thickness + 60 * square * square;
    }

    /**
     * Lifting surface, Raymer: 1 + (0.6 / x_t) t/c + 100 (t/c)⁴.
     *
     * @param station of greatest thickness, fraction of chord
     */
    public static double surface(double thickness, double station) {
        double square = thickness * thickness;
        return 1 + 0.6 / station * thickness + 100 * square * square;
    }

    /** Body of length over diameter f, Hoerner: 1 + 1.5 f^−1.5 + 7 f⁻³. */
    public static double body(double fineness) {
        double slender = 1 / (fineness * Math.sqrt(fineness));
        return 1 + 1.5 * slender + 7 * slender * slender;
    }
}
