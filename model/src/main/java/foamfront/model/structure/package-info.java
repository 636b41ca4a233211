/**
 * Strength and stiffness of wing, tail boom, tail and control linkage at the limit load.
 *
 * <p>A wing is a beam along the projected span: bending moments from the lifting system's strips, each wing of a
 * biplane its own, relieved by the wing's own mass, against the stiffness of the whole bonded section (paper faces as
 * thin walls, foam as what keeps them apart, a board web that ties the skins) and of a stock spar beside it. Load
 * cases:
 *
 * <ul>
 *   <li>pull-up or gust at the limit load factor: wing, spar, plug-in tube and its sleeve, tip deflection;
 *   <li>landing at 1 m/s of sink: the wing bent down by its own and its engines' weight, the boom by the tail's;
 *   <li>a throw, v² / 2 s along the body: the plug-in tube, that bears it alone (in its own plane a wing whose boards reach
 *       across has twenty times what it needs);
 *   <li>stabiliser and fins: full control at manoeuvring speed, gust, trim, sideslip; the boom under them; the servos
 *       at top speed;
 *   <li>divergence in torsion, with bending where the wing is swept forward.
 * </ul>
 *
 * <p>Assumes elastic behaviour, faces stressed along the grain, an even sleeve; leaves out undercarriage legs, the nose
 * in landing (the samples' square tubes bear ten times it, a profile board twice), and the relief by engines in flight. Glue is
 * judged by the bond of paper to foam under it along a fold's web ({@code WebGlue}), as a measure without a limit, because that bond
 * is known to a factor of two either way; the seats of wing, tail and boom and the tape between pieces of a wing are not. Chords up to about
 * 0.37 m, beyond which the wide upper facet buckles as a plate before its paper crushes. Valid where deflections stay
 * below about a fifth of the semispan. Depends on {@code airframe}, {@code aero}, {@code design}, {@code parts} and
 * {@code factors}. Start at {@link foamfront.model.structure.Structure}.
 */
@NullMarked
package foamfront.model.structure;

import org.jspecify.annotations.NullMarked;
