package foamfront.optimizer.bench;

import foamfront.model.propulsion.PowerTrain;
import java.util.ArrayList;
import java.util.List;

/**
 * A power plant's figures row by row.
 *
 * @param axis what changes from row to row
 * @param points in rising order
 */
public record Sweep(Stand stand, Axis axis, List<Point> points) {
    private static final int ROWS = 13;
    private static final double LEAST_THROTTLE = 0.2;

    /** Speeds are round: the step is one of these, m/s. */
    private static final double[] STEPS = {0.5, 1, 2, 2.5, 5, 10};

    /** What changes from row to row. */
    public enum Axis {
        AIRSPEED,
        THROTTLE
    }

    public Sweep {
        points = List.copyOf(points);
    }

    /** Full throttle from rest until the thrust is gone. */
    public static Sweep byAirspeed(Stand stand) {
        PowerTrain train = stand.train();
        double step = step(train, stand.charge());
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 3 * ROWS; i++) {
            Point point = new Point(i * step, train.fullThrottle(i * step, stand.charge()));
            if (i > 0 && !(point.at().thrust() > 0)) {
                break;
            }
            points.add(point);
        }
        return new Sweep(stand, Axis.AIRSPEED, points);
    }

    /** From a fifth to full throttle at one airspeed, m/s. */
    public static Sweep byThrottle(Stand stand, double speed) {
        PowerTrain train = stand.train();
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= 8; i++) {
            train.solveThrottle(LEAST_THROTTLE + 0.1 * i, speed, stand.charge());
            points.add(new Point(speed, train.point()));
        }
        return new Sweep(stand, Axis.THROTTLE, points);
    }

    /** The smallest round step that reaches the end of the thrust in the rows there are. */
    private static double step(PowerTrain train, double charge) {
        for (double step : STEPS) {
            train.solveFullThrottle(step * (ROWS - 1), charge);
            if (train.thrust() <= 0) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1];
    }

    /** The row of full throttle at the lowest airspeed. */
    public Point hardest() {
        return axis == Axis.AIRSPEED ? points.get(0) : points.get(points.size() - 1);
    }

    /** The row that turns most of the battery's power into thrust power; the first where all are at rest. */
    public Point best() {
        Point best = points.get(0);
        for (Point point : points) {
            if (point.efficiency() > best.efficiency()) {
                best = point;
            }
        }
        return best;
    }
}
