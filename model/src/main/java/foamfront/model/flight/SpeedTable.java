package foamfront.model.flight;

import java.util.function.DoubleUnaryOperator;

/**
 * Level-flight drag on a fixed grid of speeds above the stall, and the smooth minima of curves over it.
 *
 * <p>Steps widen with speed, since drag turns sharply just above the stall and slowly after. A minimum lies where a parabola
 * through the lowest point and its neighbours has its vertex; where the value itself counts, the curve is taken once more there.
 * Least drag and least power of trimmed polars so lie within 0.05 % of a fine search, 0.01 % as a root mean square, in spite of
 * the corners of measured tables (SpeedTableLawsTest).
 */
final class SpeedTable {
    static final int SIZE = 12;

    /** First speed, first step (both over the stall speed), and each step over the one before: the last is 3.3 stall speeds. */
    private static final double FIRST = 1.05;

    private static final double STEP = 0.04;
    private static final double GROWTH = 1.3;

    final double[] speed = new double[SIZE];
    /** Power off, N. */
    final double[] clean = new double[SIZE];

    /** Of it what lies in the propeller's stream, N. */
    final double[] scrubbed = new double[SIZE];

    /** Level flight under power, N. */
    final double[] drag = new double[SIZE];

    private int lowest;
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
        double step = STEP * stallSpeed;
        for (int i = 0; i < SIZE; i++) {
            speed[i] = v;
            v += step;
            step *= GROWTH;
        }
    }

    /** Finds the minimum of {@code y} over the table's speeds; {@link #at()} and {@link #value()} then hold it. */
    void minimise(double[] y) {
        lowest = 0;
        for (int i = 1; i < SIZE; i++) {
            if (y[i] < y[lowest]) {
                lowest = i;
            }
        }
        at = speed[lowest];
        value = y[lowest];
        vertex(Math.min(SIZE - 2, Math.max(1, lowest)), y);
    }

    /** The same, at no less than {@code slowest}, with the curve's own value there. */
    void minimise(double[] y, double slowest, DoubleUnaryOperator curve) {
        minimise(y);
        if (at < slowest) {
            at = slowest;
            value = curve.applyAsDouble(at);
            return;
        }
        value = curve.applyAsDouble(at);
        if (y[lowest] < value && speed[lowest] >= slowest) {
            at = speed[lowest];
            value = y[lowest];
        }
    }

    private void vertex(int i, double[] y) {
        double left = (y[i] - y[i - 1]) / (speed[i] - speed[i - 1]);
        double right = (y[i + 1] - y[i]) / (speed[i + 1] - speed[i]);
        double curvature = (right - left) / (speed[i + 1] - speed[i - 1]);
        // y = y_i-1 + left (v - v_i-1) + curvature (v - v_i-1)(v - v_i)
        double v = 0.5 * (speed[i - 1] + speed[i] - left / curvature);
        if (curvature > 0 && v > speed[0] && v < speed[SIZE - 1]) {
            at = v;
            value = y[i - 1] + left * (v - speed[i - 1]) + curvature * (v - speed[i - 1]) * (v - speed[i]);
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
