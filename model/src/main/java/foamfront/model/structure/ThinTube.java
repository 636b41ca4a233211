package foamfront.model.structure;

/**
 * Torsion of thin-walled tubes after Bredt: J = 4 A² / ∮(ds/t) (R. Bredt, Z. VDI 40 (1896), from memory;
 * derived in any text on strength of materials).
 *
 * @param area enclosed by the wall's middle line, m²
 * @param perimeter of the middle line, m
 * @param wall thickness, m
 */
public record ThinTube(double area, double perimeter, double wall) {
    /** A rectangular tube by its middle line. */
    public static ThinTube rectangle(double width, double height, double wall) {
        return new ThinTube(width * height, 2 * (width + height), wall);
    }

    /** J of the closed tube, m⁴. */
    public double torsionConstant() {
        return 4 * area * area * wall / perimeter;
    }
}
