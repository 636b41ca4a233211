package foamfront.model.propulsion;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Intakes;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Power;

/**
 * What an aeroplane does to the propeller on it.
 *
 * <ul>
 *   <li>A body behind a nose propeller slows the air that meets it: V' = V (1 − 0.329 S / D²), S the body's largest section and D
 *       the diameter (D. P. Raymer, Aircraft Design, ch. 13, from memory). What the slipstream adds to the body's drag is counted
 *       with the drag.
 *   <li>A pusher runs in the wake of wing and pylon and loses at least 2 to 5 % of a tractor's efficiency, sometimes more than 15 % (D.
 *       Stackhouse's notes on pusher and tractor installations, as an encyclopaedia restates them, read there). A full-scale wind-tunnel test of a pusher close behind a body found 12 %, 0.75 against 0.85 (L. P. Yip and P. F. Coy, Wind-Tunnel
 *       Investigation of a Full-Scale Canard-Configured General Aviation Airplane, NASA Langley, 1985, as an encyclopaedia quotes it):
 *       ours stands clear on a pylon and takes 3.5 %. And
 *       its blades chop the wake: 3 dB louder (common practice), which is 13 % of tip speed where sound goes with its
 *       power of 5.5 (derived).
 *   <li>Tip speed stands for noise: measured levels in decibels rise about in line with it from Mach 0.3 to 0.9 (C. W. Hicks and
 *       H. H. Hubbard, Comparison of Sound Emission from Two-Blade, Four-Blade, and Seven-Blade Propellers, NACA TN 1354, 1947,
 *       summary read).
 *   <li>A fan behind intakes of less than 0.9 of its swept annulus loses thrust ({@link Intakes}, {@link
 *       foamfront.model.parts.FanLaw#thrustShare}).
 * </ul>
 */
public final class Installation {
    private static final double BLOCKAGE = 0.329;

    /** Past this a body is no longer small beside its propeller; judgement. */
    private static final double LEAST_INFLOW = 0.8;

    private static final double PUSHER_THRUST = 0.965;
    private static final double PUSHER_NOISE = 1.13;

    private Installation() {}

    /** Airspeed that meets the rotor over that of flight. */
    public static double inflow(Design design) {
        if (!(design.power() instanceof Power.NoseTractor tractor)) {
            return 1;
        }
        Body body = design.body();
        double diameter = tractor.plant().propeller().diameter();
        double blocked = BLOCKAGE * body.width() * body.height() / (diameter * diameter);
        return Math.max(LEAST_INFLOW, 1 - blocked);
    }

    /** Thrust over that of the rotor alone. */
    public static double thrustShare(Airframe airframe) {
        Power power = airframe.design().power();
        if (power instanceof Power.DuctedFan ducted) {
            return ducted.fan().law().thrustShare(Intakes.ratio(airframe.body(), ducted.fan()));
        }
        return power instanceof Power.Pusher ? PUSHER_THRUST : 1;
    }

    /** Noise index over that of the rotor alone. */
    public static double noise(Power power) {
        return power instanceof Power.Pusher ? PUSHER_NOISE : 1;
    }
}
