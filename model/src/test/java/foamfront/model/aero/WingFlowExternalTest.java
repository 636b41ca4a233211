package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The closed flow along a body beside a fine lattice of 64 strips and 16 rows. */
class WingFlowExternalTest {
    /** Digits of the handbook's table. */
    private static final double TABLE = 1e-8;

    /** Of the angle: the closed flow's plane part is that of the middle section, the lattice's line is bent by its chords. */
    private static final double CLOSE = 0.025;

    /** A rectangular wing carries less in the middle and sheds more at the tips than an ellipse. */
    private static final double RECTANGLE = 0.055;

    private static final Surface WING = TestWings.elliptic(1.2, 0.24, 64);
    private static final LiftingSystem FINE = TestWings.solved(new Resolution(16, 64, 4), WING);

    /** M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964, table 17.1 (from memory). */
    @ParameterizedTest(name = "E({0})")
    @CsvSource({"0, 1.570796327", "0.5, 1.350643881", "0.9, 1.104774733"})
    void theEllipticIntegralIsTheTables(double parameter, double published) {
        assertThat(WingFlow.ellipticIntegral(parameter)).isCloseTo(published, within(TABLE));
    }

    @ParameterizedTest(name = "{0} chords from the edge")
    @ValueSource(doubles = {0.05, 0.1, 0.2, 0.5, 1, 2})
    void turnsTheAirAsAFineLatticeDoes(double distance) {
        WingFlow flow = FINE.wingFlow(List.of(WING));
        Panel root = WING.panels().get(0);
        double ahead = root.rootX() - distance * root.rootChord();
        double behind = root.rootX() + (1 + distance) * root.rootChord();
        assertThat(flow.turning(ahead)).isCloseTo(lattice(ahead), within(CLOSE));
        assertThat(flow.turning(behind)).isCloseTo(lattice(behind), within(CLOSE));
    }

    private static double lattice(double x) {
        return 1 + FINE.upwash(1, 0, 0, x, FINE.stripY(0), 0);
    }

    /** Two chords ahead of a rectangular wing's edge, the lattice's flow summed at its middle in 400 steps. */
    @Test
    void theSumAheadIsThatOfALatticeAndItsFivePointsSuffice() {
        Surface wing = TestWings.wing(6, 1, 0);
        LiftingSystem fine = TestWings.solved(new Resolution(16, 40, 4), wing);
        WingFlow flow = fine.wingFlow(List.of(wing));
        Panel root = wing.panels().get(0);
        double length = 2 * root.rootChord();
        double lattice = 0;
        double closed = 0;
        int steps = 400;
        for (int k = 0; k < steps; k++) {
            double t = (k + 0.5) / steps;
            double x = root.rootX() - t * t * length;
            lattice += 2 * t * length / steps * (1 + fine.upwash(1, 0, 0, x, fine.stripY(0), 0));
            closed += 2 * t * length / steps * flow.turning(x);
        }
        double ours = flow.along(root.rootX() - length, root.rootX());
        assertThat(ours / lattice).isCloseTo(1, within(RECTANGLE));
        assertThat(ours / closed).isCloseTo(1, within(1e-4));
    }

    @Test
    void nothingTurnsBesideTheChordAndAllFarAhead() {
        WingFlow flow = FINE.wingFlow(List.of(WING));
        Panel root = WING.panels().get(0);
        assertThat(flow.along(root.rootX(), root.rootX() + root.rootChord())).isZero();
        assertThat(flow.turning(-1000)).isCloseTo(1, within(1e-4));
    }

    /** A twin's motors ahead of the wing make it less stable in pitch and in yaw. */
    @Test
    void motorsOnTheWingCount() {
        Airframe twin = Airframe.of(Arrangements.of("twin"));
        LiftingSystem system = new LiftingSystem(Resolution.DEFAULT);
        system.solve(
                twin.surfaces(),
                twin.surfaces().stream().map(surface -> SectionLift.FLAT_PLATE).toList());
        double body = BodyMoment.prism(
                twin.body().width(),
                system.wingFlow(twin.surfaces()).along(0, twin.body().full()));
        double whole = BodyMoment.pitchSlope(twin, system) * system.referenceArea() * system.referenceChord();
        assertThat(whole).isGreaterThan(1.01 * body);
        assertThat(BodyMoment.yawSlope(twin)).isLessThan(BodyMoment.yawSlope(twin.body(), twin.area(), twin.span()));
    }
}
