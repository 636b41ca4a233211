package foamfront.model.flight;

import foamfront.model.propulsion.Discharge;
import foamfront.model.propulsion.PowerTrain;

/**
 * The speeds at which it flies level, and how long and how far the battery carries it at each.
 *
 * <p>Endurance follows these rules (judgement): steady level flight at the speed of least electrical power, not below
 * 1.2 stall speeds nor 1.33 times the wind, after one take-off and full-throttle climb to 50 m and before one 30 s full-throttle
 * go-around, down to 20 % of capacity. Cruise is flown at the speed that goes farthest out and back in the stated wind
 * (derived; in still air the speed of best range), not below 1.3 stall speeds nor 1.33 times the wind.
 */
public final class LevelFlight {
    private static final double WIND = 1.33;
    private static final double CLIMB_HEIGHT = 50; // m
    private static final double GO_AROUND = 30; // s
    private static final double TAKE_OFF = 5; // s at full throttle, throw or roll (judgement)
    /** Charge half-way through a flight that lands with a fifth. */
    public static final double HALF_CHARGE = 0.6;

    /** Headway below this share of the airspeed is not told apart: the least speeds keep clear of it. */
    private static final double LEAST_HEADWAY = 0.05;

    private final double[] power = new double[SpeedTable.SIZE];
    private final double[] cost = new double[SpeedTable.SIZE];

    private double cruiseSpeed;
    private double enduranceSpeed;
    private double rangeSpeed;
    private boolean clipped;
    private double endurance;
    private double range;
    private double outAndBack;
    private double cruiseRotation;

    void solve(
            TrimmedFlight flight,
            PowerTrain train,
            SpeedTable table,
            FullThrottle full,
            double streamArea,
            double wind) {
        double stall = flight.stallSpeed();
        double slowest = Math.max(Performance.SAFE * stall, WIND * wind);
        double top = full.topSpeed();
        if (top < slowest) {
            grounded(slowest, Performance.CRUISE * stall, full.topRotation());
            return;
        }
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            power[i] = power(train, table.drag[i], table.speed[i]);
        }
        table.minimise(power);
        clipped = table.at() < slowest;
        enduranceSpeed = Math.min(top, Math.max(slowest, table.at()));
        rangeSpeed = farthest(table, slowest, top, 0);
        cruiseSpeed = farthest(table, Math.max(Performance.CRUISE * stall, WIND * wind), top, wind);
        double drag = flight.poweredDrag(enduranceSpeed, streamArea);
        endurance = discharge(train, full, drag);
        double energy = endurance * power(train, drag, enduranceSpeed);
        range = energy / power(train, flight.poweredDrag(rangeSpeed, streamArea), rangeSpeed) * rangeSpeed;
        double cruiseTime = energy / power(train, flight.poweredDrag(cruiseSpeed, streamArea), cruiseSpeed);
        cruiseRotation = train.rotation();
        outAndBack = cruiseTime * Math.max(0, headway(cruiseSpeed, wind)) / 2;
    }

    /** It cannot fly level at any speed it should. */
    private void grounded(double slowest, double cruise, double rotation) {
        enduranceSpeed = slowest;
        rangeSpeed = slowest;
        cruiseSpeed = cruise;
        cruiseRotation = rotation;
        endurance = 0;
        range = 0;
        outAndBack = 0;
        clipped = true;
    }

    /**
     * The speed at which energy goes farthest there and back against a wind, between a least speed and the top speed. Both legs
     * over a distance s take s/(v - w) + s/(v + w) = 2s/(v - w²/v).
     */
    private double farthest(SpeedTable table, double slowest, double top, double wind) {
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            double v = table.speed[i];
            cost[i] = power[i] / Math.max(headway(v, wind), LEAST_HEADWAY * v);
        }
        table.minimise(cost);
        return Math.min(top, Math.max(slowest, table.at()));
    }

    /** Mean speed over ground of a flight out and back along the wind, m/s. */
    private static double headway(double speed, double wind) {
        return speed - wind * wind / speed;
    }

    /** Electrical power that holds a drag, W; beyond what the plant can do, more than it can draw. */
    static double power(PowerTrain train, double drag, double speed) {
        train.solveHolding(drag, speed, HALF_CHARGE);
        double power = train.batteryVoltage() * train.batteryCurrent();
        return train.thrust() >= drag * (1 - 1e-6) ? power : power * drag / Math.max(1e-3 * drag, train.thrust());
    }

    /** Seconds at the endurance speed, between the climb from take-off and the reserve with its go-around. */
    private double discharge(PowerTrain train, FullThrottle full, double drag) {
        double climbTime = TAKE_OFF + CLIMB_HEIGHT / Math.max(0.1, full.climbRate());
        double from = Discharge.afterFullThrottle(train, full.climbSpeed(), climbTime, FullThrottle.FULL_CHARGE);
        double to = Discharge.RESERVE + full.current() * GO_AROUND / train.capacity();
        return from > to ? Discharge.endurance(train, drag, enduranceSpeed, from, to) : 0;
    }

    /** m/s. */
    public double cruiseSpeed() {
        return cruiseSpeed;
    }

    /** Speed at which endurance is given, m/s. */
    double enduranceSpeed() {
        return enduranceSpeed;
    }

    /** Speed at which range is given, m/s. */
    double rangeSpeed() {
        return rangeSpeed;
    }

    /** Whether the speed of least power lies below the safe speed. */
    public boolean enduranceClipped() {
        return clipped;
    }

    /** s. */
    public double endurance() {
        return endurance;
    }

    /** m. */
    public double range() {
        return range;
    }

    /** m. */
    public double outAndBack() {
        return outAndBack;
    }

    /** Rotation in cruise, rev/s. */
    public double cruiseRotation() {
        return cruiseRotation;
    }
}
