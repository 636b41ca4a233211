package foamfront.model.propulsion;

import static foamfront.model.units.Require.notNegative;
import static foamfront.model.units.Require.positive;

import foamfront.model.design.Drive;
import foamfront.model.factors.Factors;
import foamfront.model.parts.PropellerCurves;

/**
 * One or two motors on one battery, in equilibrium.
 *
 * <p>Equations (derived from the part models, see {@link MotorLaw}, {@link Cell}, {@link PropellerCurves}):
 *
 * <pre>
 *   propeller   T = ρ n² D⁴ C_T(J, n),  Q = ρ n² D⁵ C_P(J, n) / 2π,  J = V / (n D)
 *   motor       I = Q K_v + I₀(ω),  V_m = ω / K_v + I R
 *   controller  U = V_m + I R_c,  d = U / V_b,  I_b = d I (1 + κ (1 − d))
 *   battery     V_b = S V_oc(s) − S r (m I_b + I_aux)
 * </pre>
 *
 * The controller is an ideal chopper, powers equal, plus a loss that grows as the throttle d closes. κ = {@value
 * #PART_THROTTLE_LOSS} reproduces two published bench sheets of motor and controller together: efficiency flat within 5 %
 * from full to half command and 6 to 7 % lower at 30 %. The radio's current passes a linear 5 V supply unchanged.
 *
 * <p>Full throttle is one equation in n, torque of the motor against torque of the propeller; a given thrust is another,
 * thrust against thrust, after which the rest follows. Both rise with n between standstill and the unloaded speed, so that
 * {@link RotorLoad} finds them.
 *
 * <p>A train belongs to one worker: each solution overwrites the last, and depends on its arguments only. The readers
 * ({@link #thrust()} and so on) allocate nothing; {@link #point()} copies them. Checked once, when prepared; never throws
 * afterwards.
 */
public final class PowerTrain {
    /** κ, loss of the controller as a share of its throughput per unit of closed throttle. */
    public static final double PART_THROTTLE_LOSS = 0.1;

    static final double TURN = 2 * Math.PI;

    private final RotorLoad rotor;
    private MotorLaw motor;
    private double controllerResistance;
    private int motors;
    private int cells;
    private double packResistance;
    private double auxiliaryCurrent;
    private double capacity;
    private double inflow = 1;

    private double rememberedState = Double.NaN;
    private double rememberedVoltage;
    private double rememberedFastest;

    private Outcome outcome = Outcome.REACHED;
    private double thrust;
    private double rotation;
    private double throttle;
    private double motorCurrent;
    private double motorVoltage;
    private double batteryCurrent;
    private double batteryVoltage;
    private double torque;
    private double advanceRatio;

    private PowerTrain(Drive plant, int motors, Factors factors, double density, double auxiliaryCurrent) {
        positive("motor count", motors, "");
        positive("air density", density, "kg/m3");
        notNegative("auxiliary current", auxiliaryCurrent, "A");
        rotor = new RotorLoad(plant.rotor());
        motor = MotorLaw.of(plant.motor(), factors);
        prepare(plant, motors, factors, density, auxiliaryCurrent);
    }

    /**
     * A train ready to solve.
     *
     * @param motors how many motors of this plant share its one battery
     * @param density of the air, kg/m³
     * @param auxiliaryCurrent drawn by receiver, servos and payload together, A
     */
    public static PowerTrain of(Drive plant, int motors, Factors factors, double density, double auxiliaryCurrent) {
        return new PowerTrain(plant, motors, factors, density, auxiliaryCurrent);
    }

    /** Turns this train into another plant's, as {@link #of} would make it. */
    public void prepare(Drive plant, int motors, Factors factors, double density, double auxiliaryCurrent) {
        motor = MotorLaw.of(plant.motor(), factors);
        rotor.prepare(plant.rotor(), factors.thrust() * density, factors.shaftPower() * density);
        controllerResistance = plant.controller().resistance();
        this.motors = motors;
        cells = plant.battery().cells();
        packResistance = cells * plant.battery().cellResistance() * factors.batteryResistance();
        capacity = plant.battery().capacity() * factors.batteryCapacity();
        this.auxiliaryCurrent = auxiliaryCurrent;
        inflow = 1;
        rememberedState = Double.NaN;
        stop(0, Outcome.REACHED);
    }

