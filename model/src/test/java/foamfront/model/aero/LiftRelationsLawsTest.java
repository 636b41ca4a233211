package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold between two lifting systems or two conditions of one, over two hundred wings and pairs at random. */
class LiftRelationsLawsTest {
    private static final int CASES = 200;

    /** Elimination of some thirty unknowns loses a few digits of sixteen. */
    private static final double ROUNDING = 1e-10;

    /** Span efficiency that the default strips lose on an elliptic wing, measured 0.0036. */
    private static final double STRIPS = 0.004;

    /** Slope that a lifting surface loses on the line, times the aspect ratio; measured 0.39 to 0.46. */
    private static final double SURFACE = 0.5;

    /** Where the ideal is just reached. */
    private static final double IDEAL = 1 + 1e-9;

    private static SplittableRandom random(int seed) {
        return new SplittableRandom(seed);
    }

    private static Surface wing(SplittableRandom random, double sweep) {
        return TestWings.wing(random.nextDouble(3, 14), random.nextDouble(0.3, 1), random.nextDouble(-sweep, sweep));
    }

    private static Surface tail(SplittableRandom random) {
        return TestWings.surface(
                Surface.Role.TAIL,
                random.nextDouble(2, 5),
                random.nextDouble(0.5, 1),
                0,
                random.nextDouble(0.03, 0.07),
                random.nextDouble(0.6, 1),
                random.nextDouble(-0.1, 0.2),
                random.nextDouble(0, 10));
    }

    /** The air does not know port from starboard: the flow to the left of a symmetric aeroplane mirrors that to the right. */
    @Test
    void bothSidesSeeTheSameFlow() {
        for (int seed = 0; seed < CASES; seed++) {
            SplittableRandom random = random(seed);
            LiftingSystem system = TestWings.solved(wing(random, 30), tail(random));
            double x = random.nextDouble(-0.5, 1.5);
            double y = random.nextDouble(0.01, 1);
            double z = random.nextDouble(0.05, 0.4);
            double right = system.upwash(0.1, 0, 0, x, y, z);
            assertThat(system.upwash(0.1, 0, 0, x, -y, z)).isCloseTo(right, within(ROUNDING));
        }
    }

    /** The circulation of a twisted wing at incidence is that by its twist and that by its incidence added. */
    @Test
    void circulationIsAdditiveInTwistAndIncidence() {
        for (int seed = 0; seed < CASES; seed++) {
            SplittableRandom random = random(seed);
            Surface plain = wing(random, 30);
            Surface tail = tail(random);
            double root = random.nextDouble(-0.1, 0.1);
            double tip = random.nextDouble(-0.1, 0.1);
            double more = random.nextDouble(-0.1, 0.1);
            LiftingSystem one = TestWings.solved(TestWings.twisted(plain, root, tip), tail);
            LiftingSystem two = TestWings.solved(TestWings.twisted(plain, more, 0), tail);
            LiftingSystem both = TestWings.solved(TestWings.twisted(plain, root + more, tip), tail);
            for (int i = 0; i < both.endStrip(1); i++) {
                double sum = one.stripLiftCoefficient(i, 0.04, 0, 0) + two.stripLiftCoefficient(i, 0.03, 0, 0);
                assertThat(both.stripLiftCoefficient(i, 0.07, 0, 0)).isCloseTo(sum, within(ROUNDING));
            }
        }
    }

    /** A flat wing's induced drag grows with the square of its lift. */
    @Test
    void inducedDragOverLiftSquaredIsOneNumberForAFlatWing() {
        for (int seed = 0; seed < CASES; seed++) {
            SplittableRandom random = random(seed);
            LiftingSystem system = TestWings.solved(wing(random, 40));
            double ratio = ratio(system, 0.05);
            for (double alpha = -0.2; alpha < 0.3; alpha += 0.09) {
                assertThat(ratio(system, alpha) / ratio).isCloseTo(1, within(ROUNDING));
            }
        }
    }

    private static double ratio(LiftingSystem system, double alpha) {
        double lift = system.liftCoefficient(alpha, 0, 0);
        return system.inducedDrag(alpha, 0, 0) / (lift * lift);
    }

    /** An aeroplane k times as large has the same coefficients and k² the lift. */
    @Test
    void forcesGrowWithTheSquareOfSize() {
        for (int seed = 0; seed < CASES; seed++) {
            double k = random(seed).nextDouble(0.2, 5);
            LiftingSystem one = pair(seed, 1);
            LiftingSystem large = pair(seed, k);
            for (int s = 0; s < 2; s++) {
                double lift = one.surfaceLift(s, 0.1, 0, 0);
                assertThat(large.surfaceLift(s, 0.1, 0, 0)).isCloseTo(k * k * lift, within(k * k * ROUNDING));
            }
            assertThat(large.liftSlope()).isCloseTo(one.liftSlope(), within(ROUNDING));
            assertThat(large.spanEfficiency(0.1, 0, 0)).isCloseTo(one.spanEfficiency(0.1, 0, 0), within(ROUNDING));
        }
    }

