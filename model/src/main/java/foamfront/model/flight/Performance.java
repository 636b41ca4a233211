package foamfront.model.flight;

import foamfront.model.parts.Rotor;
import foamfront.model.propulsion.Discharge;
import foamfront.model.propulsion.PowerTrain;

/**
 * What the aeroplane does with its power plant: glide, sink, cruise, climb, top speed, endurance and range.
 *
 * <p>Endurance follows these rules (judgement): steady level flight at the speed of least electrical power, not below
 * 1.2 stall speeds nor 1.33 times the wind, after one take-off and full-throttle climb to 50 m and before one 30 s full-throttle
 * go-around, down to 20 % of capacity. Cruise is flown at the speed that goes farthest out and back in the stated wind
 * (derived; in still air the speed of best range), not below 1.3 stall speeds nor 1.33 times the wind. Climb, top speed and cell voltage are taken at 30 % charge, currents at full charge.
 *
 * <p>Belongs to one worker; what it says stands until the next {@link #solve}.
 */
public final class Performance {
    /** Safe speed over stall speed. */
    public static final double SAFE = 1.2;

    /** Least cruise speed over stall speed. */
    public static final double CRUISE = 1.3;

    private static final double WIND = 1.33;
    private static final double CLIMB_HEIGHT = 50; // m
    private static final double GO_AROUND = 30; // s
    private static final double TAKE_OFF = 5; // s at full throttle, throw or roll (judgement)
    private static final double LOW_CHARGE = 0.3;
    private static final double FULL_CHARGE = 1;
    private static final double HALF_CHARGE = 0.6;

    /** Headway below this share of the airspeed is not told apart: the least speeds keep clear of it. */
    private static final double LEAST_HEADWAY = 0.05;

    /** Halvings of the top-speed bracket left after the false-position steps. */
    private static final int ROOT_STEPS = 12;

    private final SpeedTable table = new SpeedTable();
    private final ThrustCurve thrust = new ThrustCurve();
    private final double[] scratch = new double[SpeedTable.SIZE];
    private final double[] cost = new double[SpeedTable.SIZE];

    private double streamArea;
    private DragParabola parabola = new DragParabola(0, 1);
    private double glideRatio;
    private double sinkRate;
    private double climbRate;
    private double climbSpeed;
    private double topSpeed;
    private double cruiseSpeed;
    private double enduranceSpeed;
    private boolean clipped;
    private double endurance;
    private double range;
    private double outAndBack;
    private double staticThrust;
    private double staticTorque;
    private double fullPower;
    private double fullMotorInput;
    private double fullCurrent;
    private double lowVoltage;
    private double topRotation;
    private double cruiseRotation;
    private boolean insidePropellerData;

