package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Surface;
import foamfront.model.validation.ErrorStatistics;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Default strips and fine strips against converged vortex lattices of flat plates. */
class LiftingSurfaceExternalTest {
    /** The design's target for the default strips. */
    private static final double SLOPE = 0.01;

    private static final double EFFICIENCY = 0.01;

    /** Eight strips resolve the kink of strongly swept wings less well. */
    private static final double SWEPT_EFFICIENCY = 0.016;

    /** Spanwise centre of lift over semispan; at eight strips a per cent of 0.43. */
    private static final double CENTRE = 0.0043;

    /** The reference's own two grids differ by this. */
    private static final double FINE = 0.0015;

    /** The single row's reference is stated to this. */
    private static final double WEISSINGER = 0.003;

    /** Measured over the thirteen wings when written; rounded up in the third digit. */
    private static final double WORST_SLOPE = 0.0097;

    private static final double RMS_SLOPE = 0.0049;

    private static final double WORST_EFFICIENCY = 0.0152;

    private static final String SOURCE =
            "Vortex lattices of flat plates converged to the digits given (derived); the square plate by E. O. Tuck, 1993 (from"
                    + " memory).";

    private static final Validation DEFAULT = Validation.of(Subject.LIFT, "Planar wings, default strips", SOURCE);
    private static final Validation FINEST = Validation.of(Subject.LIFT, "Planar wings, fine strips", SOURCE);

    private static final ErrorStatistics slopes = new ErrorStatistics();
    private static final ErrorStatistics efficiencies = new ErrorStatistics();
    private static final ErrorStatistics centres = new ErrorStatistics();
    private static final ErrorStatistics fineSlopes = new ErrorStatistics();
    private static final ErrorStatistics fineEfficiencies = new ErrorStatistics();
    private static final ErrorStatistics weissinger = new ErrorStatistics();

    @ParameterizedTest(name = "aspect ratio {0}, taper {1}, sweep {2}")
    @CsvFileSource(resources = "lifting-surfaces.csv", numLinesToSkip = 1)
    void defaultStripsMeetTheTarget(
            double aspectRatio, double taper, double sweep, double row, double slope, double e, double centre) {
        LiftingSystem system = TestWings.solved(TestWings.wing(aspectRatio, taper, sweep));
        double slopeError = system.liftSlope() / slope - 1;
        double efficiencyError = system.spanEfficiency(0.1, 0, 0) / e - 1;
        slopes.add(slopeError);
        efficiencies.add(efficiencyError);
        centres.add(centreOfLift(system) - centre);
        assertThat(slopeError).isCloseTo(0, within(SLOPE));
        assertThat(efficiencyError).isCloseTo(0, within(sweep > 40 ? SWEPT_EFFICIENCY : EFFICIENCY));
        assertThat(centreOfLift(system)).isCloseTo(centre, within(CENTRE));
    }

    @AfterAll
    static void errorsAreNoWorseThanMeasured() {
        assertThat(slopes.count()).isEqualTo(13);
        DEFAULT.set("lift slope, relative", slopes, WORST_SLOPE, RMS_SLOPE, "")
                .set("span efficiency, relative", efficiencies, WORST_EFFICIENCY, WORST_EFFICIENCY, "")
                .set("centre of lift over semispan", centres, CENTRE, CENTRE, "");
        FINEST.set("lift slope, relative", fineSlopes, FINE, FINE, "")
                .set("span efficiency, relative", fineEfficiencies, 2 * FINE, 2 * FINE, "")
                .set("one row against Weissinger's method, relative", weissinger, WEISSINGER, WEISSINGER, "");
    }

