package foamfront.model.structure;

import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.mass.MassBreakdown;

/**
 * The joint of a replaceable nose: tongues guide it, a rubber band over pegs on each side holds it against
 * the body with 20 N (judgement; half of a crossed pair's 30 to 50 N, common practice). A tractor's thrust pulls the joint open, and in landing the
 * weight of what rides ahead of it turns it about the edge at the belly, half the body's height from the bands (derived).
 * Nothing pushes it off: that is what it is for.
 */
public final class NoseJoint {
    private static final double BANDS_BEAR = 2 * 20; // N

    private NoseJoint() {}

    /**
     * Strength over load, the lesser of both cases.
     *
     * @param joint its station, m from the nose
     * @param height of the body, m
     * @param balancePoint where things placed by it are counted from, m
     * @param thrust that pulls at the nose, N
     */
    public static double reserve(
            MassBreakdown masses, double batteryX, double balancePoint, double joint, double height, double thrust) {
        double moment = masses.momentAhead(joint, batteryX, balancePoint);
        double landing = LoadFactor.landing() * Atmosphere.GRAVITY * moment;
        return Math.min(
                StructureMargins.reserve(BANDS_BEAR, thrust),
                StructureMargins.reserve(BANDS_BEAR * 0.5 * height, landing));
    }
}
