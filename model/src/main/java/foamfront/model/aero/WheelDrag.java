package foamfront.model.aero;

/**
 * Drag of small foam wheels on their own frontal area.
 *
 * <p>0.6 for solid foam wheels at Re 10 000 to 50 000, within 0.4 to 0.8: thin discs edge-on and cylinders bracket it
 * (<i>judgement</i>).
 */
public final class WheelDrag {
    private static final double FOAM_WHEEL = 0.6;

    private WheelDrag() {}

    /** Drag area of one wheel in the free stream, m². */
    public static double dragArea(double diameter, double width) {
        return FOAM_WHEEL * diameter * width;
    }
}
