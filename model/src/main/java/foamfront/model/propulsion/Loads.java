package foamfront.model.propulsion;

import foamfront.model.parts.Battery;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Rotor;

/** How hard a power train is worked: what it bears over what it may bear, so that 1 is the limit and more is too much. */
public final class Loads {
    /** Continuous electrical input per mass of motor, W/kg: 3 to 5 W/g for sport outrunners, from memory. */
    public static final double CONTINUOUS_LOADING = 5000;

    /** Input for 30 s over continuous input: 8 to 5 W/g, judgement. */
    public static final double BURST = 1.6;

    /**
     * Share of its continuous input that a motor sheds as heat, which is what limits its temperature: sport outrunners turn some three
     * quarters of it into shaft power; taken for fans' motors too; judgement.
     */
    public static final double HEAT_SHARE = 0.25;

    /** Share of a battery's label that is believed; common practice. */
    public static final double LABEL_SHARE = 0.5;

    /** Highest discharge whatever the label says, multiples of capacity per hour; judgement. */
    public static final double HIGHEST_RATE = 30;

    /** A busy servo's current over its mean: all move at once in a gust; judgement. */
    public static final double BUSY_SERVO = 5;

    /** Of the 5 V supply, V. */
    private static final double SUPPLY = 5;

    private static final int SUPPLY_CELLS = 3;

    private Loads() {}

    /** Electrical input against the continuous rating, or 5 W/g where none was measured; input of one motor in W. */
    public static double motor(Motor motor, double input) {
        return input / continuousInput(motor);
    }

    /** As {@link #motor}, for bursts up to 30 s. */
    public static double motorBurst(Motor motor, double input) {
        return input / (BURST * continuousInput(motor));
    }

    /** Heat of one motor in W, of winding and iron, against what it sheds for long. */
    public static double motorHeat(Motor motor, double heat) {
        return heat / (HEAT_SHARE * continuousInput(motor));
    }

    /** As {@link #motorHeat}, for bursts up to 30 s. */
    public static double motorHeatBurst(Motor motor, double heat) {
        return heat / (BURST * HEAT_SHARE * continuousInput(motor));
    }

    /** Motor current in A against the controller's rating with room to spare. */
    public static double controller(Controller controller, double current) {
        return Controller.ROOM * current / controller.current();
    }

    /**
     * Current of receiver and busy servos in A against the controller's 5 V supply. A linear one turns the rest of the pack's
     * voltage into heat, so that above three cells it gives as much less as that is more: common practice of fewer servos on more
     * cells, put into a formula (derived).
     */
    public static double supply(Controller controller, int cells, double receiver, double servos) {
        double hot = Cell.FULL_VOLTAGE * Math.max(SUPPLY_CELLS, cells) - SUPPLY;
        double share = (Cell.FULL_VOLTAGE * SUPPLY_CELLS - SUPPLY) / hot;
        return (receiver + BUSY_SERVO * servos) / (share * controller.supply());
    }

    /** What the regulator of a model without a motor gives receiver and servos at 5 V, A (from memory). */
    public static final double REGULATOR = 3;

    /** The same without a motor: against the regulator or what the receiver's pack stands, whichever is nearer its limit. */
    public static double regulator(Battery battery, double receiver, double servos) {
        double current = receiver + BUSY_SERVO * servos;
        return Math.max(current / REGULATOR, battery(battery, current));
    }

    /** Battery current in A against half the label or 30 C, the smaller. */
    public static double battery(Battery battery, double current) {
        double rate = Math.min(LABEL_SHARE * battery.rating(), HIGHEST_RATE);
        return current / (rate * battery.oneHourCurrent());
    }

    /** Lowest loaded cell voltage over the actual one; voltage of the pack in V. */
    public static double cell(Battery battery, double voltage) {
        return voltage > 0 ? Cell.LOWEST_LOADED_VOLTAGE * battery.cells() / voltage : Double.MAX_VALUE;
    }

    /** Tip speed from rotation in rev/s against what its blades stand. */
    public static double tip(Rotor rotor, double rotation) {
        return Math.PI * rotation * rotor.diameter() / rotor.tipSpeed();
    }

    private static double continuousInput(Motor motor) {
        return motor.continuousPower() > 0 ? motor.continuousPower() : CONTINUOUS_LOADING * motor.mass();
    }
}
