package foamfront.model.flight;

import foamfront.model.propulsion.PowerTrain;

/**
 * What full throttle gives: at rest with a full battery, in climb and at top speed with 30 % charge.
 *
 * <p>Climb is flown with the slipstream of full throttle's thrust, level flight with that of the thrust it needs; at the top
 * speed the two are the same.
 */
public final class FullThrottle {
    private static final double LOW_CHARGE = 0.3;
    static final double FULL_CHARGE = 1;

    /** Secants at most; brackets of the table take three. */
    private static final int ROOT_STEPS = 12;

    /** The last secant moves less than this, m/s; a hundredth of it is left then, since each gains more digits than the one before. */
    private static final double LAST_STEP = 1e-3;

    private final ThrustCurve thrust = new ThrustCurve();
    private final double[] sinking = new double[SpeedTable.SIZE];

    private double streamArea;
    private double climbRate;
    private double climbSpeed;
    private double topSpeed;
    private double staticThrust;
    private double staticTorque;
    private double power;
    private double motorInput;
    private double motorHeat;
    private double current;
    private double lowVoltage;
    private double topRotation;
    private double safeThrust;
    private boolean insidePropellerData;

    void solve(TrimmedFlight flight, PowerTrain train, SpeedTable table, double pitch, double discArea) {
        streamArea = discArea;
        train.solveFullThrottle(0, FULL_CHARGE);
        staticThrust = train.thrust();
        staticTorque = train.torque();
        power = train.batteryVoltage() * train.batteryCurrent();
        motorInput = train.motorVoltage() * train.motorCurrent();
        motorHeat = motorInput - 2 * Math.PI * train.torque() * train.rotation();
        current = train.batteryCurrent();
        insidePropellerData = train.insideMeasured();
        topRotation = train.rotation();
        train.solveFullThrottle(Performance.SAFE * flight.stallSpeed(), FULL_CHARGE);
        safeThrust = train.thrust();
        train.solveFullThrottle(0, LOW_CHARGE);
        lowVoltage = train.batteryVoltage();
        thrust.fit(train, pitch, LOW_CHARGE);
        climb(flight, table);
        top(flight, table);
        train.solveFullThrottle(topSpeed, FULL_CHARGE);
        topRotation = Math.max(topRotation, train.rotation());
    }

    /** Without a motor: no thrust. Nothing else that is asked of this type has a meaning then. */
    void stop() {
        streamArea = 0;
        thrust.stop();
    }

    private void climb(TrimmedFlight flight, SpeedTable table) {
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            double v = table.speed[i];
            double pull = thrust.at(v);
            double drag = table.clean[i] + flight.slipstreamDrag(table.scrubbed[i], pull, v, streamArea);
            sinking[i] = (drag - pull) * v / flight.weight();
        }
        table.minimise(sinking, Performance.SAFE * flight.stallSpeed(), speed -> -climbRate(flight, speed));
        climbRate = -table.value();
        climbSpeed = table.at();
    }

    /** Rate of climb at a speed (m/s), m/s. */
    public double climbRate(TrimmedFlight flight, double speed) {
        double pull = thrust.at(speed);
        return (pull - flight.pulledDrag(pull, speed, flight.liftCoefficient(speed), streamArea))
                * speed
                / flight.weight();
    }

    /** Whether it holds level flight at a speed (m/s) and lift coefficient, in a turn or straight, in its own slipstream. */
    boolean holds(TrimmedFlight flight, double speed, double lift) {
        double pull = thrust.at(speed);
        return flight.pulledDrag(pull, speed, lift, streamArea) <= pull;
    }

    /** The fastest speed at which full throttle holds level flight, by secants kept inside the table's bracket. */
    private void top(TrimmedFlight flight, SpeedTable table) {
        int at = SpeedTable.SIZE - 1;
        while (at >= 0 && thrust.at(table.speed[at]) < table.drag[at]) {
            at--;
        }
        if (at < 0) {
            topSpeed = 0;
            return;
        }
        double low = table.speed[at];
        boolean last = at == SpeedTable.SIZE - 1;
        double high = last ? Math.max(1.05 * low, thrust.fastest()) : table.speed[at + 1];
        double excess = thrust.at(high) - (last ? flight.poweredDrag(high, streamArea) : table.drag[at + 1]);
        if (excess >= 0) {
            topSpeed = high;
            return;
        }
        double before = low;
        double excessBefore = thrust.at(low) - table.drag[at];
        topSpeed = high;
        for (int i = 0; i < ROOT_STEPS; i++) {
            double next = topSpeed - excess * (topSpeed - before) / (excess - excessBefore);
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            before = topSpeed;
            topSpeed = next;
            if (Math.abs(topSpeed - before) < LAST_STEP) {
                return;
            }
            excessBefore = excess;
            excess = thrust.at(topSpeed) - flight.poweredDrag(topSpeed, streamArea);
            if (excess >= 0) {
                low = topSpeed;
            } else {
                high = topSpeed;
            }
        }
    }

    /** Thrust against speed with the battery at 30 %. */
    ThrustCurve thrustCurve() {
        return thrust;
    }

    /** Thrust at an airspeed (m/s) with the battery at 30 %, N. */
    public double thrust(double speed) {
        return thrust.at(speed);
    }

    /** Best rate, m/s; negative where it cannot hold level. */
    public double climbRate() {
        return climbRate;
    }

    /** Thrust at 1.2 stall speeds with a full battery, N: what controls must hold. */
    public double safeThrust() {
        return safeThrust;
    }

    /** Speed of best climb, m/s. */
    public double climbSpeed() {
        return climbSpeed;
    }

    /** m/s; 0 where it cannot fly level. */
    public double topSpeed() {
        return topSpeed;
    }

    /** At full charge, N. */
    public double staticThrust() {
        return staticThrust;
    }

    /** Torque of each propeller in the same state, N m. */
    public double staticTorque() {
        return staticTorque;
    }

    /** Electrical power from the battery in the same state, W. */
    public double power() {
        return power;
    }

    /** Electrical input of each motor in the same state, W. */
    public double motorInput() {
        return motorInput;
    }

    /** Heat in each motor's winding and iron in the same state, W. */
    public double motorHeat() {
        return motorHeat;
    }

    /** Battery current in the same state, A. */
    public double current() {
        return current;
    }

    /** Battery voltage at rest with 30 % charge, V. */
    public double lowVoltage() {
        return lowVoltage;
    }

    /** Fastest rotation met, rev/s. */
    public double topRotation() {
        return topRotation;
    }

    /** Whether rest at full charge lies inside the propeller's measured range. */
    public boolean insidePropellerData() {
        return insidePropellerData;
    }
}
