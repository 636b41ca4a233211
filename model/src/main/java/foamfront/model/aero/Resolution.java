package foamfront.model.aero;

import foamfront.model.units.Require;

/**
 * How finely the lifting surfaces are cut.
 *
 * @param rows horseshoe rows along the chord
 * @param wingStrips strips along a wing's semispan when no tail shares its stations
 * @param tailStrips strips along the tail's semispan
 */
public record Resolution(int rows, int wingStrips, int tailStrips) {
    /** Two rows, eight wing strips, four tail strips: within 1 % of fine lattices (LiftingSurfaceExternalTest). */
    public static final Resolution DEFAULT = new Resolution(2, 8, 4);

    public Resolution {
        Require.within("rows", rows, 1, 64, "");
        Require.within("wing strips", wingStrips, 4, 400, "");
        Require.within("tail strips", tailStrips, 2, 400, "");
    }

    /** Wing strips outboard of the tail tip when the wing shares the tail's stations: at most two in eight lie inboard. */
    int outboardStrips() {
        return wingStrips - wingStrips / 4;
    }

    /** The most strips one surface can have. */
    int mostStrips() {
        return Math.max(wingStrips, outboardStrips() + tailStrips);
    }
}
