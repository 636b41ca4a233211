package foamfront.model.aero;

/** Drag areas of wires and rods across the stream, m²: {@link Cylinder} coefficients on diameter times length. */
public final class WireDrag {
    private WireDrag() {}

    /**
     * Between two bodies, as a leg between fuselage and wheel.
     *
     * @param diameter m
     * @param length m
     */
    public static double dragArea(double diameter, double length, double speed, double kinematicViscosity) {
        return Cylinder.across(speed * diameter / kinematicViscosity) * diameter * length;
    }
}