    private static LiftingSystem pair(int seed, double k) {
        SplittableRandom random = random(seed);
        return TestWings.solved(scaled(wing(random, 30), k), scaled(tail(random), k));
    }

    private static Surface scaled(Surface surface, double k) {
        Panel p = surface.panels().get(0);
        return TestWings.of(
                surface.role(),
                List.of(new Panel(
                        k * p.rootX(),
                        k * p.rootY(),
                        k * p.rootZ(),
                        k * p.rootChord(),
                        p.rootTwist(),
                        k * p.tipX(),
                        k * p.tipY(),
                        k * p.tipZ(),
                        k * p.tipChord(),
                        p.tipTwist())));
    }

    /**
     * An elliptic wing has span efficiency 1, and as it grows slender the lift slope a₀ / (1 + a₀ / πA): L. Prandtl, NACA
     * R-116, 1921. A lifting surface has less slope than his line by a share that falls as 1 / A.
     */
    @Test
    void anEllipticWingLiftsAndDragsAsPrandtlSays() {
        for (int seed = 0; seed < CASES; seed++) {
            SplittableRandom random = random(seed);
            double aspectRatio = random.nextDouble(5, 16);
            double area = random.nextDouble(0.1, 0.4);
            LiftingSystem system = TestWings.solved(TestWings.elliptic(Math.sqrt(aspectRatio * area), area, 16));
            double line = 2 * Math.PI / (1 + 2 / aspectRatio);
            assertThat(system.liftSlope()).isBetween(line * (1 - SURFACE / aspectRatio), line);
            assertThat(system.spanEfficiency(0.1, 0, 0)).isBetween(1 - STRIPS, 1.0);
        }
    }

    /** No planar wing drags less than the elliptic load, and none is pushed by its own wake: M. M. Munk, NACA R-121, 1921. */
    @Test
    void noPlanarWingBeatsTheEllipticLoad() {
        for (int seed = 0; seed < CASES; seed++) {
            SplittableRandom random = random(seed);
            Surface wing =
                    TestWings.twisted(wing(random, 40), random.nextDouble(-0.1, 0.1), random.nextDouble(-0.1, 0.1));
            LiftingSystem system = TestWings.solved(wing);
            for (double alpha = -0.2; alpha < 0.21; alpha += 0.04) {
                assertThat(system.inducedDrag(alpha, 0, 0)).isNotNegative();
                assertThat(system.spanEfficiency(alpha, 0, 0)).isLessThanOrEqualTo(IDEAL);
            }
        }
    }

    /** Over all wings each doubling of the strips changes the answer less, and on none the last the most. */
    @Test
    void refinementConverges() {
        double[][] sums = new double[3][3];
        for (int seed = 0; seed < CASES; seed++) {
            Surface wing = wing(random(seed), 30);
            double[] before = figures(TestWings.solved(new Resolution(2, 4, 4), wing));
            double[][] steps = new double[3][];
            for (int k = 0; k < 3; k++) {
                double[] after = figures(TestWings.solved(new Resolution(2, 8 << k, 4), wing));
                steps[k] = new double[after.length];
                for (int i = 0; i < after.length; i++) {
                    steps[k][i] = Math.abs(after[i] - before[i]);
                    sums[k][i] += steps[k][i];
                }
                before = after;
            }
            for (int i = 0; i < before.length; i++) {
                assertThat(steps[2][i]).isLessThan(Math.max(steps[0][i], steps[1][i]));
            }
        }
        for (int i = 0; i < 3; i++) {
            assertThat(sums[1][i]).isLessThan(sums[0][i]);
            assertThat(sums[2][i]).isLessThan(sums[1][i]);
        }
    }

    private static double[] figures(LiftingSystem system) {
        return new double[] {system.liftSlope(), system.spanEfficiency(0.1, 0, 0), system.neutralPoint()};
    }

