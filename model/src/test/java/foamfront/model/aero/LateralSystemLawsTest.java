package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Control;
import foamfront.model.airframe.Surface;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What rolling and yawing may not break, over random wings and V-tails. */
class LateralSystemLawsTest {
    /** Elimination of some fifteen unknowns loses a few digits of sixteen. */
    private static final double ROUNDING = 1e-10;

    /** Strips doubled on wing and tail. */
    private static final double DOUBLED = 0.015;

    static LongStream seeds() {
        return LongStream.range(1, 13);
    }

    private static Surface wing(long seed, double scale, double dihedral, double flip) {
        Random random = new Random(seed);
        Surface plain = TestWings.surface(
                Surface.Role.WING,
                4 + 6 * random.nextDouble(),
                0.3 + 0.7 * random.nextDouble(),
                25 * random.nextDouble(),
                0.3 * scale * scale,
                0,
                0,
                flip * dihedral);
        return TestWings.with(plain, new Control(Control.Kind.AILERON, 0.25, 0.5, 1));
    }

    private static Surface tail(long seed, double scale) {
        Random random = new Random(-seed);
        double area = (0.05 + 0.03 * random.nextDouble()) * scale * scale;
        Surface level = TestWings.surface(
                Surface.Role.TAIL, 3 + 2 * random.nextDouble(), 0.7, 5, area, 0.7 * scale, 0.05 * scale, 0);
        Surface vee = LateralSystemExternalTest.vee(level, 30 + 15 * random.nextDouble());
        return TestWings.with(vee, new Control(Control.Kind.ELEVATOR, 0.4, 0, 1));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void sizeDoesNotChangeDerivatives(long seed) {
        LateralSystem small =
                TestWings.solved(wing(seed, 1, 3, 1), tail(seed, 1)).lateral();
        LateralSystem large =
                TestWings.solved(wing(seed, 3, 3, 1), tail(seed, 3)).lateral();
        assertThat(large.rollDamping()).isCloseTo(small.rollDamping(), within(ROUNDING));
        assertThat(large.dihedralEffect()).isCloseTo(small.dihedralEffect(), within(ROUNDING));
        assertThat(large.yawStiffness(0.3)).isCloseTo(small.yawStiffness(0.1), within(ROUNDING));
        assertThat(large.rudderPower(0.3)).isCloseTo(small.rudderPower(0.1), within(ROUNDING));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void signsAreThoseOfAnAeroplaneThatFlies(long seed) {
        LateralSystem system =
                TestWings.solved(wing(seed, 1, 3, 1), tail(seed, 1)).lateral();
        assertThat(system.rollDamping()).isNegative();
        assertThat(system.dihedralEffect()).isNegative();
        assertThat(system.aileronPower()).isPositive();
        assertThat(system.sideForceSlope()).isNegative();
        assertThat(system.yawStiffness(0.05)).isPositive();
        assertThat(system.rudderPower(0.05)).isPositive();
        assertThat(system.rudderRoll()).isNegative();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aFlatWingKnowsNoSideslipAndAnhedralTurnsTheSign(long seed) {
        LateralSystem flat = TestWings.solved(wing(seed, 1, 0, 1)).lateral();
        assertThat(flat.dihedralEffect()).isZero();
        assertThat(flat.sideForceSlope()).isZero();
        double up = TestWings.solved(wing(seed, 1, 4, 1)).lateral().dihedralEffect();
        double down = TestWings.solved(wing(seed, 1, 4, -1)).lateral().dihedralEffect();
        assertThat(down).isCloseTo(-up, within(ROUNDING));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void movingTheBalancePointMovesYawByTheSideForce(long seed) {
        LateralSystem system =
                TestWings.solved(wing(seed, 1, 3, 1), tail(seed, 1)).lateral();
        double span = wing(seed, 1, 3, 1).span();
        assertThat(system.yawStiffness(0.2) - system.yawStiffness(0.1))
                .isCloseTo(0.1 * system.sideForceSlope() / span, within(ROUNDING));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void doublingTheStripsHardlyMatters(long seed) {
        LateralSystem coarse =
                TestWings.solved(wing(seed, 1, 3, 1), tail(seed, 1)).lateral();
        LateralSystem fine = TestWings.solved(new Resolution(2, 16, 8), wing(seed, 1, 3, 1), tail(seed, 1))
                .lateral();
        assertThat(coarse.rollDamping() / fine.rollDamping()).isCloseTo(1, within(DOUBLED));
        assertThat(coarse.aileronPower() / fine.aileronPower()).isCloseTo(1, within(DOUBLED));
        assertThat(coarse.yawStiffness(0.05) / fine.yawStiffness(0.05)).isCloseTo(1, within(3 * DOUBLED));
    }
}
