package foamfront.model.flight;

/**
 * Level-flight drag on a fixed geometric grid of speeds above the stall, and the smooth minima of curves over it.
 *
 * <p>A minimum lies where a parabola through the lowest point and its neighbours has its vertex; at a grid end it is that end. On
 * parabolic polars best glide and least power lie within 0.1 % (ParabolicPolarExternalTest); on trimmed polars, which have the
 * corners of measured tables, within 1 % and 0.3 % RMS of a fine search (SpeedTableLawsTest).
 */
final class SpeedTable {
    static final int SIZE = 12;
    private static final double FIRST = 1.05;
    private static final double RATIO = 1.11;

    final double[] speed = new double[SIZE];
    /** Power off, N. */
    final double[] clean = new double[SIZE];

    /** Of it what lies in the propeller's stream, N. */
    final double[] scrubbed = new double[SIZE];

    /** Level flight under power, N. */
    final double[] drag = new double[SIZE];

    private double at;
    private double value;

    /** Fills the table for a trimmed aeroplane, with a propeller of this disc area (m²) ahead of its body or 0. */
    void fill(TrimmedFlight flight, double discArea) {
        spread(flight.stallSpeed());
        for (int i = 0; i < SIZE; i++) {
            drag[i] = flight.poweredDrag(speed[i], discArea);
            clean[i] = flight.lastDrag();
            scrubbed[i] = flight.scrubbed(speed[i], discArea);
        }
    }

    /** Lays the speeds out above a stall speed. */
    void spread(double stallSpeed) {
        double v = FIRST * stallSpeed;
        for (int i = 0; i < SIZE; i++) {
            speed[i] = v;
            v *= RATIO;
        }
    }

    /** Finds the minimum of {@code y} over the table's speeds; {@link #at()} and {@link #value()} then hold it. */
    void minimise(double[] y) {
        int low = 0;
        for (int i = 1; i < SIZE; i++) {
            if (y[i] < y[low]) {
                low = i;
            }
        }
        at = speed[low];
        value = y[low];
        if (low > 0 && low < SIZE - 1) {
            vertex(low, y);
        }
    }

    private void vertex(int i, double[] y) {
        double left = (y[i] - y[i - 1]) / (speed[i] - speed[i - 1]);
        double right = (y[i + 1] - y[i]) / (speed[i + 1] - speed[i]);
        double curvature = (right - left) / (speed[i + 1] - speed[i - 1]);
        if (curvature > 0) {
            // y = y_i-1 + left (v - v_i-1) + curvature (v - v_i-1)(v - v_i)
            at = 0.5 * (speed[i - 1] + speed[i] - left / curvature);
            value = y[i - 1] + left * (at - speed[i - 1]) + curvature * (at - speed[i - 1]) * (at - speed[i]);
        }
    }

    /** Speed of the last minimum, m/s. */
    double at() {
        return at;
    }

    /** Value of the last minimum. */
    double value() {
        return value;
    }
}
