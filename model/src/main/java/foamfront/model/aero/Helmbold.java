package foamfront.model.aero;

/**
 * Lift slope of a straight wing from its aspect ratio alone: a = 2π κ A / (2κ + √(A² + 4κ²)), κ the section's slope over
 * 2π. H. B. Helmbold, "Der unverwundene Ellipsenflügel als tragende Fläche", Jahrbuch der deutschen Luftfahrtforschung,
 * 1942 (from memory, κ by the usual substitution). Five to eight per cent above a vortex lattice at aspect ratios 2 to
 * 10 (LiftingSurfaceExternalTest); for fins and quick estimates, not for wings.
 */
public final class Helmbold {
    private Helmbold() {}

    /** Lift slope, per rad. */
    public static double liftSlope(double aspectRatio, double slopeRatio) {
        double twice = 2 * slopeRatio;
        return 2 * Math.PI * slopeRatio * aspectRatio / (twice + Math.sqrt(aspectRatio * aspectRatio + twice * twice));
    }
}
