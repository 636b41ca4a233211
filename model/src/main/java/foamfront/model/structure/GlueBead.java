package foamfront.model.structure;

import foamfront.model.design.Body;
import foamfront.model.design.Design;

/**
 * What one bead of hot-melt glue holds on foam board. The glue itself bears 1 to 3 MPa; the paper under it leaves the foam at 0.05
 * to 0.2 MPa of lap shear (both from memory), so that width counts and not the glue: 0.10 MPa, the geometric mean, over
 * the width that is glued,
 * and 0.15 MPa in a
 * pull square to the face, at which the foam itself may tear (0.15 to 0.25 MPa, from memory).
 *
 * <p>Under a board it is pressed to 0.2 mm; what is left comes out as a fillet on each side, its legs a, a² the section that is
 * left over. A bead laid in the corner beside a board is a fillet of legs √(2 A). Derived, from a density of 950 kg/m³ (0.94 to
 * 0.98, from memory).
 */
final class GlueBead {
    /** Shear or pull at which paper leaves foam, Pa. */
    static final double BOND = 0.10e6;

    /** Pull that tears the foam, the low end, Pa. */
    static final double PULL = 0.15e6;

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

    /** Glued width of a board's edge between two beads, one in each corner, m. */
    static double inCorners(double section, double thickness) {
        return thickness + 2 * Math.sqrt(2 * section);
    }

    /** Line load, N/m, that two seats of a pod and boom's boom bear at the nominal bond, one on either side; 0 without a boom. */
    static double seats(double section, Design design) {
        return design.body() instanceof Body.PodAndBoom pod
                ? 2 * BOND * inCorners(section, pod.boom().height())
                : 0;
    }

    /** Width over which a bead spreads between two faces, m. */
    static double flat(double section, double room) {
        return Math.min(room, section / PRESSED);
    }
}
