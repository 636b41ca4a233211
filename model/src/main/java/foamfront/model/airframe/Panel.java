package foamfront.model.airframe;

/**
 * A straight-edged piece of a lifting surface between two sections. x aft, y to starboard, z up, m; twist is the
 * section's incidence to the body axis, rad, nose up positive.
 *
 * @param rootX leading edge at the inner end, m
 * @param rootY m
 * @param rootZ m
 * @param rootChord m
 * @param rootTwist rad
 * @param tipX leading edge at the outer end, m
 * @param tipY m
 * @param tipZ m
 * @param tipChord m
 * @param tipTwist rad
 */
public record Panel(
        double rootX,
        double rootY,
        double rootZ,
        double rootChord,
        double rootTwist,
        double tipX,
        double tipY,
        double tipZ,
        double tipChord,
        double tipTwist) {
    /** Leading edge at a fraction of the way from root to tip, m. */
    public double leadingEdge(double fraction) {
        return rootX + fraction * (tipX - rootX);
    }

    /** Chord there, m. */
    public double chord(double fraction) {
        return rootChord + fraction * (tipChord - rootChord);
    }

    /** Where on the way from root to tip a station of the span lies. */
    public double along(double y) {
        return (y - rootY) / (tipY - rootY);
    }

    /** Of the reference line over the body axis at a station of the span, m. */
    double height(double y) {
        return rootZ + along(y) * (tipZ - rootZ);
    }

    /** Length of the panel in its own plane across the stream, m. */
    public double breadth() {
        double dy = tipY - rootY;
        double dz = tipZ - rootZ;
        return Math.sqrt(dy * dy + dz * dz);
    }

    /** Area in the panel's own plane, m². */
    public double area() {
        return 0.5 * (rootChord + tipChord) * breadth();
    }

    /** ∫ c² along the panel's breadth, m³: a third of (c₁² + c₁c₂ + c₂²) times the breadth, exact for straight edges. */
    public double chordSquared() {
        return (rootChord * rootChord + rootChord * tipChord + tipChord * tipChord) / 3 * breadth();
    }
}
