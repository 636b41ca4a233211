package foamfront.model.units;

/** Checks for record constructors: what can never be true is refused where it is first written down. */
public final class Require {
    private Require() {}

    /** Refuses anything but a finite number above zero; NaN included. */
    public static void positive(String name, double value, String unit) {
        if (!(value > 0) || value == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(name + " must be above 0 " + unit + " but is " + value);
        }
    }

    /** Refuses negative numbers, infinities and NaN. */
    public static void notNegative(String name, double value, String unit) {
        if (!(value >= 0) || value == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(name + " must be at least 0 " + unit + " but is " + value);
        }
    }

    /** Refuses anything outside [low, high]; NaN included. */
    public static void within(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    name + " must lie within " + low + " to " + high + " " + unit + " but is " + value);
        }
    }

    /** Refuses infinities and NaN. */
    public static void finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number but is " + value);
        }
    }
}