    /**
     * Puts the rotor on an aeroplane, once after it was prepared.
     *
     * @param thrustShare thrust over that of the rotor alone
     * @param inflow airspeed that meets it over that of flight
     */
    public void install(double thrustShare, double inflow) {
        rotor.install(thrustShare);
        this.inflow = inflow;
    }

    /** Takes the battery out into air of a temperature in K, once after the train was prepared. */
    public void chill(double air) {
        packResistance *= Cold.resistance(air);
        capacity *= Cold.capacity(air);
        rememberedState = Double.NaN;
    }

    /** The point of full throttle at an airspeed in m/s, not negative, and a state of charge. */
    public OperatingPoint fullThrottle(double speed, double stateOfCharge) {
        solveFullThrottle(speed, stateOfCharge);
        return point();
    }

    /** The point that holds a thrust in N; if there is none, full throttle's with the reason. */
    public OperatingPoint holding(double thrust, double speed, double stateOfCharge) {
        solveHolding(thrust, speed, stateOfCharge);
        return point();
    }

    /** Solves for full throttle; the readers then give its figures. */
    public Outcome solveFullThrottle(double speed, double stateOfCharge) {
        return solveThrottle(1, speed, stateOfCharge);
    }

    /**
     * Solves for a throttle d above 0 and not above 1. With I_b = d I (1 + κ (1 − d)) the pack's resistance counts
     * d² (1 + κ (1 − d)) times at each motor, and the source is d of its own voltage (derived from the equations above).
     */
    public Outcome solveThrottle(double d, double speed, double stateOfCharge) {
        double source = sourceVoltage(stateOfCharge);
        double drawn = d * (1 + PART_THROTTLE_LOSS * (1 - d));
        double resistance = motor.resistance() + controllerResistance + packResistance * motors * d * drawn;
        double excess = d * source / resistance - motor.standstillCurrent();
        if (excess <= 0) {
            return stop(source, Outcome.BATTERY_COLLAPSED);
        }
        double perTurn = TURN * (motor.currentSlope() + 1 / (motor.speedConstant() * resistance));
        double met = speed * inflow;
        double n = rotor.forCurrent(motor.speedConstant(), excess, perTurn, met);
        run(n, met);
        motorCurrent = (d * source - TURN * n / motor.speedConstant()) / resistance;
        throttle = d;
        batteryCurrent = motors * drawn * motorCurrent + auxiliaryCurrent;
        batteryVoltage = source - packResistance * motors * drawn * motorCurrent;
        motorVoltage = d * batteryVoltage - controllerResistance * motorCurrent;
        outcome = Outcome.REACHED;
        return outcome;
    }

    /** Solves for a thrust in N of all propellers; without need of thrust they stand still. */
    public Outcome solveHolding(double thrustAsked, double speed, double stateOfCharge) {
        double source = sourceVoltage(stateOfCharge);
        if (!(thrustAsked > 0)) {
            return stop(source, Outcome.REACHED);
        }
        double fastest = rememberedFastest;
        double each = thrustAsked / motors;
        if (!(fastest > 0)) {
            return stop(source, Outcome.BATTERY_COLLAPSED);
        }
        double met = speed * inflow;
        if (rotor.thrust(fastest, rotor.advanceRatio(fastest, met), rotor.speedTerm(fastest)) < each) {
            return fallShort(speed, stateOfCharge);
        }
        run(rotor.forThrust(each, met, fastest), met);
        double omega = TURN * rotation;
        motorCurrent = motor.currentForTorque(torque, omega);
        motorVoltage = motor.voltage(motorCurrent, omega);
        double input = motorVoltage + controllerResistance * motorCurrent;
        batteryVoltage = loadedVoltage(source, input * motorCurrent, input);
        if (!(batteryVoltage >= input)) {
            return fallShort(speed, stateOfCharge);
        }
        throttle = input / batteryVoltage;
        batteryCurrent =
                motors * throttle * motorCurrent * (1 + PART_THROTTLE_LOSS * (1 - throttle)) + auxiliaryCurrent;
        outcome = Outcome.REACHED;
        return outcome;
    }

