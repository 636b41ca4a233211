/**
 * Still fresh water under hulls and floats: where they float, and what planing costs.
 *
 * <p>Hydrostatics by integration of cross-sections; planing after Savitsky inside the range of its regression. No waves, no
 * spray drag, no suction of an afterbody. Depends on {@code airframe}. Start at {@link foamfront.model.water.Floating} and
 * {@link foamfront.model.water.Planing}.
 */
@NullMarked
package foamfront.model.water;

import org.jspecify.annotations.NullMarked;
