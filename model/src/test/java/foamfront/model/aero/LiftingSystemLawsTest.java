package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What no lifting system may break, over random wing and tail pairs. */
class LiftingSystemLawsTest {
    /** Elimination of some thirty unknowns loses a few digits of sixteen. */
    private static final double ROUNDING = 1e-10;

    /** Between forty and eighty strips. */
    private static final double REFINED = 0.002;

    /** Near field against far wake, one row of forty strips. */
    private static final double NEAR_FIELD = 0.01;

    private static final Control ELEVATOR = new Control(Control.Kind.ELEVATOR, 0.4, 0, 1);

    static LongStream seeds() {
        return LongStream.range(1, 13);
    }

    private static Surface wing(Random random, double scale) {
        return TestWings.surface(
                Surface.Role.WING,
                4 + 6 * random.nextDouble(),
                0.3 + 0.7 * random.nextDouble(),
                30 * random.nextDouble(),
                0.3 * scale * scale,
                0,
                0.1 * random.nextDouble() * scale,
                6 * random.nextDouble());
    }

    private static Surface tail(Random random, double scale) {
        double area = (0.04 + 0.03 * random.nextDouble()) * scale * scale;
        double z = 0.2 * random.nextDouble() * scale;
        double x = (0.6 + 0.4 * random.nextDouble()) * scale;
        Surface plain = TestWings.surface(Surface.Role.TAIL, 3 + 2 * random.nextDouble(), 0.7, 10, area, x, z, 0);
        return TestWings.with(plain, ELEVATOR);
    }

