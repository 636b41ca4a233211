package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.validation.ErrorStatistics;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Roll damping, dihedral effect, aileron power and V-tails against a fine lattice, and that lattice against closed forms. */
class LateralSystemExternalTest {
    /** The table's stated accuracy. */
    private static final double TABLE = 0.005;

    /** What one unknown a strip at the default resolution keeps of a lattice of 20 strips and 5 rows a half. */
    private static final double COARSE = 0.012;

    /** A canted tail's load falls to nothing at the root as steeply as at the tip, where eight strips do not crowd. */
    private static final double CANTED = 0.045;

    /** The slender wing is the limit of aspect ratio 0; at 0.2 the next term is of this order. */
    private static final double SLENDER = 0.01;

    /** Strips and rows of the fine lattice; a control begins where a strip of it does. */
    private static final int STRIPS = 20;

    private static final int ROWS = 5;
    private static final double HINGE_FROM = Math.sin(Math.PI * 7 / (2 * STRIPS));

    private static final Validation LINE = Validation.of(
            Subject.LIFT,
            "Roll damping and dihedral effect, lifting line",
            "The monoplane equation over the whole span (derived); compare H. A. Pearson and R. T. Jones, NACA R-635, 1938.");
    private static final Validation LATTICE = Validation.of(
            Subject.LIFT,
            "Rolling and sideslip, lifting surface",
            "A lattice of 20 x 5 a half over both halves, written for the test (J. Katz and A. Plotkin, Low-Speed Aerodynamics,"
                    + " 2001, section 12.1, from memory).");
    private static final ErrorStatistics damping = new ErrorStatistics();
    private static final ErrorStatistics dihedral = new ErrorStatistics();
    private static final ErrorStatistics aileron = new ErrorStatistics();

    @AfterAll
    static void recordSets() {
        assertThat(damping.count()).isPositive();
        LATTICE.set("C_lp, share", damping, COARSE, COARSE, "")
                .set("C_l-beta per dihedral, share", dihedral, COARSE, COARSE, "")
                .set("aileron power, share", aileron, COARSE, COARSE, "");
    }

    @ParameterizedTest(name = "aspect ratio {0}, taper {1}")
    @CsvSource({
        "4, 1, 0.4264, 0.701",
        "6, 1, 0.5233, 0.8515",
        "6, 0.5, 0.4866, 0.8095",
        "8, 1, 0.5914, 0.955",
        "8, 0.5, 0.5438, 0.901"
    })
    void theSeriesGivesTheTabledValues(double aspectRatio, double taper, double roll, double effect) {
        String wing = String.format(Locale.ROOT, "aspect ratio %.0f, taper %.1f", aspectRatio, taper);
        double line = FourierLiftingLine.tapered(aspectRatio, taper, eta -> eta).roll();
        double kinked =
                FourierLiftingLine.tapered(aspectRatio, taper, Math::signum).roll();
        LINE.relative("-C_lp, " + wing, roll, line, TABLE, "")
                .relative("-C_l-beta, " + wing, effect, kinked, TABLE, "");
    }

    /** R. T. Jones, NACA R-835, 1946, and its antisymmetric twin C_lp = -π A / 32 (from memory). */
    @Test
    void theFineLatticeIsRightForSlenderWings() {
        Surface wing = TestWings.wing(0.2, 1, 0);
        FullLattice fine = new FullLattice(STRIPS, ROWS, wing);
        double b = wing.span();
        LATTICE.relative(
                "the lattice itself, -C_lp of a slender wing, aspect ratio 0.2",
                Math.PI * 0.2 / 32,
                -fine.solve((y, z, ny, nz, eta) -> 2 / b * y).roll() / (0.3 * b),
                SLENDER,
                "");
    }

    @ParameterizedTest(name = "aspect ratio {0}, taper {1}, sweep {2}")
    @CsvSource({"4, 1, 0", "6, 1, 0", "6, 0.5, 0", "8, 1, 0", "8, 0.5, 0", "6, 0.6, 25", "3, 0.4, 40", "12, 0.6, 0"})
    void agreesWithAFineLattice(double aspectRatio, double taper, double sweep) {
        double angle = 3;
        Surface wing = TestWings.with(
                TestWings.surface(Surface.Role.WING, aspectRatio, taper, sweep, 0.3, 0, 0, angle),
                new Control(Control.Kind.AILERON, 0.25, HINGE_FROM, 1));
        LateralSystem ours = TestWings.solved(wing).lateral();
        FullLattice fine = new FullLattice(STRIPS, ROWS, wing);
        double b = wing.span();
        double scale = wing.area() * b;
        double p = fine.solve((y, z, ny, nz, eta) -> 2 / b * (y * nz - z * ny)).roll() / scale;
        double beta = fine.solve((y, z, ny, nz, eta) -> -ny).roll() / scale;
        double turn = PlainFlap.effectiveness(0.25);
        double up = fine.solve((y, z, ny, nz, eta) -> Math.abs(eta) < HINGE_FROM ? 0 : -turn * Math.signum(eta))
                        .roll()
                / scale;
        damping.add(ours.rollDamping() / p - 1);
        dihedral.add(ours.dihedralEffect() / beta - 1);
        aileron.add(ours.aileronPower() / up - 1);
        assertThat(ours.rollDamping() / p).isCloseTo(1, within(COARSE));
        assertThat(ours.dihedralEffect() / beta).isCloseTo(1, within(COARSE));
        assertThat(ours.aileronPower() / up).isCloseTo(1, within(COARSE));
    }

    @ParameterizedTest(name = "aspect ratio {0}, cant {1}")
    @CsvSource({"3, 35", "4, 35", "5.5, 40"})
    void aVTailsSideForceAgreesToo(double aspectRatio, double cant) {
        Surface level = TestWings.wing(aspectRatio, 0.8, 0);
        Surface vee = vee(level, cant);
        double fine = new FullLattice(STRIPS, ROWS, vee)
                        .solve((y, z, ny, nz, eta) -> -ny)
                        .side()
                / vee.area();
        LATTICE.relative(
                String.format(Locale.ROOT, "C_Y-beta of a V, aspect ratio %.1f, %.0f degrees", aspectRatio, cant),
                fine,
                TestWings.solved(vee).lateral().sideForceSlope(),
                CANTED,
                "");
    }

    /** Far from strip theory's ends the lattice tends to the line. */
    @Test
    void tendsToTheLiftingLineOnLongWings() {
        double gap = 1;
        for (double aspectRatio : new double[] {6, 12, 24, 48}) {
            double line = FourierLiftingLine.tapered(aspectRatio, 1, eta -> eta).roll();
            double ours = -TestWings.solved(TestWings.wing(aspectRatio, 1, 0))
                    .lateral()
                    .rollDamping();
            assertThat(1 - ours / line).isBetween(0.0, gap);
            gap = 1 - ours / line;
        }
        assertThat(gap).isLessThan(0.03);
    }

    static Surface vee(Surface level, double degrees) {
        Panel p = level.panels().get(0);
        double y = p.breadth() * Math.cos(Math.toRadians(degrees));
        double z = p.breadth() * Math.sin(Math.toRadians(degrees));
        Panel panel = new Panel(p.rootX(), 0, 0, p.rootChord(), 0, p.tipX(), y, z, p.tipChord(), 0);
        return TestWings.of(level.role(), List.of(panel));
    }
}
