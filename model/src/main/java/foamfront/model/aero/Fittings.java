package foamfront.model.aero;

import foamfront.model.section.SectionPolar;

/** Drag areas of what is fitted outside the body, m². */
public final class Fittings {
    /** Air passes a vent at this share of the stream's speed, held up by what it cools (judgement). */
    private static final double INFLOW = 0.5;

    /** On frontal area; S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. 3, <i>from memory</i>. */
    private static final double CUBE = 1.05;

    /** Square edges drag this much more than the round rod's of the same length, found at the cube. */
    private static final double SQUARE_EDGES = CUBE / Cylinder.along(0.5 * Math.sqrt(Math.PI));

    private Fittings() {}

    /**
     * A pylon of boards, rounded ahead and blunt behind: turbulent friction on both sides with the form factor, and base drag
     * 0.135 / C_f,fore^(1/3), two-dimensional, on base area (S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. 3, <i>from
     * memory</i>).
     *
     * @param height across the stream, m
     * @param chord along it, m
     * @param thickness m
     */
    public static double pylon(double height, double chord, double thickness, double speed, double kinematicViscosity) {
        double friction = SkinFriction.turbulent(speed * chord / kinematicViscosity);
        double ahead = 2 * height * chord * friction * FormFactor.surface(thickness / chord);
        double base = height * thickness;
        return ahead + SectionPolar.BLUNT_EDGE / StrictMath.cbrt(ahead / base) * base;
    }

    /**
     * A motor standing free, as a blunt rod along the stream ({@link Cylinder#along}).
     *
     * @param diameter m
     * @param length m
     */
    public static double bareMotor(double diameter, double length) {
        return Cylinder.along(length / diameter) * 0.25 * Math.PI * diameter * diameter;
    }

    /**
     * Cooling air through a body: what enters at r V leaves at r V A_in / A_out along the stream, so its momentum costs D =
     * ρ A_in r V (V − r V A_in / A_out), drag area 2 r (1 − r A_in / A_out) A_in. Derived; r is judged.
     *
     * @param inlet area ahead, m²
     * @param ratio outlet over inlet area
     */
    public static double cooling(double inlet, double ratio) {
        return 2 * INFLOW * (1 - INFLOW / ratio) * inlet;
    }

    /**
     * Rubber bands over a wing and their pegs, as rods across the stream with no shelter from each other (<i>judgement</i>,
     * high side).
     *
     * @param thickness of one band, m
     * @param length of one band facing the stream, m
     */
    public static double rubberBands(
            int count, double thickness, double length, double speed, double kinematicViscosity) {
        return count * WireDrag.dragArea(thickness, length, speed, kinematicViscosity);
    }

    /**
     * A box carried in the stream, its edges sharp: a cube's drag where it is a cube, less where it is long enough for
     * the flow to come back to its sides, and the friction of what is longer than that ({@link BoxBody} without a
     * rounded nose; the ratio found at the cube is taken for every length, <i>judgement</i>).
     *
     * @param length along the stream, m
     * @param width m
     * @param height m
     */
    public static double box(double length, double width, double height, double speed, double kinematicViscosity) {
        BoxBody sharp = new BoxBody(length, width, height, 0, width * height);
        return SQUARE_EDGES * sharp.dragArea(speed, kinematicViscosity);
    }
}
