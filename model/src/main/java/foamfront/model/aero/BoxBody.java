package foamfront.model.aero;

import static foamfront.model.units.Require.notNegative;
import static foamfront.model.units.Require.positive;

/**
 * Drag of a square-cornered tube along the stream.
 *
 * <p>With the nose edges rounded to 0.15 of the smaller side: 0.1 on frontal area for the forebody, turbulent friction on the
 * four sides (tape edges and the propeller's wake leave nothing laminar, <i>judgement</i>), and base drag
 * C_D,base = 0.029 / √C_f,fore with everything ahead referred to the base: S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. 3,
 * <i>from memory</i>, ±30 %. With sharp nose edges: a blunt cylinder of the same frontal area ({@link Cylinder#along}, base
 * included) and the friction of what is longer than that was measured; this is the ceiling. Between, straight in the radius
 * (<i>judgement</i>; real edges gain most from the first few millimetres).
 *
 * @param length m
 * @param width outside, m
 * @param height outside, m
 * @param noseRadius of the nose edges, m
 * @param baseArea flat area at the tail end, m²
 */
public record BoxBody(double length, double width, double height, double noseRadius, double baseArea) {
    private static final double ROUNDED_FOREBODY = 0.1;
    private static final double ROUND_ENOUGH = 0.15;
    private static final double BASE = 0.029;

    public BoxBody {
        positive("body length", length, "m");
        positive("body width", width, "m");
        positive("body height", height, "m");
        notNegative("nose radius", noseRadius, "m");
        notNegative("base area", baseArea, "m2");
    }

    /** Drag area, m². */
    public double dragArea(double speed, double kinematicViscosity) {
        double frontal = width * height;
        double friction = 2 * (width + height) * length * friction(speed * length / kinematicViscosity);
        double diameter = 2 * Math.sqrt(frontal / Math.PI);
        double fineness = length / diameter;
        double unmeasured = Math.max(0, 1 - Cylinder.LONGEST_MEASURED / fineness);
        double blunt = Cylinder.along(fineness) * frontal + unmeasured * friction;

        double ahead = ROUNDED_FOREBODY * frontal + friction;
        double rounded = Math.min(blunt, ahead + base(ahead));
        double roundness = Math.min(1, noseRadius / Math.min(width, height) / ROUND_ENOUGH);
        return blunt + roundness * (rounded - blunt);
    }

    private double base(double ahead) {
        return baseArea > 0 ? baseArea * baseCoefficient(ahead / baseArea) : 0;
    }

    /** Base drag coefficient from the drag coefficient of everything ahead, both on base area; three-dimensional. */
    public static double baseCoefficient(double fore) {
        return BASE / Math.sqrt(fore);
    }

    /** Turbulent, or laminar where that is more: below Re 17 000 the turbulent form means nothing. */
    private static double friction(double reynolds) {
        return Math.max(SkinFriction.laminar(reynolds), SkinFriction.turbulent(reynolds));
    }
}
