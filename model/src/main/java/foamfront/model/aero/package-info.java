/**
 * The lift of the whole aeroplane: a two-row extended lifting line for wing, second wing and tail, canted or level, in one
 * linear system, and closed forms beside it for what the system does not carry.
 *
 * <p>Assumptions: steady, incompressible, attached flow, small angles, a half model with its image about y = 0 (alike in
 * symmetric flight, turned in roll and sideslip), wakes straight aft along the body axis, upright fins by themselves. Section
 * thickness and Reynolds number enter only through the section's lift slope, zero-lift angle and moment. Validity: aspect ratio 1
 * to 20, quarter-chord sweep -20 to 45 degrees, below stall. A wing may bend along its span or have its centre cut out: nodes do not
 * follow the bend, which costs up to 1 % of slope and 1.6 % of span efficiency (BrokenWingConvergenceTest). Deltas from 35 degrees
 * of leading-edge sweep lift by their edge vortices besides ({@link foamfront.model.aero.LeadingEdgeVortex}); measured plates show
 * that law 10 % high near 20 degrees and worthless beyond, whence the cap on maximum lift (VortexLiftExternalTest). A V-tail's side
 * force comes out 8 % below wind-tunnel practice (StabilityExternalTest).
 *
 * <p>Beside it the drag build-up of everything that does not lift, as drag areas D/q in m²: skin friction with form factors,
 * square-cornered bodies with their bases, wheels, wires, pylons, bands, stopped propellers, summed by
 * {@link foamfront.model.aero.ParasiteDrag}. Valid for bodies at Re 20 000 to 3 million and wires at Re 20 to 500 000. Most of
 * its coefficients are recalled from design handbooks; only cylinders across and along the stream are tables of measurements.
 *
 * <p>Depends on {@code airframe} and what it stands on. Start at {@link foamfront.model.aero.LiftingSystem};
 * {@link foamfront.model.aero.LateralSystem} is its antisymmetric half.
 */
@NullMarked
package foamfront.model.aero;

import org.jspecify.annotations.NullMarked;
