/**
 * What everything weighs, where it sits, and where the battery must lie so that the aeroplane balances.
 *
 * <p>Masses come from board area, glue beads and tape lengths of the cut parts, from catalogue parts and from a few floors
 * that no model escapes (wiring, horns, screws, straps). Things that follow the balance point, wheels and loads carried
 * there, are kept relative to it until it is known. Assumes an aeroplane symmetric about y = 0 and a battery that slides
 * along its bay. Depends on {@code airframe}, {@code fabrication}, {@code design}, {@code parts}
 * and {@code factors}. Start at
 * {@link foamfront.model.mass.MassBreakdown}, then {@link foamfront.model.mass.Balance}.
 */
@NullMarked
package foamfront.model.mass;

import org.jspecify.annotations.NullMarked;
