package foamfront.model.flight;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Tail;

/**
 * Tail volumes, effective dihedral and the spiral parameter; full travels of the controls.
 *
 * <ul>
 *   <li>Tail volumes V_H = S_h l_h / (S c), V_V = S_v l_v / (S b), arms between quarter chords (common practice).
 *   <li>Spiral parameter B = (l_v / b)(Υ / C_L), Υ in degrees (M. Drela, MIT Unified Engineering notes, from memory). Υ is the
 *       dihedral of a straight wing with the same C_lβ over C_lp as the whole aeroplane has ({@link Stability#dihedralEffect}):
 *       sweep, the wing's height on the body and fins count as the dihedral that they stand for.
 * </ul>
 */
public final class Handling {
    /** Full travel of ailerons and elevator, rad (judgement). */
    public static final double FULL_TRAVEL = 20 * Math.PI / 180;

    /** Full travel of the rudder, rad. */
    public static final double RUDDER_TRAVEL = 25 * Math.PI / 180;

    /**
     * C_lβ per rad of dihedral over C_lp: 1.61 to 1.66 over aspect ratios 4 to 8 and tapers 0.5 to 1 by the monoplane equation
     * (derived; C_l-beta and C_lp as H. A. Pearson and R. T. Jones chart them, NACA R-635, 1938).
     */
    private static final double DIHEDRAL_OVER_DAMPING = 1.64;

    private Handling() {}

    /**
     * What a V-tail's surfaces have left to turn as rudder when they stand at {@code elevator} already, rad: mixing adds both
     * commands, and the linkage ends at the rudder's full travel (common practice).
     */
    public static double ruddervatorTravel(double elevator) {
        return Math.max(0, RUDDER_TRAVEL - Math.abs(elevator));
    }

    /** V_H; 0 for a tailless aeroplane. */
    public static double horizontalTailVolume(Airframe airframe) {
        Surface tail = airframe.tail();
        if (tail == null) {
            return 0;
        }
        double flat = cosine(tail);
        double arm = tail.quarterChordX() - (airframe.chordX() + 0.25 * airframe.chord());
        return tail.area() * flat * flat * arm / (airframe.area() * airframe.chord());
    }

    /** V_V of fins and canted tails. */
    public static double verticalTailVolume(Airframe airframe) {
        double sum = 0;
        double wing = airframe.chordX() + 0.25 * airframe.chord();
        for (int i = 0; i < airframe.surfaces().size(); i++) {
            Surface surface = airframe.surfaces().get(i);
            if (surface.role() == Surface.Role.FIN) {
                sum += surface.area() * (surface.quarterChordX() - wing);
            }
        }
        Surface tail = airframe.tail();
        if (tail != null && airframe.design().tail() instanceof Tail.VTail) {
            double flat = cosine(tail);
            sum += tail.area() * (1 - flat * flat) * (tail.quarterChordX() - wing);
        }
        return sum / (airframe.area() * airframe.span());
    }

    /**
     * B at a lift coefficient.
     *
     * @param dihedralEffect C_lβ of the whole aeroplane there
     * @param rollDamping C_lp
     */
    public static double spiralParameter(
            Airframe airframe, double balanceX, double lift, double dihedralEffect, double rollDamping) {
        double arm = 0;
        if (!airframe.fins().isEmpty()) {
            arm = airframe.fins().get(0).quarterChordX() - balanceX;
        } else if (airframe.tail() != null) {
            arm = airframe.tail().quarterChordX() - balanceX;
        }
        return spiralParameter(arm / airframe.span(), effectiveDihedral(dihedralEffect, rollDamping), lift);
    }

    /** B of a tail arm in spans, a dihedral (rad) and a lift coefficient. */
    static double spiralParameter(double arm, double dihedral, double lift) {
        return arm * dihedral * 180 / Math.PI / lift;
    }

    /** Dihedral of a straight wing that would answer sideslip alike, rad. */
    static double effectiveDihedral(double dihedralEffect, double rollDamping) {
        return dihedralEffect / (DIHEDRAL_OVER_DAMPING * rollDamping);
    }

    /** cos of a surface's mean dihedral. */
    private static double cosine(Surface surface) {
        Panel panel = surface.panels().get(surface.panels().size() - 1);
        return (panel.tipY() - panel.rootY()) / panel.breadth();
    }
}
