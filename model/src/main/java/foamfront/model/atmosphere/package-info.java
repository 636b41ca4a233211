/**
 * The air at the flying site: pressure, density and viscosity of the standard atmosphere, with the day's temperature.
 *
 * <p>Dry air as a perfect gas in hydrostatic balance. Valid from 1 km below to 11 km above sea level in geopotential height
 * (the troposphere); below that range or above it the constructor refuses. Depends on {@code units} only. Start at
 * {@link foamfront.model.atmosphere.Atmosphere}.
 */
@NullMarked
package foamfront.model.atmosphere;

import org.jspecify.annotations.NullMarked;
