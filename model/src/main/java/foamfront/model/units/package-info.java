/**
 * Quantities at the edge: units, their parsing and printing, and the checks every constructor shares.
 *
 * <p>Inside the model all numbers are SI and angles are radians; nothing but this package knows a factor. Depends on
 * nothing. Start at {@link foamfront.model.units.Unit}.
 */
@NullMarked
package foamfront.model.units;

import org.jspecify.annotations.NullMarked;
