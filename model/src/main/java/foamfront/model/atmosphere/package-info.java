/**
 * The air at the flying site: density and viscosity of the standard atmosphere, with the day's temperature.
 *
 * <p>Valid from sea level to 11 km geopotential height (the troposphere). Depends on {@code units} only. Start at
 * {@link foamfront.model.atmosphere.Atmosphere}.
 */
@NullMarked
package foamfront.model.atmosphere;

import org.jspecify.annotations.NullMarked;
