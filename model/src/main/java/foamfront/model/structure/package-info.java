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
 * judged by the bond of paper to foam under it: along a fold's web ({@code WebGlue}), where pieces of a wing meet end to end
 * ({@code ButtJoint}, tape by {@code Lap}), under wing, stabiliser and fins ({@code SeatGlue}), round a boom in its pod ({@code
 * TailBoom}). Not judged, because they have ten times what they need at 8 N of bond a centimetre: a firewall's bead round the nose (170 N for 0.2 m
 * against thrust or a motor in landing), the sleeves of a body's splices (40 mm of lap on either side), the trailing edge's bead
 * (at most 0.35 of the web's flow on twice its width); nor hull steps and struts, whose boards {@code WaterLanding} judges, nor winglets
 * (four times), nor a plug-in tube's sleeve, whose bed {@code WingReserve} judges. Chords up to about
 * 0.37 m, beyond which the wide upper facet buckles as a plate before its paper crushes. Valid where deflections stay
 * below about a fifth of the semispan. Depends on {@code airframe}, {@code aero}, {@code design}, {@code parts} and
 * {@code factors}. Start at {@link foamfront.model.structure.Structure}.
 */
@NullMarked
package foamfront.model.structure;

import org.jspecify.annotations.NullMarked;