    @ParameterizedTest(name = "aspect ratio {0}, taper {1}, sweep {2}")
    @CsvFileSource(resources = "lifting-surfaces.csv", numLinesToSkip = 1)
    void fineStripsReachTheLattice(
            double aspectRatio, double taper, double sweep, double row, double slope, double e, double centre) {
        Surface wing = TestWings.wing(aspectRatio, taper, sweep);
        LiftingSystem system = TestWings.solved(new Resolution(6, 32, 4), wing);
        fineSlopes.add(system.liftSlope() / slope - 1);
        fineEfficiencies.add(system.spanEfficiency(0.1, 0, 0) / e - 1);
        assertThat(system.liftSlope() / slope).isCloseTo(1, within(FINE));
        assertThat(system.spanEfficiency(0.1, 0, 0) / e).isCloseTo(1, within(2 * FINE));
        assertThat(centreOfLift(system)).isCloseTo(centre, within(FINE));
    }

    @ParameterizedTest(name = "aspect ratio {0}, taper {1}, sweep {2}")
    @CsvFileSource(resources = "lifting-surfaces.csv", numLinesToSkip = 1)
    void oneRowIsWeissingersMethod(
            double aspectRatio, double taper, double sweep, double row, double slope, double e, double centre) {
        Surface wing = TestWings.wing(aspectRatio, taper, sweep);
        LiftingSystem system = TestWings.solved(new Resolution(1, 60, 4), wing);
        weissinger.add(system.liftSlope() / row - 1);
        assertThat(system.liftSlope() / row).isCloseTo(1, within(WEISSINGER));
    }

    /** E. O. Tuck, 1993 (from memory): 1.4602. */
    @Test
    void finestGridFindsTheSquarePlate() {
        LiftingSystem system = TestWings.solved(new Resolution(10, 24, 4), TestWings.wing(1, 1, 0));
        FINEST.relative("lift slope of a square plate", 1.4602, system.liftSlope(), 0.001, "1/rad");
    }

    /** Straight lifting line over vortex lattice, rectangular: a regression of the two theories against each other. */
    @ParameterizedTest(name = "aspect ratio {0}")
    @CsvSource({"4, 1.115", "6, 1.075", "8, 1.055"})
    void theStraightLineIsHighByTheKnownRatio(double aspectRatio, double ratio) {
        double line = FourierLiftingLine.tapered(aspectRatio, 1, eta -> 1).lift();
        double surface = TestWings.solved(TestWings.wing(aspectRatio, 1, 0)).liftSlope();
        assertThat(line / surface).isCloseTo(ratio, within(SLOPE));
    }

    /** The same for Helmbold's closed form. */
    @ParameterizedTest(name = "aspect ratio {0}")
    @CsvSource({"1, 1.016", "2, 1.052", "4, 1.075", "6, 1.075", "8, 1.070"})
    void helmboldIsHighByTheKnownRatio(double aspectRatio, double ratio) {
        double surface = TestWings.solved(TestWings.wing(aspectRatio, 1, 0)).liftSlope();
        assertThat(Helmbold.liftSlope(aspectRatio, 1) / surface).isCloseTo(ratio, within(SLOPE));
    }

    /** The straight line puts it at 0.5 to 0.6 of the semispan; a real surface unloads its tip a little more. */
    @Test
    void aTaperedWingStallsFirstNearHalfItsSemispan() {
        LiftingSystem system = TestWings.solved(TestWings.wing(6, 0.5, 0));
        int first = 0;
        for (int i = 1; i < system.endStrip(0); i++) {
            first = system.stripLiftSlope(i) > system.stripLiftSlope(first) ? i : first;
        }
        assertThat(system.stripY(first) / (0.5 * system.referenceSpan())).isBetween(0.4, 0.65);
    }

    private static double centreOfLift(LiftingSystem system) {
        double force = 0;
        double moment = 0;
        for (int i = 0; i < system.endStrip(0); i++) {
            double lift = system.stripLiftSlope(i) * system.stripArea(i);
            force += lift;
            moment += lift * system.stripY(i);
        }
        return moment / force / (0.5 * system.referenceSpan());
    }
}
