/**
 * What a nose-first landing hits, breaks and costs to mend, for comparing layouts: the depth to which a box of paper-faced board
 * crushes under the aeroplane's energy at stall speed, the things within that depth, and a repair by the workshop's rates.
 *
 * <p>Assumes straight-on impact on turf that gives nothing and a body that crushes from its nose at a steady force; good to
 * rank layouts, not to promise a repair. Depends on {@code airframe}, {@code fabrication} and {@code mass}. Start at
 * {@link foamfront.model.mishap.Mishap}.
 */
@NullMarked
package foamfront.model.mishap;

import org.jspecify.annotations.NullMarked;
