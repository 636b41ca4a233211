package foamfront.model.aero;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The delta's vortex law on rectangular plates of low aspect ratio, whose side edges shed vortices too: shown beside the
 * measurements, never fitted to them. Up to where they stall the law lies near; beyond it promises what the cap on a delta's
 * maximum lift takes back.
 */
class VortexLiftExternalTest {
    private static final Validation PLATES = Validation.of(
            Subject.LIFT,
            "The delta's vortex law on measured plates",
            "Plates of aspect ratio 1 and 2 at Re 140 000, A. Pelletier and T. J. Mueller, J. Aircraft 37(5), 2000, read off"
                    + " diagrams in a second hand, lift to 0.05 at these angles; law of E. C. Polhamus, NASA TN D-3767, 1966, K_p of"
                    + " the lifting system.");

    /** Of the reading and of the plates' blunt edges, on the lift coefficient. */
    private static final double SCATTER = 0.07;

    private static double lift(double aspectRatio, double degrees) {
        double slope = TestWings.solved(TestWings.wing(aspectRatio, 1, 0)).liftSlope();
        double s = Math.sin(Math.toRadians(degrees));
        double c = Math.cos(Math.toRadians(degrees));
        return slope * s * c * c + LeadingEdgeVortex.LIFT * s * s * c;
    }

    @ParameterizedTest(name = "aspect ratio {0} at {1} degrees")
    @CsvSource({"1, 15, 0.50", "1, 8, 0.20", "2, 8, 0.40"})
    void nearWhereTheVorticesHold(double aspectRatio, double degrees, double measured) {
        PLATES.band(name(aspectRatio, degrees), measured - SCATTER, measured + SCATTER, lift(aspectRatio, degrees), "");
    }

    @ParameterizedTest(name = "aspect ratio {0} at {1} degrees")
    @CsvSource({"1, 20, 0.70", "1, 25, 0.825", "2, 15, 0.70", "2, 20, 0.75"})
    void aboveWhereTheyBurst(double aspectRatio, double degrees, double measured) {
        PLATES.outside(
                name(aspectRatio, degrees), measured - SCATTER, measured + SCATTER, lift(aspectRatio, degrees), "");
    }

    private static String name(double aspectRatio, double degrees) {
        return String.format(Locale.ROOT, "lift coefficient, aspect ratio %.0f at %.0f degrees", aspectRatio, degrees);
    }
}
