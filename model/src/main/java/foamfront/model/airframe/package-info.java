/**
 * Surfaces, bodies, bays and positions derived from a design: the one geometry that aerodynamics, patterns and
 * mass all read.
 *
 * <p>Wings are plates without thickness here, bodies square prisms; what sits where follows workshop rules, each named
 * in its type. Depends on {@code design} and {@code parts}. Start at {@link foamfront.model.airframe.Airframe}, then
 * {@link foamfront.model.airframe.Stations}.
 */
@NullMarked
package foamfront.model.airframe;

import org.jspecify.annotations.NullMarked;
