/**
 * From geometry to a bench: flat patterns, nesting on sheets, bill of materials, build time, room in the car.
 *
 * <p>Every part of the airframe is one of four flat patterns (rectangle, plate, folded panel, tube), cut from whole sheets.
 * Lengths on the paper that stays are exact; foam is gained or lost on the other side. Twist is ignored in the patterns:
 * washout of a few degrees changes no length by more than a thousandth. Parts a builder would trim to fit (mounts, pads,
 * doublers) follow workshop rules named where they stand. Depends on {@code airframe}, {@code design}, {@code parts},
 * {@code mission} and {@code factors}. Start at {@link foamfront.model.fabrication.FlatPatterns}, then
 * {@link foamfront.model.fabrication.SheetNester}; {@link foamfront.model.fabrication.CarLoad} packs the pieces.
 */
@NullMarked
package foamfront.model.fabrication;

import org.jspecify.annotations.NullMarked;
