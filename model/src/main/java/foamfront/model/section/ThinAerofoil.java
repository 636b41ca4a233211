package foamfront.model.section;

/**
 * Lift and moment of a mean line made of straight pieces, exact for that polygon.
 *
 * <p>Source: H. Glauert, The Elements of Aerofoil and Airscrew Theory (1926), ch. VII; I. H. Abbott and A. E. von Doenhoff,
 * Theory of Wing Sections (1959), section 4.3 (both from memory). With x = (1 − cos θ) / 2 and mean line slope z′,
 * α₀ = −(1/π) ∫ z′ (cos θ − 1) dθ, C_m,c/4 = −(π/4)(A₁ − A₂), Aₙ = (2/π) ∫ z′ cos nθ dθ, ideal angle (1/π) ∫ z′ dθ. Each
 * straight piece has constant slope, so its integrals are differences of θ, sin θ and ½ sin 2θ (<i>derived</i>).
 *
 * @param zeroLiftAngle from the x axis of the points, rad; negative with positive camber
 * @param quarterChordMoment about c/4, nose up positive
 * @param idealAngle at which the flow meets the nose without suction, rad
 */
public record ThinAerofoil(double zeroLiftAngle, double quarterChordMoment, double idealAngle) {
    /**
     * Of the polygon through the points.
     *
     * @param x fractions of chord, rising strictly from 0 to 1
     * @param z heights, fractions of chord; only their differences count
     */
    public static ThinAerofoil of(double[] x, double[] z) {
        double slopeTheta = 0;
        double slopeSine = 0;
        double slopeDoubleSine = 0;
        double theta = 0;
        double sine = 0;
        double halfDoubleSine = 0;
        for (int i = 1; i < x.length; i++) {
            double slope = (z[i] - z[i - 1]) / (x[i] - x[i - 1]);
            double cosine = 1 - 2 * x[i];
            double nextTheta = StrictMath.acos(cosine);
            double nextSine = 2 * Math.sqrt(x[i] * (1 - x[i]));
            double nextHalfDoubleSine = nextSine * cosine;
            slopeTheta += slope * (nextTheta - theta);
            slopeSine += slope * (nextSine - sine);
            slopeDoubleSine += slope * (nextHalfDoubleSine - halfDoubleSine);
            theta = nextTheta;
            sine = nextSine;
            halfDoubleSine = nextHalfDoubleSine;
        }
        return new ThinAerofoil(
                (slopeTheta - slopeSine) / Math.PI, 0.5 * (slopeDoubleSine - slopeSine), slopeTheta / Math.PI);
    }
}
