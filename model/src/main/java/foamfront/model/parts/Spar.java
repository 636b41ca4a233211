package foamfront.model.parts;

import static foamfront.model.units.Require.notNegative;
import static foamfront.model.units.Require.positive;

/**
 * A stock length of tube, rod or strip that stiffens a wing.
 *
 * @param shape cross-section
 * @param width outside diameter of a tube or rod, or the thin side of a strip on edge, m
 * @param height outside diameter, or the tall side of a strip on edge, m
 * @param bore inside diameter of a tube, otherwise 0, m
 * @param modulus Young's modulus in bending, Pa
 * @param strength design stress in bending, Pa
 * @param density kg/m³
 * @param length stock length, m
 * @param price of one stock length
 */
public record Spar(
        String name,
        Shape shape,
        double width,
        double height,
        double bore,
        double modulus,
        double strength,
        double density,
        double length,
        double price,
        Provenance provenance)
        implements Part {
    /** Cross-sections, with their second moment of area and area. */
    public enum Shape {
        ROUND,
        STRIP
    }

    public Spar {
        positive("spar width", width, "m");
        positive("spar height", height, "m");
        notNegative("spar bore", bore, "m");
        positive("spar modulus", modulus, "Pa");
        positive("spar strength", strength, "Pa");
        positive("spar density", density, "kg/m3");
        positive("spar length", length, "m");
        if (shape == Shape.ROUND && !(bore < height)) {
            throw new IllegalArgumentException(
                    "spar bore " + bore + " m is no less than its outside diameter " + height + " m");
        }
    }

    /** Second moment of area for bending in the vertical plane, m⁴: π(D⁴ − d⁴)/64 or w h³/12. */
    public double secondMoment() {
        return shape == Shape.ROUND
                ? Math.PI / 64 * (height * height * height * height - bore * bore * bore * bore)
                : width * height * height * height / 12;
    }

    /** Mass per length, kg/m. */
    public double linearMass() {
        double area = shape == Shape.ROUND ? Math.PI / 4 * (height * height - bore * bore) : width * height;
        return density * area;
    }

    /** Greatest bending moment at the design stress, N m. */
    public double moment() {
        return strength * secondMoment() / (0.5 * height);
    }
}
