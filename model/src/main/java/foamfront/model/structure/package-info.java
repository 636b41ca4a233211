/**
 * Strength and stiffness of wing, tail boom, tail and control linkage at the limit load.
 *
 * <p>A wing is a beam along the projected span: bending moments from the lifting system's strips, relieved by the wing's own
 * mass, against the stiffness of the whole bonded section (paper faces as thin walls, foam as what keeps them apart) and of a
 * stock spar beside it; the same wing bent down by its own weight in a landing. A throw's push, v² / 2 s along the body, bends no wing. Assumes elastic behaviour, no sweep coupling, no bending by twin motors' mass, faces stressed along
 * the grain; chords up to about 0.37 m, beyond which the wide upper facet buckles as a plate before its paper crushes. Valid
 * where deflections stay below about a fifth of the semispan. Depends on {@code airframe}, {@code aero}, {@code design}, {@code parts} and
 * {@code factors}. Start at {@link foamfront.model.structure.Structure}.
 */
@NullMarked
package foamfront.model.structure;

import org.jspecify.annotations.NullMarked;