    /** Surfaces may be listed in any order. */
    @Test
    void theOrderOfSurfacesDoesNotMatter() {
        for (int seed = 0; seed < CASES; seed++) {
            SplittableRandom random = random(seed);
            Surface wing = wing(random, 30);
            Surface tail = tail(random);
            LiftingSystem one = TestWings.solved(wing, tail);
            LiftingSystem other = TestWings.solved(tail, wing);
            assertThat(other.liftSlope()).isCloseTo(one.liftSlope(), within(ROUNDING));
            assertThat(other.neutralPoint()).isCloseTo(one.neutralPoint(), within(ROUNDING));
            assertThat(other.inducedDrag(0.1, 0, 0)).isCloseTo(one.inducedDrag(0.1, 0, 0), within(ROUNDING));
            assertThat(other.surfaceLift(1, 0.1, 0, 0)).isCloseTo(one.surfaceLift(0, 0.1, 0, 0), within(ROUNDING));
        }
    }

    /** What sections ask at no lift, cambered and deflected: C_m0 and its change by the flap, times area and chord. */
    @Test
    void theSectionsMomentIsTheirsAtNoLift() {
        double share = 0.3;
        Surface plain = TestWings.wing(6, 1, 0);
        Surface wing = TestWings.with(plain, new Control(Control.Kind.ELEVATOR, share, 0, 1));
        LiftingSystem system = new LiftingSystem(Resolution.DEFAULT);
        system.solve(List.of(wing), List.of(new SectionLift(-0.04, 1, -0.07)));
        double scale = plain.area() * plain.meanAerodynamicChord();
        double hinged = PlainFlap.momentSlope(share);
        assertThat(system.surfaceSectionMoment(0, 0, 0)).isCloseTo(-0.07 * scale, within(ROUNDING));
        assertThat(system.surfaceSectionMoment(0, 0.1, 0)).isCloseTo((-0.07 + 0.1 * hinged) * scale, within(ROUNDING));
    }

    /** Referred to k times the area a coefficient is a k-th, so that the force it stands for stays. */
    @Test
    void coefficientsFollowTheirReferenceAreaAndForcesDoNot() {
        for (int seed = 0; seed < CASES; seed++) {
            SplittableRandom random = random(seed);
            double k = random.nextDouble(0.2, 5);
            double area = random.nextDouble(0.1, 0.5);
            double span = random.nextDouble(0.6, 2);
            double length = random.nextDouble(0.4, 1.2);
            BodyShape body = new BodyShape(length, 0.07, random.nextDouble(0.05, 0.1), length, 0.005, 0);
            double line = random.nextDouble(0.2, 0.6) * length;
            WingFlow flow = new WingFlow(line - 0.05, line + 0.15, line, span, 4.2 * area);
            assertThat(k * BodyMoment.pitchSlope(body, flow, k * area, 0.2))
                    .isCloseTo(BodyMoment.pitchSlope(body, flow, area, 0.2), within(ROUNDING));
            assertThat(k * BodyMoment.yawSlope(body, k * area, span))
                    .isCloseTo(BodyMoment.yawSlope(body, area, span), within(ROUNDING));
            double height = random.nextDouble(0.1, 0.3);
            Panel upright = new Panel(0.6, 0, 0, 0.2, 0, 0.65, 0, height, 0.15, 0);
            Surface fin = new Surface(Surface.Role.FIN, wing(random, 30).section(), List.of(upright), false, List.of());
            assertThat(k * FinYaw.stiffness(fin, 0.9, FinYaw.ON_BODY, 0.2, k * area, span))
                    .isCloseTo(FinYaw.stiffness(fin, 0.9, FinYaw.ON_BODY, 0.2, area, span), within(ROUNDING));
        }
    }

    /**
     * Two equal planes are in each other's way, the less the wider the gap: with C_Di = C_L² (1 + σ) / 2 times one plane's the
     * interference σ lies between 0 and 1 and falls (L. Prandtl, NACA R-116, 1921).
     */
    @Test
    void twoPlanesInterfereTheLessTheWiderTheGap() {
        for (int seed = 0; seed < CASES; seed++) {
            SplittableRandom random = random(seed);
            double aspectRatio = random.nextDouble(4, 10);
            double taper = random.nextDouble(0.4, 1);
            Surface lower = TestWings.surface(Surface.Role.WING, aspectRatio, taper, 0, 0.125, 0, 0, 0);
            double single = TestWings.solved(lower).spanEfficiency(0.1, 0, 0);
            double before = 1;
            for (double gap = 0.08; gap < 0.9; gap *= 1.4) {
                Surface upper = TestWings.surface(
                        Surface.Role.SECOND_WING, aspectRatio, taper, 0, 0.125, 0, gap * lower.span(), 0);
                double interference =
                        2 * single / TestWings.solved(lower, upper).spanEfficiency(0.1, 0, 0) - 1;
                assertThat(interference).isBetween(0.0, before);
                before = interference;
            }
        }
    }
}
