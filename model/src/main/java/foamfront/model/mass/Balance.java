package foamfront.model.mass;

import foamfront.model.airframe.Airframe;

/**
 * The balanced aeroplane: one battery position, and the static margin in every load state it can reach with it.
 *
 * <p>The aim is a balance point ahead of the neutral point by 10 % of the mean chord, 7 % without a tail (common
 * practice: 5-15 %, flying wings 5-10 %). The battery is placed for the state with half of the released loads gone, so
 * that full and empty lie either side of the aim. Wheels and loads carried at the balance point are placed by the aim,
 * not by what a clamped battery makes of it.
 *
 * @param mass everything on board, kg
 * @param x centre of gravity of the full aeroplane, m from the nose
 * @param y m
 * @param z m over the body axis
 * @param aim where the balance point should be, m
 * @param marginFull static margin with nothing released, of the mean chord
 * @param marginHalf half of each released load gone
 * @param marginReleased all released loads gone
 * @param batteryX centre of the battery, m
 * @param missingTravel how far the battery would have to leave its bay, m; 0 when balanced
 * @param noseBallast kg at the nose that would balance it instead; 0 when balanced
 * @param tailBallast kg at the body's end that would balance it instead
 */
public record Balance(
        double mass,
        double x,
        double y,
        double z,
        double aim,
        double marginFull,
        double marginHalf,
        double marginReleased,
        double batteryX,
        double missingTravel,
        double noseBallast,
        double tailBallast) {
    /** Static margin aimed at with a tail. */
    public static final double TAILED_MARGIN = 0.10;

    /** Static margin aimed at without one. */
    public static final double TAILLESS_MARGIN = 0.07;

    /** Below this a lever of ballast is no lever, m. */
    private static final double LEAST_LEVER = 0.01;

    /** Travel below this is rounding, m. */
    private static final double NO_TRAVEL = 1e-9;

    /**
     * Balances an airframe.
     *
     * @param neutralPoint of the whole aeroplane, m from the nose
     */
    public static Balance of(MassBreakdown masses, Airframe airframe, double neutralPoint) {
        double margin = airframe.tail() == null ? TAILLESS_MARGIN : TAILED_MARGIN;
        return solve(
                masses,
                BatteryBay.of(airframe),
                airframe.body().length(),
                new Reference(neutralPoint, airframe.chord(), neutralPoint - margin * airframe.chord()));
    }

    /** What margins are counted from: neutral point, mean chord and the balance point aimed at, m. */
    record Reference(double neutralPoint, double chord, double aim) {}

    static Balance solve(MassBreakdown masses, BatteryBay bay, double bodyLength, Reference reference) {
        double aim = reference.aim();
        double ideal = masses.batteryFor(aim, 0.5);
        double place = bay.nearest(ideal, aim);
        double missing = Math.abs(place - ideal) + bay.overlap(place, aim);
        double excess = masses.massAfter(0.5) * (masses.centreX(place, aim, 0.5) - aim);
        boolean balanced = missing < NO_TRAVEL;
        double nose = balanced ? 0 : Math.max(0, excess) / Math.max(LEAST_LEVER, aim);
        double tail = balanced ? 0 : Math.max(0, -excess) / Math.max(LEAST_LEVER, bodyLength - aim);
        return new Balance(
                masses.mass(),
                masses.centreX(place, aim, 0),
                masses.centreY(),
                masses.centreZ(),
                aim,
                margin(masses, reference, place, 0),
                margin(masses, reference, place, 0.5),
                margin(masses, reference, place, 1),
                place,
                balanced ? 0 : missing,
                nose,
                tail);
    }

    private static double margin(MassBreakdown masses, Reference r, double batteryX, double releasedFraction) {
        return (r.neutralPoint() - masses.centreX(batteryX, r.aim(), releasedFraction)) / r.chord();
    }

    /** Smallest static margin over the load states. */
    public double leastMargin() {
        return Math.min(marginFull, Math.min(marginHalf, marginReleased));
    }

    /** Largest static margin over the load states. */
    public double greatestMargin() {
        return Math.max(marginFull, Math.max(marginHalf, marginReleased));
    }

    /**
     * Foremost balance point over the load states, m from the nose; {@link #x} itself where nothing moves it forward.
     *
     * @param chord mean chord that margins are counted in, m
     */
    public double foremostX(double chord) {
        return x - (greatestMargin() - marginFull) * chord;
    }
}
