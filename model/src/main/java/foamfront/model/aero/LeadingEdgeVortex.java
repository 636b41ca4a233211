package foamfront.model.aero;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.design.Wing;
import foamfront.model.units.SmoothStep;
import org.jspecify.annotations.Nullable;

/**
 * The vortices over the sharp leading edges of a one-sheet delta. The suction that attached flow would have along the edge turns
 * into normal force:
 *
 * <pre>  C_L = K_p sin α cos² α + K_v sin² α cos α,   C_D = C_L tan α beyond friction</pre>
 *
 * (E. C. Polhamus, A Concept of the Vortex Lift of Sharp-Edge Delta Wings Based on a Leading-Edge-Suction Analogy, NASA
 * TN D-3767, 1966, from memory), K_p the lattice's lift slope, K_v 3.2 for aspect ratios from 1 to 3 (the same chart,
 * from memory: 3.1 to 3.4). All of it from {@value #FULL_DEGREES} degrees of leading-edge sweep, none of it below
 * {@value #NONE_DEGREES}, a smooth step between, so that no sweep pays for a jump (judgement).
 *
 * <p>The vortex lift's centre is that of the lost suction, which grows straight from the apex along a slender edge: at two
 * thirds of the edge's length aft (R. T. Jones, NACA R-835, 1946, slender wings, from memory; judgement for ours).
 *
 * @param share of the whole vortex lift, 0 to 1
 * @param centreX of vortex lift, m from the nose
 * @param usable incidence from zero lift up to which it flies, rad
 */
public record LeadingEdgeVortex(double share, double centreX, double usable) {
    /** K_v, per unit of sin² α. */
    public static final double LIFT = 3.2;

    /** Incidence up to which vortices hold together over the wing, rad (judgement; they burst earlier on broader wings). */
    public static final double USABLE = 20 * Math.PI / 180;

    /** Lift coefficient that no home-made delta passes (judgement, half-width of its band {@link #MOST_LIFT_SPREAD}). */
    public static final double MOST_LIFT = 0.9;

    /** Half-width of the 10 to 90 % band about {@link #MOST_LIFT}. */
    public static final double MOST_LIFT_SPREAD = 0.15;

    private static final double FULL_DEGREES = 45;
    private static final double NONE_DEGREES = 35;

    /** The vortices of an airframe's wing, null for a wing whose flow stays attached whatever its sweep. */
    public static @Nullable LeadingEdgeVortex of(Airframe airframe) {
        if (!(airframe.design().wing() instanceof Wing.Delta)) {
            return null;
        }
        Panel panel = airframe.wing().panels().get(0);
        double back = panel.tipX() - panel.rootX();
        double share = share(StrictMath.atan2(back, panel.tipY() - panel.rootY()));
        return new LeadingEdgeVortex(share, panel.rootX() + 2.0 / 3 * back, USABLE);
    }

    /** The same where the ground allows no more than an incidence, rad. */
    public LeadingEdgeVortex upTo(double incidence) {
        return new LeadingEdgeVortex(share, centreX, Math.min(usable, Math.max(0, incidence)));
    }

    /** Share of the whole vortex lift at a leading-edge sweep in rad: 3 t² − 2 t³ between the two sweeps. */
    static double share(double sweep) {
        return SmoothStep.at((sweep * 180 / Math.PI - NONE_DEGREES) / (FULL_DEGREES - NONE_DEGREES));
    }

    /** K_v of this wing. */
    public double lift() {
        return share * LIFT;
    }

    /**
     * The foremost point at which lift adds up to the {@link #USABLE} incidence, m from the nose. Derived: normal force
     * K_p sin α cos α + K_v sin² α, so dN/dα = K_p cos 2α + K_v sin 2α, each part at its own centre, bodies as they are.
     *
     * @param lifting solved for the airframe
     * @param bodyMoment dC_m/dα of the bodies, per rad
     */
    public double foremostNeutralPoint(LiftingSystem lifting, double bodyMoment) {
        double chord = lifting.referenceChord();
        double potential = StrictMath.cos(2 * USABLE);
        double vortex = lift() * StrictMath.sin(2 * USABLE);
        double attached = -(lifting.momentSlope(0) + bodyMoment) * chord / lifting.liftSlope();
        double moment = -lifting.momentSlope(0) * potential * chord + vortex * centreX - bodyMoment * chord;
        return Math.min(attached, moment / (lifting.liftSlope() * potential + vortex));
    }
}
