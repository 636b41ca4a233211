/**
 * What can be bought: boards, spars, motors, propellers, controllers, batteries, servos, receivers, wheels and
 * consumables, as immutable records in SI units.
 *
 * <p>Every numeric field moves some measure. Parts are named by trade size. Depends on {@code units} only. Start at
 * {@link foamfront.model.parts.Part}.
 */
@NullMarked
package foamfront.model.parts;

import org.jspecify.annotations.NullMarked;
