package foamfront.model.appraisal;

import foamfront.model.airframe.Surface;

/**
 * Lift of one strip of a lifting surface, trimmed at the balance point of take-off, flaps up, motor stopped.
 *
 * @param role which surface
 * @param place of its middle, fraction of the surface's semispan
 * @param chord there, m
 * @param atCruise section lift coefficient at 1.3 stall speeds
 * @param atStall the same where the aeroplane's stall begins
 * @param most what the section lifts there at the stall speed's Reynolds number, less what a raised elevon takes
 */
public record SpanPoint(Surface.Role role, double place, double chord, double atCruise, double atStall, double most) {}
