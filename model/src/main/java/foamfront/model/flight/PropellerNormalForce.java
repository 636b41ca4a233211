package foamfront.model.flight;

import foamfront.model.parts.Propeller;

/**
 * The in-plane force of a propeller at incidence, which moves the neutral point when the motor runs: ahead of the balance point
 * it destabilises, behind it stabilises.
 *
 * <p>Derived here from blade elements in small incidence: with the disc's cross-flow V α, a blade element of chord c at radius r
 * feels ΔU = V α sin θ across its path; its in-plane force, averaged over a turn of B blades, is
 *
 * <pre>  N_α / q = (B / 2) ∫ c [c_l + a₀ V / (ω r) + 2 (ω r / V) c_d] dr.</pre>
 *
 * H. S. Ribner, NACA R-819 and R-820 (1945), treats the same force in full (from memory). Blades here are of the mean
 * chord 0.13 of the radius, working at c_l 0.5 and c_d 0.03 with a₀ 5.7 from a fifth of the radius out (judgement).
 */
public final class PropellerNormalForce {
    private static final double CHORD = 0.13;
    private static final double LIFT = 0.5;
    private static final double DRAG = 0.03;
    private static final double SLOPE = 5.7;
    private static final double ROOT = 0.2;

    private PropellerNormalForce() {}

    /**
     * N_α / q, m² per rad.
     *
     * @param rotation rev/s
     * @param speed airspeed, m/s
     */
    public static double areaPerRadian(Propeller propeller, double rotation, double speed) {
        double radius = 0.5 * propeller.diameter();
        double chord = CHORD * radius;
        double omega = 2 * Math.PI * rotation;
        double lift = LIFT * (1 - ROOT) * radius;
        double inflow = omega > 0 ? SLOPE * speed / omega * StrictMath.log(1 / ROOT) : 0;
        double drag = 2 * DRAG * omega / speed * 0.5 * (1 - ROOT * ROOT) * radius * radius;
        return 0.5 * propeller.blades() * chord * (lift + inflow + drag);
    }
}