    /** A copy of the last solution. */
    public OperatingPoint point() {
        return new OperatingPoint(
                outcome,
                thrust,
                rotation,
                throttle,
                motorCurrent,
                motorVoltage,
                batteryCurrent,
                batteryVoltage,
                shaftPower(),
                torque,
                advanceRatio,
                insideMeasured());
    }

    public Outcome outcome() {
        return outcome;
    }

    /** Of all propellers, N. */
    public double thrust() {
        return thrust;
    }

    /** rev/s. */
    public double rotation() {
        return rotation;
    }

    public double throttle() {
        return throttle;
    }

    /** In each motor, A. */
    public double motorCurrent() {
        return motorCurrent;
    }

    /** At each motor, V. */
    public double motorVoltage() {
        return motorVoltage;
    }

    /** Of motors and radio, A. */
    public double batteryCurrent() {
        return batteryCurrent;
    }

    /** Under load, V. */
    public double batteryVoltage() {
        return batteryVoltage;
    }

    /** Of all propellers, W. */
    public double shaftPower() {
        return motors * torque * TURN * rotation;
    }

    /** Of each propeller, N m. */
    public double torque() {
        return torque;
    }

    public double advanceRatio() {
        return advanceRatio;
    }

    /** Whether the last solution lies inside the propeller's measured speeds and advance ratios. */
    public boolean insideMeasured() {
        return rotation == 0 || rotor.isMeasured(rotation, advanceRatio);
    }

    /** What the pack holds when full, A s. */
    public double capacity() {
        return capacity;
    }

    /** Open-circuit voltage less the radio's sag, V. */
    private double sourceVoltage(double stateOfCharge) {
        if (stateOfCharge != rememberedState) {
            rememberedState = stateOfCharge;
            rememberedVoltage = cells * Cell.openCircuitVoltage(stateOfCharge) - packResistance * auxiliaryCurrent;
            rememberedFastest = motor.unloadedSpeed(rememberedVoltage) / TURN;
        }
        return rememberedVoltage;
    }

    /**
     * Battery voltage under part throttle: the largest root of V³ − E V² + a V − b = 0, with E the source voltage, P each
     * motor's power and U its voltage before the controller's resistance, a = m R P (1 + κ), b = m R P κ U. Newton from E
     * falls towards it. Below half of E the pack has collapsed: not a number.
     */
    private double loadedVoltage(double source, double power, double input) {
        double load = motors * packResistance * power;
        double a = load * (1 + PART_THROTTLE_LOSS);
        double b = load * PART_THROTTLE_LOSS * input;
        double v = source;
        for (int i = 0; i < RotorLoad.MOST_STEPS; i++) {
            double next = v - (v * (v * (v - source) + a) - b) / (v * (3 * v - 2 * source) + a);
            if (!(next > 0.5 * source)) {
                return Double.NaN;
            }
            if (v - next <= RotorLoad.STEP * v) {
                return next;
            }
            v = next;
        }
        return Double.NaN;
    }

    private void run(double n, double speed) {
        rotation = n;
        advanceRatio = rotor.advanceRatio(n, speed);
        double speedTerm = rotor.speedTerm(n);
        thrust = motors * rotor.thrust(n, advanceRatio, speedTerm);
        torque = rotor.torque(n, advanceRatio, speedTerm);
    }

    private Outcome fallShort(double speed, double stateOfCharge) {
        Outcome full = solveFullThrottle(speed, stateOfCharge);
        outcome = full == Outcome.REACHED ? Outcome.BEYOND_FULL_THROTTLE : full;
        return outcome;
    }

    private Outcome stop(double source, Outcome why) {
        thrust = 0;
        rotation = 0;
        throttle = 0;
        motorCurrent = 0;
        motorVoltage = 0;
        torque = 0;
        advanceRatio = 0;
        batteryCurrent = auxiliaryCurrent;
        batteryVoltage = source;
        outcome = why;
        return outcome;
    }
}
