/**
 * The aeroplane in the air: trim, stall, level flight, climb, glide, launch, take-off, endurance and the measures of handling.
 *
 * <p>Quasi-steady, trimmed in pitch at every speed with the linear lifting system, section drag at the local lift and Reynolds
 * number. Power-off stall; the slipstream's lift is left out, which is on the safe side. Depends on {@code aero},
 * {@code propulsion}, {@code mass} and what they rest on. Start at {@link foamfront.model.flight.TrimmedFlight}, then
 * {@link foamfront.model.flight.Performance}.
 */
@NullMarked
package foamfront.model.flight;

import org.jspecify.annotations.NullMarked;
