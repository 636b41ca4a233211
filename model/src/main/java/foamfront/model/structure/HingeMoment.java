package foamfront.model.structure;

/**
 * Hinge moment of a plain control by thin-aerofoil theory, C_H = b₁ α + b₂ δ on the control's own chord and area. With E the
 * control's share of the chord, cos θ_h = 2E − 1 at the hinge and φ = π − θ_h:
 *
 * <pre>
 * K  = φ (cos θ_h − 1/2) + sin θ_h − sin θ_h cos θ_h / 2
 * b₁ = −K / E²
 * b₂ = −[φ K + (sin θ_h / 2)(φ cos θ_h + sin θ_h)] / (π E²)
 * </pre>
 *
 * Per radian. Derived from the flat plate's and the flapped plate's pressure jumps, 4 (1 + cos θ) / sin θ and its logarithmic
 * sum (H. Glauert's theory, ARC R&M 1095 (1927), from memory). Real surfaces need 50 to 75 % of it, so it is on
 * the safe side.
 *
 * @param incidence b₁, per rad
 * @param deflection b₂, per rad
 */
public record HingeMoment(double incidence, double deflection) {
    /**
     * Of a control on a section.
     *
     * @param chordFraction control chord over the section's chord, above 0 and up to 1
     */
    public static HingeMoment of(double chordFraction) {
        double e = chordFraction;
        double cos = 2 * e - 1;
        double sin = 2 * Math.sqrt(Math.max(0, e * (1 - e)));
        double phi = Math.PI - StrictMath.acos(cos);
        double k = phi * (cos - 0.5) + sin - 0.5 * sin * cos;
        double flap = phi * k + 0.5 * sin * (phi * cos + sin);
        return new HingeMoment(-k / (e * e), -flap / (Math.PI * e * e));
    }
}
