package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Design;
import foamfront.model.design.Planform;
import foamfront.model.design.WingShape;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Polyhedral, gull and cranked wings, whose breaks fall inside strips, against a fine resolution of the same method. */
class BrokenWingConvergenceTest {
    private static final Resolution FINE = new Resolution(4, 48, 4);

    /** Lift slope, span efficiency, roll damping; neutral point of the mean chord. */
    private static final double TARGET = 0.01;

    /** An aileron that ends inside a strip. */
    private static final double AILERON = 0.015;

    /** The innermost strip runs past the end of a short cut-out and has its middle's chord. */
    private static final double CUT_OUT = 0.016;

    /** The strip with the break has one mean dihedral: most where all the dihedral lies inboard. */
    private static final double DIHEDRAL_EFFECT = 0.04;

    @ParameterizedTest(name = "break at {0}, chord {1}, sweep {2}, dihedral {3} then {4}")
    @CsvSource({"0.6, 0.95, 0, 3, 10", "0.5, 0.8, 0, 0, 12", "0.35, 0.9, 5, 12, 0", "0.5, 0.7, 25, 5, 5"})
    void aBreakCostsLittle(double at, double chord, double sweep, double inner, double outer) {
        Surface wing = wing(at, chord, sweep, inner, outer);
        LiftingSystem coarse = TestWings.solved(wing);
        LiftingSystem fine = TestWings.solved(FINE, wing);

        assertThat(coarse.liftSlope() / fine.liftSlope()).isCloseTo(1, within(TARGET));
        assertThat(coarse.spanEfficiency(0.1, 0, 0) / fine.spanEfficiency(0.1, 0, 0))
                .isCloseTo(1, within(TARGET));
        assertThat((coarse.neutralPoint() - fine.neutralPoint()) / fine.referenceChord())
                .isCloseTo(0, within(TARGET));
        LateralSystem ours = coarse.lateral();
        LateralSystem theirs = fine.lateral();
        assertThat(ours.rollDamping() / theirs.rollDamping()).isCloseTo(1, within(TARGET));
        assertThat(ours.dihedralEffect() / theirs.dihedralEffect()).isCloseTo(1, within(DIHEDRAL_EFFECT));
        assertThat(ours.aileronPower() / theirs.aileronPower()).isCloseTo(1, within(AILERON));
    }

    /** A centre cut out of the trailing edge: the root narrowed by a share, run out straight at a share of the semispan. */
    @ParameterizedTest(name = "cut-out of {0} to {1}, sweep {2}")
    @CsvSource({"0.3, 0.15, 0", "0.4, 0.25, 0", "0.4, 0.4, 20", "0.4, 0.2, 10"})
    void aCutOutCostsLittle(double depth, double breadth, double sweep) {
        WingShape shape = new WingShape(0.2, 0.8, Math.toRadians(sweep), 0, 0.5, 0, depth, breadth);
        Surface wing = surface(shape.planform(1.2, 0, 0));
        LiftingSystem coarse = TestWings.solved(wing);
        LiftingSystem fine = TestWings.solved(FINE, wing);
        assertThat(coarse.liftSlope() / fine.liftSlope()).isCloseTo(1, within(CUT_OUT));
        assertThat(coarse.spanEfficiency(0.1, 0, 0) / fine.spanEfficiency(0.1, 0, 0))
                .isCloseTo(1, within(CUT_OUT));
        assertThat((coarse.neutralPoint() - fine.neutralPoint()) / fine.referenceChord())
                .isCloseTo(0, within(CUT_OUT));
        LiftingSystem whole = TestWings.solved(
                surface(new WingShape(0.2, 0.8, Math.toRadians(sweep), 0, 0.5, 0, 0, 0.2).planform(1.2, 0, 0)));
        assertThat(coarse.liftSlope() * coarse.referenceArea()).isLessThan(whole.liftSlope() * whole.referenceArea());
        assertThat(coarse.spanEfficiency(0.1, 0, 0)).isLessThan(whole.spanEfficiency(0.1, 0, 0));
    }

    /** Panels of a planform about the origin, as an airframe lays them. */
    private static Surface surface(Planform plan) {
        Design design = Records.with(Samples.trainer(), "wing.planform", plan);
        return TestWings.of(Surface.Role.WING, Airframe.of(design).wing().panels());
    }

    /** Semispan 0.6 m, root chord 0.2 m, tip chord 0.12 m. */
    private static Surface wing(double at, double chord, double sweep, double inner, double outer) {
        double half = 0.6;
        double y = at * half;
        double z = y * Math.tan(Math.toRadians(inner));
        double tipZ = z + (half - y) * Math.tan(Math.toRadians(outer));
        double slant = Math.tan(Math.toRadians(sweep));
        double middle = 0.2 * chord;
        Panel root = new Panel(-0.05, 0, 0, 0.2, 0, y * slant - 0.25 * middle, y, z, middle, 0);
        Panel tip = new Panel(y * slant - 0.25 * middle, y, z, middle, 0, half * slant - 0.03, half, tipZ, 0.12, 0);
        Surface plain = TestWings.of(Surface.Role.WING, List.of(root, tip));
        return TestWings.with(plain, new Control(Control.Kind.AILERON, 0.25, 0.6, 1));
    }
}