    private void glide(TrimmedFlight flight, double stoppedDrag) {
        parabola = DragParabola.of(flight);
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            double q = 0.5 * flight.density() * table.speed[i] * table.speed[i];
            scratch[i] = table.clean[i] + q * stoppedDrag;
        }
        table.minimise(scratch);
        glideRatio = flight.weight() / table.value();
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            scratch[i] *= table.speed[i] / flight.weight();
        }
        table.minimise(scratch);
        sinkRate = table.value();
    }

    /**
     * Everything.
     *
     * @param streamArea disc area of propellers whose slipstream scrubs body or wing, m²; 0 for a pusher or fan
     * @param stoppedDrag drag area of the stopped propeller in the glide, m²
     * @param wind m/s
     */
    public void solve(
            TrimmedFlight flight, PowerTrain train, Rotor rotor, double streamArea, double stoppedDrag, double wind) {
        this.streamArea = streamArea;
        table.fill(flight, streamArea);
        glide(flight, stoppedDrag);
        train.solveFullThrottle(0, FULL_CHARGE);
        staticThrust = train.thrust();
        staticTorque = train.torque();
        fullPower = train.batteryVoltage() * train.batteryCurrent();
        fullMotorInput = train.motorVoltage() * train.motorCurrent();
        fullCurrent = train.batteryCurrent();
        insidePropellerData = train.insideMeasured();
        topRotation = train.rotation();
        thrust.fit(train, rotor.pitch(), LOW_CHARGE);
        climb(flight);
        top(flight);
        train.solveFullThrottle(0, LOW_CHARGE);
        lowVoltage = train.batteryVoltage();
        train.solveFullThrottle(topSpeed, FULL_CHARGE);
        topRotation = Math.max(topRotation, train.rotation());
        level(flight, train, wind);
    }

    private void climb(TrimmedFlight flight) {
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            double v = table.speed[i];
            double pull = thrust.at(v);
            double drag = table.clean[i] + flight.slipstreamDrag(table.scrubbed[i], pull, v, streamArea);
            scratch[i] = -(pull - drag) * v / flight.weight();
        }
        // Speeds below the safe one count as far below the rest: the vertex is looked for above them only.
        int first = firstSafe(SAFE * flight.stallSpeed());
        for (int i = 0; i < first; i++) {
            scratch[i] = scratch[first] + (first - i) * 1e-3;
        }
        table.minimise(scratch);
        climbRate = -table.value();
        climbSpeed = table.at();
    }

    private int firstSafe(double speed) {
        int first = 0;
        while (first < SpeedTable.SIZE - 1 && table.speed[first] < speed) {
            first++;
        }
        return first;
    }

    /** The fastest speed at which full throttle holds level flight, by regula falsi with the Illinois step. */
    private void top(TrimmedFlight flight) {
        int at = SpeedTable.SIZE - 1;
        while (at >= 0 && thrust.at(table.speed[at]) < table.drag[at]) {
            at--;
        }
        if (at < 0) {
            topSpeed = 0;
            return;
        }
        double low = table.speed[at];
        double excessLow = thrust.at(low) - table.drag[at];
        boolean last = at == SpeedTable.SIZE - 1;
        double high = last ? Math.max(1.05 * low, thrust.fastest()) : table.speed[at + 1];
        double excessHigh = thrust.at(high) - (last ? flight.poweredDrag(high, streamArea) : table.drag[at + 1]);
        if (excessHigh >= 0) {
            topSpeed = high;
            return;
        }
        for (int i = 0; i < ROOT_STEPS; i++) {
            double middle = (low * excessHigh - high * excessLow) / (excessHigh - excessLow);
            double excess = thrust.at(middle) - flight.poweredDrag(middle, streamArea);
            if (excess >= 0) {
                low = middle;
                excessLow = excess;
                excessHigh *= 0.5;
            } else {
                high = middle;
                excessHigh = excess;
                excessLow *= 0.5;
            }
            if (high - low < 1e-3) {
                break;
            }
        }
        topSpeed = 0.5 * (low + high);
    }

    /** Speeds of least power, of best range in still air and there and back in the wind, then the discharge. */
    private void level(TrimmedFlight flight, PowerTrain train, double wind) {
        double slowest = Math.max(SAFE * flight.stallSpeed(), WIND * wind);
        if (topSpeed < slowest) {
            enduranceSpeed = slowest;
            cruiseSpeed = CRUISE * flight.stallSpeed();
            endurance = 0;
            range = 0;
            outAndBack = 0;
            cruiseRotation = topRotation;
            clipped = true;
            return;
        }
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            scratch[i] = power(train, table.drag[i], table.speed[i]);
        }
        table.minimise(scratch);
        clipped = table.at() < slowest;
        enduranceSpeed = Math.min(topSpeed, Math.max(slowest, table.at()));
        double rangeSpeed = farthest(slowest, 0);
        cruiseSpeed = farthest(Math.max(CRUISE * flight.stallSpeed(), WIND * wind), wind);
        double enduranceDrag = flight.poweredDrag(enduranceSpeed, streamArea);
        endurance = discharge(train, enduranceDrag, enduranceSpeed);
        double energy = endurance * power(train, enduranceDrag, enduranceSpeed);
        range = energy / power(train, flight.poweredDrag(rangeSpeed, streamArea), rangeSpeed) * rangeSpeed;
        double cruiseTime = energy / power(train, flight.poweredDrag(cruiseSpeed, streamArea), cruiseSpeed);
        cruiseRotation = train.rotation();
        outAndBack = cruiseTime * Math.max(0, headway(cruiseSpeed, wind)) / 2;
    }

    /**
     * The speed at which energy goes farthest there and back against a wind, between a least speed and the top speed, from the
     * powers in scratch. Both legs over a distance s take s/(v - w) + s/(v + w) = 2s/(v - w²/v).
     */
    private double farthest(double slowest, double wind) {
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            double v = table.speed[i];
            cost[i] = scratch[i] / Math.max(headway(v, wind), LEAST_HEADWAY * v);
        }
        table.minimise(cost);
        return Math.min(topSpeed, Math.max(slowest, table.at()));
    }

    /** Mean speed over ground of a flight out and back along the wind, m/s. */
    private static double headway(double speed, double wind) {
        return speed - wind * wind / speed;
    }

    /** Electrical power that holds a drag, W; beyond what the plant can do, more than it can draw. */
    private double power(PowerTrain train, double drag, double speed) {
        train.solveHolding(drag, speed, HALF_CHARGE);
        double power = train.batteryVoltage() * train.batteryCurrent();
        return train.thrust() >= drag * (1 - 1e-6) ? power : power * drag / Math.max(1e-3 * drag, train.thrust());
    }

    private double discharge(PowerTrain train, double drag, double speed) {
        double climbTime = TAKE_OFF + CLIMB_HEIGHT / Math.max(0.1, climbRate);
        double from = Discharge.afterFullThrottle(train, climbSpeed, climbTime, FULL_CHARGE);
        double to = Discharge.RESERVE + fullCurrent * GO_AROUND / train.capacity();
        return from > to ? Discharge.endurance(train, drag, speed, from, to) : 0;
    }

    DragParabola parabola() {
        return parabola;
    }

    /** Oswald's span efficiency of the trimmed polar between 1.2 and 2 stall speeds. */
    public double spanEfficiency(double aspectRatio) {
        return parabola.spanEfficiency(aspectRatio);
    }

    /** C_D0 of the parabola through the trimmed polar at 1.2 and 2 stall speeds. */
    public double zeroLiftDrag() {
        return parabola.zeroLift();
    }

    /** Thrust against speed at full throttle and low charge. */
    ThrustCurve thrustCurve() {
        return thrust;
    }

    /** Full-throttle thrust at an airspeed (m/s) with the battery at 30 %, N. */
    public double fullThrust(double speed) {
        return thrust.at(speed);
    }

    public double glideRatio() {
        return glideRatio;
    }

    /** m/s. */
    public double sinkRate() {
        return sinkRate;
    }

    /** m/s; negative where it cannot hold level. */
    public double climbRate() {
        return climbRate;
    }

    /** Speed of best climb, m/s. */
    public double climbSpeed() {
        return climbSpeed;
    }

    /** m/s; 0 where it cannot fly level. */
    public double topSpeed() {
        return topSpeed;
    }

    /** m/s. */
    public double cruiseSpeed() {
        return cruiseSpeed;
    }

    /** Speed at which endurance is given, m/s. */
    public double enduranceSpeed() {
        return enduranceSpeed;
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

    /** Static thrust at full throttle and full charge, N. */
    public double staticThrust() {
        return staticThrust;
    }

    /** Torque of each propeller in the same state, N m. */
    public double staticTorque() {
        return staticTorque;
    }

    /** Electrical power from the battery at rest, full throttle, full charge, W. */
    public double fullPower() {
        return fullPower;
    }

    /** Electrical input of each motor in the same state, W. */
    public double fullMotorInput() {
        return fullMotorInput;
    }

    /** Battery current in the same state, A. */
    public double fullCurrent() {
        return fullCurrent;
    }

    /** Battery voltage at rest, full throttle, 30 % charge, V. */
    public double lowVoltage() {
        return lowVoltage;
    }

    /** Fastest rotation met at full throttle, rev/s. */
    public double topRotation() {
        return topRotation;
    }

    /** Rotation in cruise, rev/s. */
    public double cruiseRotation() {
        return cruiseRotation;
    }

    /** Whether static full throttle lies inside the propeller's measured range. */
    public boolean insidePropellerData() {
        return insidePropellerData;
    }
}
