package foamfront.model.structure;

import static foamfront.model.units.Require.positive;

import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Board;

/**
 * A builder's test of his own board: a strip on two supports with a weight in the middle. Its sag is F L³ / (48 D w) by bending
 * and F L / (4 S w) by shear ({@link Sandwich}); given the sag, what is left of it after shear gives D, and D the paper's
 * modulus. Derived.
 *
 * @param width of the strip, m
 * @param span between the supports, m
 * @param load in the middle, kg
 */
public record StripTest(double width, double span, double load) {
    public StripTest {
        positive("strip width", width, "m");
        positive("strip span", span, "m");
        positive("strip load", load, "kg");
    }

    /** Sag in the middle of a strip of a board, m. */
    public double sag(Board board) {
        Sandwich strip = sandwich(board);
        double force = Atmosphere.GRAVITY * load;
        return force * span * span * span / (48 * strip.bendingStiffness() * width) + shearSag(strip);
    }

    /**
     * The paper's Young's modulus that explains a measured sag with the board's other figures as they are, Pa.
     *
     * @throws IllegalArgumentException if shear and foam alone would sag as little or as much
     */
    public double faceModulus(Board board, double sag) {
        positive("sag", sag, "m");
        Sandwich strip = sandwich(board);
        double bending = sag - shearSag(strip);
        double core = strip.coreModulus() * strip.core() * strip.core() * strip.core() / 12;
        double force = Atmosphere.GRAVITY * load;
        double stiffness = force * span * span * span / (48 * bending * width);
        if (!(bending > 0) || !(stiffness > core)) {
            throw new IllegalArgumentException("no paper explains a sag of " + sag + " m: the foam's shear alone gives "
                    + shearSag(strip) + " m, the foam without paper "
                    + (force * span * span * span / (48 * core * width) + shearSag(strip)) + " m");
        }
        double d = strip.depth();
        double face = strip.face();
        return (stiffness - core) / (face * (0.5 * d * d + face * face / 6));
    }

    private static Sandwich sandwich(Board board) {
        return Sandwich.of(board, Factors.NOMINAL);
    }

    private double shearSag(Sandwich strip) {
        return Atmosphere.GRAVITY * load * span / (4 * strip.shearStiffness() * width);
    }
}
