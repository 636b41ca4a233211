/**
 * Propeller, motor, controller and battery in equilibrium, and how long the battery lasts.
 *
 * <p>Assumptions: quasi-steady running; motor by speed constant, effective resistance and a no-load current that grows
 * with speed; controller as an ideal chopper with a resistance and a part-throttle loss; cells by open-circuit voltage
 * and one resistance, alike, colder than 25 degrees with more of it; propeller by fitted coefficients in axial flow,
 * slowed by a body behind it. Two motors on one battery run alike. Valid inside each propeller's measured speeds and
 * advance ratios, which every operating point reports; above them the last measured coefficients stand. A propeller
 * asked for no thrust stands still.
 *
 * <p>A ducted fan is a rotor like a propeller: its curves come from momentum theory ({@link foamfront.model.parts.FanLaw}), which
 * makes them functions of the advance ratio alone, so one solver serves both.
 *
 * <p>Depends on {@code parts}, {@code design}, {@code factors} and {@code airframe}. Start at {@link
 * foamfront.model.propulsion.PowerTrain}.
 */
@NullMarked
package foamfront.model.propulsion;

import org.jspecify.annotations.NullMarked;
