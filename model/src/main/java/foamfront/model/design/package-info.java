/**
 * What a builder would write down for one aeroplane: closed, composable choices with their dimensions.
 *
 * <p>Lengths in metres, angles in radians, x aft from the nose, y to starboard, z up. An aeroplane composes a wing, a tail,
 * a body, a power plant, an undercarriage and controls; {@link foamfront.model.design.Arrangement} names the choices and
 * rules out the impossible combinations with reasons. Depends on {@code parts} and {@code units}. Start at
 * {@link foamfront.model.design.Design}.
 */
@NullMarked
package foamfront.model.design;

import org.jspecify.annotations.NullMarked;
