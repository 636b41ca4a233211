/**
 * Foam-board wing sections: the polygon as folded, its zero-lift angle and moment, and its lift and drag against Reynolds
 * number.
 *
 * <p>A section is a family (plate, stepped plate, curved plate, folded flat-bottom, folded symmetrical) scaled by thickness or
 * camber. Lift and moment come from thin-aerofoil theory of the mean line, of a flat-bottomed fold from the frictionless flow about
 * its polygon, both reduced by what measured sections keep of them.
 * Maximum lift and profile drag are tables against log Re, with a drag rise in lift on both sides of a design lift and a blunt
 * trailing edge on top. Valid from Re 30 000 to 400 000, held at the end values outside ({@code inside} tells), below stall;
 * past the stall drag keeps growing but means nothing.
 *
 * <p>How far each family can be trusted, most to least:
 *
 * <ul>
 *   <li><b>Folded symmetrical</b> (drag ±20 %, maximum lift ±8 %): a measured smooth 10 % section, 15 % facet penalty in the
 *       middle of the 0 to 30 % that faceted sections showed. Nobody measured this very shape; other thicknesses are judgement.
 *   <li><b>Flat plate</b> (±20 %, ±10 %): measured as a 2 % plate with rounded nose and tapered rear at Re 140 000, read off
 *       diagrams; carried to lower Reynolds numbers by laminar and to higher by turbulent friction, to thicker boards
 *       by a form factor.
 *   <li><b>Folded flat-bottom</b> (±20 %, ±12 %): bracketed between smooth low-Re sections and one faceted series, recalled
 *       rather than read; worst below Re 80 000, where a bubble may or may not close.
 *   <li><b>Curved plate</b> (±25 %, ±15 %): maximum lift recalled from one old series, drag built up from the flat plate.
 *   <li><b>Stepped plate</b> (±30 %, ±15 %): a flat plate with the drag of a rearward step; tests found no gain, and the moment
 *       of the stepped mean line is theory only.
 * </ul>
 *
 * <p>Against a panel method about the outlines as folded (FoldedFlowExternalTest), before friction: the flat-bottomed fold's angle
 * and moment agree within 1 %, thin-aerofoil theory of its mean line would be 4 to 6 % short in angle and 15 to 20 % over in
 * moment. A curved plate's theory is 1 to 4 % over in angle and 1 to 5 % off in moment, most with 10 % of camber; a stepped plate's
 * 1 to 2 % off in angle and 2 to 9 % short in moment, most on thick boards. What friction leaves of either differs by 3 % between
 * two measured sections, so take 5 % on the angle and 10 % on the moment as uncertain. The frictionless slope, 3 to 9 % over 2π, is
 * not used: measured slopes at these Reynolds numbers stand below 2π.
 *
 * <p>A table of least drag below 1.1 times laminar friction is refused: no measured section comes near it. The bands
 * above are half as wide again for the stepped plate as the common spread of section drag; whoever applies the common
 * factor widens it so.
 *
 * <p>The lift past the stall is for looking at ({@code appraise --svg}): it goes over to a stalled plate's within ten degrees, by
 * judgement, and says nothing of hysteresis. No flight is computed there.
 *
 * <p>Hinged parts are not here: up-going elevons or reflex lower a strip's maximum lift, and whoever deflects them must say so.
 *
 * <p>Depends on {@code design} and {@code units}. Start at {@link foamfront.model.section.SectionPolar}.
 */
@NullMarked
package foamfront.model.section;

import org.jspecify.annotations.NullMarked;
