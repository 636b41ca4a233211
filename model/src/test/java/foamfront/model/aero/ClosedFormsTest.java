package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The small closed forms beside the lifting system. */
class ClosedFormsTest {
    /** Half the last printed digit of the derived values. */
    private static final double FOUR_DECIMALS = 5.1e-5;

    private static final double ROUNDING = 1e-12;

    /** The design's target for lift slopes. */
    private static final double SLOPE = 0.01;

    /** The halves of a V spare each other some downwash, so its own a_N is above the level tail's: measured 6 %. */
    private static final double V_TAIL_LIFT = 1.1;

    @ParameterizedTest(name = "aspect ratio {0}")
    @CsvSource({"1, 1.4833", "2, 2.6026", "4, 3.8832", "6, 4.5287", "8, 4.9058", "10, 5.1510"})
    void helmboldsSlopes(double aspectRatio, double slope) {
        assertThat(Helmbold.liftSlope(aspectRatio, 1)).isCloseTo(slope, within(FOUR_DECIMALS));
    }

    @Test
    void helmboldReachesTheSectionsSlope() {
        assertThat(Helmbold.liftSlope(1e9, 0.9)).isCloseTo(0.9 * 2 * Math.PI, within(1e-7));
    }

    @ParameterizedTest(name = "flap of {0} chord")
    @CsvSource({
        "0.15, 0.4805, -0.607", "0.20, 0.5498, -0.640", "0.25, 0.6090, -0.6495",
        "0.30, 0.6607, -0.642", "0.40, 0.7478, -0.588", "0.50, 0.8183, -0.500"
    })
    void glauertsFlap(double share, double effectiveness, double moment) {
        assertThat(PlainFlap.effectiveness(share)).isCloseTo(effectiveness, within(1e-4));
        assertThat(PlainFlap.momentSlope(share)).isCloseTo(moment, within(6e-4));
    }

    @Test
    void anAllMovingSurfaceTurnsWhole() {
        assertThat(PlainFlap.effectiveness(1)).isCloseTo(1, within(ROUNDING));
        assertThat(PlainFlap.momentSlope(1)).isCloseTo(0, within(ROUNDING));
    }

    @Test
    void largeDeflectionsLoseEffectiveness() {
        assertThat(PlainFlap.efficiency(Math.toRadians(10))).isBetween(0.75, 0.9);
        assertThat(PlainFlap.efficiency(Math.toRadians(-25))).isCloseTo(0.6, within(ROUNDING));
        assertThat(PlainFlap.efficiency(Math.toRadians(40))).isBetween(0.3, 0.6);
    }

    /** H. Multhopp, NACA TM-1036, 1942: a prism 0.1 × 0.1 × 0.9 m under 0.25 m² of mean chord 0.2083 m, before a wing that lifts nothing. */
    @Test
    void aPrismsPitchingMoment() {
        BodyShape body = new BodyShape(0.9, 0.1, 0.1, 0.9, 0.005, 0);
        WingFlow free = new WingFlow(2, 2.2, 2.05, 1.2, 0);
        assertThat(BodyMoment.pitchSlope(body, free, 0.25, 0.2083)).isCloseTo(0.2715, within(FOUR_DECIMALS));
        assertThat(BodyMoment.yawSlope(body, 0.25, 0.2083)).isCloseTo(-0.2715, within(FOUR_DECIMALS));
    }

    /** h = 1/4 + (a_t / a) (1 - dε/dα) V: wing of aspect ratio 6, tail of 4, tail volume 0.5, dε/dα = 2a / (π A). */
    @Test
    void theTextbookNeutralPoint() {
        double a = Helmbold.liftSlope(6, 1);
        double downwash = 2 * a / (Math.PI * 6);
        double closed = 0.25 + Helmbold.liftSlope(4, 1) / a * (1 - downwash) * 0.5;
        assertThat(downwash).isCloseTo(0.4805, within(FOUR_DECIMALS));
        assertThat(closed).isCloseTo(0.4727, within(FOUR_DECIMALS));
    }

    /** The same aeroplane in the system: no more than the sheet's stronger downwash and the tail's smaller slope apart. */
    @Test
    void theSystemsNeutralPointIsNearTheTextbooks() {
        Surface wing = TestWings.surface(Surface.Role.WING, 6, 1, 0, 0.24, 0, 0, 0);
        double arm = 0.6;
        double area = 0.5 * 0.24 * 0.2 / arm;
        Surface tail = TestWings.surface(Surface.Role.TAIL, 4, 1, 0, area, arm, 0, 0);
        LiftingSystem system = TestWings.solved(wing, tail);
        double h = 0.25 + system.neutralPoint() / system.referenceChord();
        assertThat(h).isBetween(0.44, 0.48);
    }

    @Test
    void aFinsStiffnessIsSlopeTimesVolume() {
        Panel upright = new Panel(0.6, 0, 0, 0.2, 0, 0.65, 0, 0.2, 0.15, 0);
        Surface fin =
                new Surface(Surface.Role.FIN, TestWings.wing(6, 1, 0).section(), List.of(upright), false, List.of());
        double slope = Helmbold.liftSlope(1.55 * 0.2 * 0.2 / 0.035, 1);
        double x = fin.quarterChordX();
        assertThat(x).isBetween(0.65, 0.6875).isLessThan(0.5 * (0.65 + 0.6875));
        assertThat(FinYaw.stiffness(fin, 1, FinYaw.ON_BODY, 0.2, 0.3, 1.2))
                .isCloseTo(slope * 0.035 / 0.3 * (x - 0.2) / 1.2, within(ROUNDING));
    }

    /** P. E. Purser and J. P. Campbell, NACA R-823, 1945 (from memory): C_Lα = a_N cos² ν. */
    @Test
    void aVTailLiftsByTheSquareOfItsCosine() {
        Surface level = TestWings.surface(Surface.Role.TAIL, 4, 0.8, 0, 0.05, 0.6, 0, 0);
        double ratio = slopeOf(vee(level, 35)) / slopeOf(level);
        double cosine = Math.cos(Math.toRadians(35));
        assertThat(ratio).isBetween(cosine * cosine, V_TAIL_LIFT * cosine * cosine);
        double fine = TestWings.solved(new Resolution(4, 32, 4), wingOf(vee(level, 35)))
                .surfaceLiftSlope(0);
        assertThat(slopeOf(vee(level, 35)) / fine).isCloseTo(1, within(SLOPE));
    }

    private static double slopeOf(Surface tail) {
        return TestWings.solved(wingOf(tail)).surfaceLiftSlope(0);
    }

    private static Surface vee(Surface level, double degrees) {
        Panel p = level.panels().get(0);
        double y = p.breadth() * Math.cos(Math.toRadians(degrees));
        double z = p.breadth() * Math.sin(Math.toRadians(degrees));
        Panel panel = new Panel(p.rootX(), 0, 0, p.rootChord(), 0, p.tipX(), y, z, p.tipChord(), 0);
        return TestWings.of(Surface.Role.TAIL, List.of(panel));
    }

    private static Surface wingOf(Surface tail) {
        return TestWings.of(Surface.Role.WING, tail.panels());
    }
}
