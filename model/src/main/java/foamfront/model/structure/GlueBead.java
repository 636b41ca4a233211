package foamfront.model.structure;

/**
 * What one bead of hot-melt glue holds on foam board. The glue itself bears 1 to 3 MPa; the paper under it leaves the foam at
 * 0.05 to 0.2 MPa of lap shear (both from memory), so that width counts and not the glue: 0.10 MPa, the geometric mean.
 *
 * <p>Under a board's edge it is pressed to 0.2 mm; what is left comes out as a fillet on each side whose legs are the root of its
 * share of the section. Derived, from a density of 950 kg/m³ (0.94 to 0.98 g/cm³, from memory).
 */
final class GlueBead {
    /** Shear at which paper leaves foam, Pa. */
    static final double BOND = 0.10e6;

    private static final double DENSITY = 950; // kg/m³
    private static final double PRESSED = 0.2e-3; // m

    private GlueBead() {}

    /** Its section, m², of its mass (kg/m). */
    static double section(double linearMass) {
        return linearMass / DENSITY;
    }

    /** Glued width of a board's edge pressed into one bead, m. */
    static double underEdge(double section, double thickness) {
        return flat(section, thickness) + 2 * Math.sqrt(Math.max(0, section - PRESSED * thickness));
    }

    /** Width over which a bead spreads between two faces, m. */
    static double flat(double section, double room) {
        return Math.min(room, section / PRESSED);
    }
}
