package foamfront.model.factors;

import static foamfront.model.units.Require.positive;

/**
 * One multiplier for each uncertain part of the model. {@link #NOMINAL} has all 1; {@link Spread} holds how far each may lie
 * off and why.
 *
 * @param sectionDrag on section profile drag
 * @param maximumLift on section maximum lift
 * @param parasiteDrag on everything that drags without lifting
 * @param airframeMass on the mass of board, tape and glue
 * @param thrust on propeller thrust coefficients
 * @param shaftPower on propeller power coefficients
 * @param motorResistance on the motor's effective resistance
 * @param batteryCapacity on rated capacity
 * @param batteryResistance on cell resistance
 * @param boardStrength on the paper's compressive strength
 * @param boardStiffness on paper and core moduli
 * @param throwSpeed on the speed of a hand launch
 * @param rollingFriction on the surface's friction under wheels or belly
 * @param price on everything bought
 * @param time on build time
 */
public record Factors(
        double sectionDrag,
        double maximumLift,
        double parasiteDrag,
        double airframeMass,
        double thrust,
        double shaftPower,
        double motorResistance,
        double batteryCapacity,
        double batteryResistance,
        double boardStrength,
        double boardStiffness,
        double throwSpeed,
        double rollingFriction,
        double price,
        double time) {
    /** Every factor 1. */
    public static final Factors NOMINAL = new Factors(1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1);

    public Factors {
        positive("section drag factor", sectionDrag, "");
        positive("maximum lift factor", maximumLift, "");
        positive("parasite drag factor", parasiteDrag, "");
        positive("airframe mass factor", airframeMass, "");
        positive("thrust factor", thrust, "");
        positive("shaft power factor", shaftPower, "");
        positive("motor resistance factor", motorResistance, "");
        positive("battery capacity factor", batteryCapacity, "");
        positive("battery resistance factor", batteryResistance, "");
        positive("board strength factor", boardStrength, "");
        positive("board stiffness factor", boardStiffness, "");
        positive("throw speed factor", throwSpeed, "");
        positive("rolling friction factor", rollingFriction, "");
        positive("price factor", price, "");
        positive("time factor", time, "");
    }
}
