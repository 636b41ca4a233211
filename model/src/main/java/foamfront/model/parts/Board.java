package foamfront.model.parts;

import static foamfront.model.units.Require.positive;

/**
 * A stock sheet of foam board: a polystyrene core between two paper faces.
 *
 * @param thickness over both faces, m
 * @param arealDensity kg/m²
 * @param length the sheet's long side, along the paper's grain, m
 * @param width the sheet's short side, m
 * @param faceThickness one paper face, m
 * @param faceModulus Young's modulus of the paper along the grain, Pa
 * @param faceStrength compressive strength of the paper, Pa; it governs a foam-board wing
 * @param coreModulus Young's modulus of the core, Pa
 * @param coreShearModulus Pa
 * @param price of one sheet
 */
public record Board(
        String name,
        double thickness,
        double arealDensity,
        double length,
        double width,
        double faceThickness,
        double faceModulus,
        double faceStrength,
        double coreModulus,
        double coreShearModulus,
        double price,
        Provenance provenance)
        implements Part {
    /** Side of the smallest mount cut from board, with the sheet's rim, m (judgement). */
    private static final double LEAST_SIDE = 0.060;

    public Board {
        positive("board thickness", thickness, "m");
        positive("board areal density", arealDensity, "kg/m2");
        positive("sheet length", length, "m");
        positive("sheet width", width, "m");
        positive("face thickness", faceThickness, "m");
        positive("face modulus", faceModulus, "Pa");
        positive("face strength", faceStrength, "Pa");
        positive("core modulus", coreModulus, "Pa");
        positive("core shear modulus", coreShearModulus, "Pa");
        if (2 * faceThickness >= thickness) {
            throw new IllegalArgumentException(
                    "two faces of " + faceThickness + " m leave no core in a board of " + thickness + " m");
        }
        if (width < LEAST_SIDE) {
            throw new IllegalArgumentException("sheet width " + width + " m is less than the " + LEAST_SIDE
                    + " m of the smallest mount cut from it");
        }
        if (length < width) {
            throw new IllegalArgumentException(
                    "sheet length " + length + " m is shorter than its width " + width + " m");
        }
    }
}
