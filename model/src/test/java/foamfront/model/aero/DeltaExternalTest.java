package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A delta's potential flow against a fine lattice over both halves, and vortex lift against what a square plate was measured to do. */
class DeltaExternalTest {
    private static final int STRIPS = 20;
    private static final int ROWS = 14;

    private static final double SLOPE = 0.01;

    /** Of the mean chord. */
    private static final double NEUTRAL_POINT = 0.015;

    /** The fine lattice's own distance from one half as fine again. */
    private static final double FINE = 0.003;

    private static final Validation DELTAS = Validation.of(
            Subject.LIFT,
            "Deltas",
            "Flat wings with straight trailing edges; a vortex lattice of the tests over both halves, 20 strips a half, 14 rows.");

    @ParameterizedTest(name = "leading edge {0} degrees, taper {1}")
    @CsvSource({
        "35, 0.2",
        "35, 0.5",
        "45, 0.1",
        "45, 0.2",
        "45, 0.45",
        "50, 0.15",
        "50, 0.3",
        "55, 0.2",
        "55, 0.4",
        "60, 0.1",
        "60, 0.3"
    })
    void slopeAndNeutralPointFollowAFineLattice(double sweep, double taper) {
        Surface wing = wing(sweep, taper);
        LiftingSystem ours = TestWings.solved(wing);
        FullLattice fine = new FullLattice(STRIPS, ROWS, wing).solve((y, z, ny, nz, eta) -> nz);

        String name = String.format(Locale.ROOT, "leading edge %.0f deg, taper %.2f", sweep, taper);
        DELTAS.relative(name + ", lift slope", fine.lift() / wing.area(), ours.liftSlope(), SLOPE, "1/rad");
        double chord = wing.meanAerodynamicChord();
        DELTAS.value(name + ", neutral point", fine.centreX() / chord, ours.neutralPoint() / chord, NEUTRAL_POINT, "c");
    }

    @Test
    void theFineLatticeIsFineEnough() {
        Surface wing = wing(50, 0.2);
        FullLattice fine = new FullLattice(STRIPS, ROWS, wing).solve((y, z, ny, nz, eta) -> nz);
        FullLattice coarser = new FullLattice(STRIPS * 2 / 3, ROWS * 2 / 3, wing).solve((y, z, ny, nz, eta) -> nz);

        assertThat(coarser.lift() / fine.lift()).isCloseTo(1, within(FINE));
        assertThat((coarser.centreX() - fine.centreX()) / wing.meanAerodynamicChord())
                .isCloseTo(0, within(FINE));
    }

    /** Half a span of 1 m, the trailing edge straight. */
    private static Surface wing(double sweep, double taper) {
        double back = 0.5 * Math.tan(Math.toRadians(sweep));
        double root = back / (1 - taper);
        return TestWings.of(Surface.Role.WING, List.of(new Panel(0, 0, 0, root, 0, back, 0.5, 0, taper * root, 0)));
    }
}
