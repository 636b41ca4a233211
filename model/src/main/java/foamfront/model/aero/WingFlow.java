package foamfront.model.aero;

import foamfront.model.airframe.Surface;
import java.util.List;

/**
 * The wings' upwash and downwash along a body, per unit incidence, as H. Multhopp takes it in "Aerodynamics of the Fuselage",
 * NACA TM-1036, 1942 (from memory): between leading and trailing edge the air follows the wing, and a body there turns nothing;
 * elsewhere the incidence of the body's air is that of flight and what the wings induce.
 *
 * <p>They induce what one straight line of elliptic load does on its centre line (Biot-Savart, derived):
 *
 * <pre>  λ / (π b²) [(2/π) (√(1 + X²) / X) E(1 / (1 + X²)) ∓ 1],   X = 2 d / b,</pre>
 *
 * upwards with - at d ahead of the line, downwards with + behind it; λ is the wings' lift per rad over dynamic pressure. The
 * line lies at the root's quarter chord c / 4. Near the wing the load lies along the chord: to this comes what a flat plate of the
 * same lift does to plane flow at s from its edge less what a vortex at its quarter chord does (derived),
 *
 * <pre>  k [√((s + c) / s) - 1 - (c / 2) / (s + c / 4)] ahead,  k [√(s / (s + c)) - 1 + (c / 2) / (s + 3c / 4)] behind,</pre>
 *
 * with k = 2 λ / (π² b c), the section's lift slope in the middle of an elliptic load over 2π. Behind the wing the whole is not
 * less than nothing. Tails are left out, and so is the height of the body under the wing.
 */
final class WingFlow {
    private static final int POINTS = 5;

    /** Points of Gauss and Legendre and their weights on 0 to 1 (common knowledge). */
    private static final double[] PLACE = {
        0.04691007703066800, 0.2307653449471585, 0.5, 0.7692346550528415, 0.9530899229693320
    };

    private static final double[] WEIGHT = {
        0.1184634425280945, 0.2393143352496832, 0.2844444444444444, 0.2393143352496832, 0.1184634425280945
    };

    /** The arithmetic-geometric mean doubles its digits every time. */
    private static final int MEANS = 5;

    private double leading;
    private double trailing;
    private double line;
    private double semispan;
    private double strength;

    /** Of nothing yet; a {@link LiftingSystem} keeps one, for the set-up of an aeroplane allocates nothing. */
    WingFlow() {}

    /**
     * Of a straight line of elliptic load.
     *
     * @param leading edge at the body, m from the nose
     * @param trailing edge there, m
     * @param line of the vortex, m
     * @param span m
     * @param liftSlope over dynamic pressure, m² per rad
     */
    WingFlow(double leading, double trailing, double line, double span, double liftSlope) {
        set(leading, trailing, line, span, liftSlope);
    }

    private void set(double leading, double trailing, double line, double span, double liftSlope) {
        this.leading = leading;
        this.trailing = trailing;
        this.line = line;
        semispan = 0.5 * span;
        strength = liftSlope / (Math.PI * span * span);
    }

    /** Takes the wings of a solved lifting system, a biplane's between their foremost and rearmost edges at the body. */
    void take(List<Surface> surfaces, LiftingSystem system) {
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        double lift = 0;
        double moment = 0;
        for (int s = 0; s < system.surfaceCount(); s++) {
            Surface surface = surfaces.get(system.listed(s));
            if (surface.isWing()) {
                double root = surface.panels().get(0).rootX();
                double chord = surface.panels().get(0).rootChord();
                double slope = system.surfaceLiftSlope(s);
                first = Math.min(first, root);
                last = Math.max(last, root + chord);
                lift += slope;
                moment += slope * (root + 0.25 * chord);
            }
        }
        set(first, last, moment / lift, system.referenceSpan(), lift);
    }

    /** Change of the air's upward angle at x on the axis per unit incidence of flight. */
    double turning(double x) {
        if (x >= leading && x <= trailing) {
            return 0;
        }
        double chord = trailing - leading;
        double k = 4 * strength * semispan / (Math.PI * chord);
        if (x < leading) {
            double s = leading - x;
            double near = Math.sqrt((s + chord) / s) - 1 - 0.5 * chord / (s + 0.25 * chord);
            return 1 + strength * (bound(line - x) - 1) + k * near;
        }
        double s = x - trailing;
        double near = Math.sqrt(s / (s + chord)) - 1 + 0.5 * chord / (s + 0.75 * chord);
        return Math.max(0, 1 - strength * (bound(x - line) + 1) + k * near);
    }

    /** ∫ of it from one station to another, m. */
    double along(double from, double to) {
        double ahead = Math.min(to, leading);
        double behind = Math.max(from, trailing);
        return (ahead > from ? integral(ahead, from - ahead) : 0) + (to > behind ? integral(behind, to - behind) : 0);
    }

    /** From the end nearer the wing, in steps whose roots are even: the flow changes there like a square root. */
    private double integral(double near, double length) {
        double sum = 0;
        for (int k = 0; k < POINTS; k++) {
            sum += 2 * PLACE[k] * WEIGHT[k] * turning(near + PLACE[k] * PLACE[k] * length);
        }
        return sum * Math.abs(length);
    }

    private double bound(double distance) {
        double x = distance / semispan;
        double square = x * x;
        return 2 / Math.PI * Math.sqrt(1 + square) / x * ellipticIntegral(1 / (1 + square));
    }

    /**
     * Complete elliptic integral of the second kind of a parameter below 1, by the arithmetic-geometric mean. M. Abramowitz and
     * I. A. Stegun, Handbook of Mathematical Functions, 1964, 17.6.3 and 17.6.4 (from memory).
     */
    static double ellipticIntegral(double parameter) {
        double a = 1;
        double b = Math.sqrt(1 - parameter);
        double sum = 0.5 * parameter;
        double power = 0.5;
        for (int k = 0; k < MEANS; k++) {
            double difference = 0.5 * (a - b);
            double product = a * b;
            a = 0.5 * (a + b);
            b = Math.sqrt(product);
            power *= 2;
            sum += power * difference * difference;
        }
        return 0.5 * Math.PI / a * (1 - sum);
    }
}
