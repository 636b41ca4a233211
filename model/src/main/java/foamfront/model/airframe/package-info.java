/**
 * Surfaces, bodies, bays and positions derived from a design: the one geometry that aerodynamics, patterns and
 * mass all read.
 *
 * <p>Depends on {@code design} and {@code parts}. Start at {@link foamfront.model.airframe.Airframe}.
 */
@NullMarked
package foamfront.model.airframe;

import org.jspecify.annotations.NullMarked;