    private static LiftingSystem pair(long seed, double scale) {
        Random random = new Random(seed);
        Surface wing = TestWings.twisted(wing(random, scale), 0.05, 0.01);
        return TestWings.solved(wing, tail(random, scale));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void liftIsLinearInEveryColumn(long seed) {
        LiftingSystem system = pair(seed, 1);
        double fixed = system.liftCoefficient(0, 0, 0);
        double both = system.liftCoefficient(0.1, -0.2, 0);
        double one = system.liftCoefficient(0.1, 0, 0) + system.liftCoefficient(0, -0.2, 0) - fixed;
        assertThat(both).isCloseTo(one, within(ROUNDING));
        assertThat(both)
                .isCloseTo(fixed + 0.1 * system.liftSlope() - 0.2 * system.elevatorLiftSlope(), within(ROUNDING));
        assertThat(system.liftCoefficient(system.incidence(0.7, -0.1, 0), -0.1, 0))
                .isCloseTo(0.7, within(ROUNDING));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void sizeDoesNotChangeCoefficients(long seed) {
        LiftingSystem small = pair(seed, 1);
        LiftingSystem large = pair(seed, 3);
        assertThat(large.liftSlope()).isCloseTo(small.liftSlope(), within(ROUNDING));
        assertThat(large.neutralPoint() / 3).isCloseTo(small.neutralPoint(), within(ROUNDING));
        assertThat(large.inducedDrag(0.1, 0.1, 0)).isCloseTo(small.inducedDrag(0.1, 0.1, 0), within(ROUNDING));
        assertThat(large.momentCoefficient(0.1, 0.1, 0, 0.3, 0.6))
                .isCloseTo(small.momentCoefficient(0.1, 0.1, 0, 0.1, 0.2), within(ROUNDING));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void upsideDownLiftsAlike(long seed) {
        LiftingSystem system = pair(seed, 1);
        Random random = new Random(seed);
        Surface wing = turned(TestWings.twisted(wing(random, 1), 0.05, 0.01));
        LiftingSystem turned = TestWings.solved(wing, TestWings.with(turned(tail(random, 1)), ELEVATOR));
        assertThat(turned.liftSlope()).isCloseTo(system.liftSlope(), within(ROUNDING));
        assertThat(turned.neutralPoint()).isCloseTo(system.neutralPoint(), within(ROUNDING));
        assertThat(turned.inducedDrag(-0.1, 0, 0)).isCloseTo(system.inducedDrag(-0.1, 0, 0), within(ROUNDING));
        assertThat(turned.upwash(0.1, 0, 0, 0.5, -0.2, -0.1))
                .isCloseTo(system.upwash(0.1, 0, 0, 0.5, 0.2, 0.1), within(ROUNDING));
    }

    private static Surface turned(Surface surface) {
        Panel p = surface.panels().get(0);
        Panel below = new Panel(
                p.rootX(),
                p.rootY(),
                -p.rootZ(),
                p.rootChord(),
                p.rootTwist(),
                p.tipX(),
                p.tipY(),
                -p.tipZ(),
                p.tipChord(),
                p.tipTwist());
        return TestWings.of(surface.role(), List.of(below));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void splittingAWingInCollinearPiecesChangesNothing(long seed) {
        Surface whole = TestWings.twisted(wing(new Random(seed), 1), 0.05, 0.01);
        LiftingSystem one = TestWings.solved(whole);
        LiftingSystem three = TestWings.solved(TestWings.split(whole, 3));
        assertThat(three.liftSlope()).isCloseTo(one.liftSlope(), within(ROUNDING));
        assertThat(three.neutralPoint()).isCloseTo(one.neutralPoint(), within(ROUNDING));
        assertThat(three.inducedDrag(0.1, 0, 0)).isCloseTo(one.inducedDrag(0.1, 0, 0), within(ROUNDING));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aFullElevatorTurnsItsSurface(long seed) {
        Random random = new Random(seed);
        Surface wing = wing(random, 1);
        Surface tail = tail(random, 1);
        LiftingSystem hinged = TestWings.solved(wing, tail);
        double turn = PlainFlap.effectiveness(0.4);
        LiftingSystem rigged = TestWings.solved(wing, TestWings.twisted(tail, turn, turn));
        assertThat(hinged.elevatorLiftSlope()).isCloseTo(rigged.liftCoefficient(0, 0, 0), within(ROUNDING));
        double area = 2 * stripMoments(hinged, 1);
        double section = PlainFlap.momentSlope(0.4) * area / (hinged.referenceArea() * hinged.referenceChord());
        assertThat(hinged.elevatorMomentSlope(0.1)).isCloseTo(rigged.fixedMoment(0.1) + section, within(ROUNDING));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void twoFlapsEndToEndAreOneLongFlap(long seed) {
        Random random = new Random(seed);
        Surface wing = wing(random, 1);
        double end = 0.2 + 0.6 * random.nextDouble();
        double inner = flapped(wing, 0, end);
        double outer = flapped(wing, end, 1);
        assertThat(inner + outer).isCloseTo(flapped(wing, 0, 1), within(ROUNDING));
        assertThat(inner).isPositive();
        assertThat(outer).isPositive();
    }

    private static double flapped(Surface wing, double from, double to) {
        return TestWings.solved(TestWings.with(wing, new Control(Control.Kind.FLAP, 0.25, from, to)))
                .flapLiftSlope();
    }

    @Test
    void lostEffectivenessScalesTheColumn() {
        Surface wing = TestWings.with(TestWings.wing(6, 0.6, 0), new Control(Control.Kind.ELEVON, 0.2, 0.3, 1));
        LiftingSystem half = new LiftingSystem(Resolution.DEFAULT);
        half.solve(List.of(wing), TestWings.PLATE, 0.5);
        LiftingSystem full = TestWings.solved(wing);
        assertThat(half.elevatorLiftSlope()).isCloseTo(0.5 * full.elevatorLiftSlope(), within(ROUNDING));
        assertThat(half.elevatorMomentSlope(0)).isCloseTo(0.5 * full.elevatorMomentSlope(0), within(ROUNDING));
        assertThat(half.flapLiftSlope()).isZero();
    }

    private static double stripMoments(LiftingSystem system, int surface) {
        double sum = 0;
        for (int i = system.firstStrip(surface); i < system.endStrip(surface); i++) {
            sum += system.stripChord(i) * system.stripArea(i);
        }
        return sum;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void surfacesTogetherLiftTheWhole(long seed) {
        LiftingSystem system = pair(seed, 1);
        double sum = system.surfaceLift(0, 0.1, 0.2, 0) + system.surfaceLift(1, 0.1, 0.2, 0);
        assertThat(sum / system.referenceArea()).isCloseTo(system.liftCoefficient(0.1, 0.2, 0), within(ROUNDING));
        assertThat(system.momentSlope(system.neutralPoint())).isCloseTo(0, within(ROUNDING));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void inducedDragIsAlwaysPositiveAndNoneWithoutLift(long seed) {
        LiftingSystem system = pair(seed, 1);
        Random random = new Random(seed);
        for (int k = 0; k < 20; k++) {
            double alpha = random.nextDouble() - 0.5;
            assertThat(system.inducedDrag(alpha, random.nextDouble() - 0.5, 0)).isPositive();
        }
        LiftingSystem plain = TestWings.solved(wing(random, 1));
        assertThat(plain.inducedDrag(0, 0, 0)).isZero();
        assertThat(plain.liftCoefficient(0, 0, 0)).isZero();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void refiningFromFortyToEightyStripsHardlyMatters(long seed) {
        Surface wing = wing(new Random(seed), 1);
        double coarse = TestWings.solved(new Resolution(1, 40, 4), wing).liftSlope();
        double fine = TestWings.solved(new Resolution(1, 80, 4), wing).liftSlope();
        assertThat(coarse / fine).isCloseTo(1, within(REFINED));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void camberShiftsTheZeroLiftAngleOnly(long seed) {
        Surface wing = wing(new Random(seed), 1);
        LiftingSystem system = new LiftingSystem(Resolution.DEFAULT);
        system.solve(List.of(wing), List.of(new SectionLift(-0.04, 1, -0.05)));
        Surface turned = TestWings.twisted(wing, 0.04, 0.04);
        LiftingSystem flat = TestWings.solved(turned);
        assertThat(system.liftCoefficient(0.06, 0, 0)).isCloseTo(flat.liftCoefficient(0.06, 0, 0), within(ROUNDING));
        double section = -0.05 * 2 * stripMoments(system, 0) / (system.referenceArea() * system.referenceChord());
        assertThat(system.fixedMoment(0) - flat.fixedMoment(0))
                .isCloseTo(section * Math.cos(dihedral(wing)), within(ROUNDING));
    }

    private static double dihedral(Surface wing) {
        Panel p = wing.panels().get(0);
        return Math.atan2(p.tipZ() - p.rootZ(), p.tipY() - p.rootY());
    }

    /** In two dimensions a section of slope κ 2π must lift κ 2π at its quarter chord, for any number of rows. */
    @Test
    void movedControlPointsGiveTheSectionsSlopeAtTheQuarterChord() {
        double aspectRatio = 3000;
        double finite = 0.002; // the wing's own induced angle and tips, of order 2 / A and less
        Surface wing = TestWings.wing(aspectRatio, 1, 0);
        for (int rows = 1; rows <= 4; rows++) {
            LiftingSystem system = new LiftingSystem(new Resolution(rows, 8, 4));
            system.solve(List.of(wing), List.of(new SectionLift(0, 0.85, 0)));
            assertThat(system.stripLiftSlope(0)).isCloseTo(0.85 * 2 * Math.PI, within(finite * 2 * Math.PI));
            assertThat(system.neutralPoint() / system.referenceChord()).isCloseTo(0, within(finite));
        }
    }

    /** D = -ρ Σ Γ w Δy at the bound vortex; the point stands a hair above it, where its own velocity is level. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void nearFieldAndFarWakeAgreeOnInducedDrag(long seed) {
        Random random = new Random(seed);
        Surface wing = TestWings.wing(4 + 8 * random.nextDouble(), 0.4 + 0.6 * random.nextDouble(), 0);
        LiftingSystem system = TestWings.solved(new Resolution(1, 40, 4), wing);
        double sum = 0;
        for (int i = 0; i < system.endStrip(0); i++) {
            double load = 0.1 * system.stripLiftSlope(i) * system.stripArea(i);
            sum -= 2 * load * system.upwash(0.1, 0, 0, 0, system.stripY(i), 1e-5);
        }
        assertThat(sum / system.referenceArea() / system.inducedDrag(0.1, 0, 0)).isCloseTo(1, within(NEAR_FIELD));
    }

    @Test
    void solvingAgainForgetsTheAeroplaneBefore() {
        LiftingSystem system = pair(1, 1);
        Surface wing = TestWings.wing(6, 0.5, 20);
        system.solve(List.of(wing), TestWings.PLATE);
        assertThat(system.inducedDrag(0.1, 0.2, 0.3))
                .isEqualTo(TestWings.solved(wing).inducedDrag(0.1, 0.2, 0.3));
        assertThat(system.surfaceCount()).isEqualTo(1);
        assertThat(system.elevatorLiftSlope()).isZero();
    }

    @Test
    void finsAreLeftOut() {
        Surface wing = TestWings.wing(6, 0.5, 20);
        Panel upright = new Panel(0.6, 0, 0, 0.2, 0, 0.65, 0, 0.2, 0.15, 0);
        Surface fin = new Surface(Surface.Role.FIN, wing.section(), List.of(upright), false, List.of());
        LiftingSystem system = TestWings.solved(fin, wing);
        assertThat(system.liftSlope()).isEqualTo(TestWings.solved(wing).liftSlope());
        assertThat(system.listed(0)).isEqualTo(1);
    }

    /** C_m about a higher point: the lift that α tilts forward pulls below it, nose up. */
    @Test
    void tiltedLiftBelowTheBalancePointPitchesUp() {
        LiftingSystem system = TestWings.solved(TestWings.wing(6, 1, 0));
        double force = system.liftCoefficient(0.1, 0, 0);
        double difference = system.momentCoefficient(0.1, 0, 0, 0, 0.05) - system.momentCoefficient(0.1, 0, 0, 0, 0);
        assertThat(difference).isCloseTo(0.1 * force * 0.05 / system.referenceChord(), within(ROUNDING));
    }
}
