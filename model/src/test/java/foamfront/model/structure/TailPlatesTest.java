package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.aero.Helmbold;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Design;
import foamfront.model.design.Fin;
import foamfront.model.design.FinJoint;
import foamfront.model.design.Tail;
import foamfront.model.design.WingSection;
import foamfront.model.factors.Factors;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class TailPlatesTest {
    private static final double ROUNDING = 1e-12;
    private static final Sandwich BOARD = Sandwich.of(Samples.board(), Factors.NOMINAL);
    private static final double STRENGTH = 12.5e6;

    private static FlightLoads loads(double cruise, double top, double tailLift) {
        return new FlightLoads(0.8, 0.18, 0.035, 1.225, 7, cruise, top, 4, 4.5, 0, tailLift);
    }

    private static double reserve(Design design, FlightLoads loads) {
        return TailPlates.reserve(Airframe.of(design), loads, 4, BOARD, STRENGTH);
    }

    @Test
    void aTaperedPlateBendsAsItsIntegral() {
        Surface plate = new Surface(
                Surface.Role.TAIL,
                new WingSection.FlatPlate(),
                List.of(
                        new Panel(0, 0, 0, 0.14, 0, 0, 0.15, 0, 0.10, 0),
                        new Panel(0, 0.15, 0, 0.10, 0, 0, 0.2, 0, 0.06, 0)),
                true,
                List.of());
        for (double from : new double[] {0, 0.035, 0.16}) {
            int n = 20_000;
            double sum = 0;
            for (int i = 0; i < n; i++) {
                double y = from + (i + 0.5) / n * (0.2 - from);
                double c = y < 0.15 ? 0.14 - 0.04 * y / 0.15 : 0.10 - 0.04 * (y - 0.15) / 0.05;
                sum += c * (y - from) * (0.2 - from) / n;
            }
            assertThat(TailPlates.firstMoment(plate, from)).isCloseTo(sum, withinPercentage(1e-4));
        }
    }

    /**
     * A rectangular stabiliser held at the body's side, its load at the plate's greatest lift: p s² / 2 over the
     * papers. However fast the top speed, full elevator is pulled at V_s √n = 14 m/s at most.
     */
    @Test
    void aPlateAtItsGreatestLift() {
        Design square =
                Records.with(Records.with(Samples.trainer(), "tail.plane.taper", 1.0), "controls.elevatorChord", 0.6);
        // So much elevator stalls the plate: 0.7; at 14 m/s 120 Pa, over 0.21 m less the body's 0.035.
        double arm = 0.21 - 0.035;
        double moment = 0.7 * 120.05 * arm * arm / 2;
        assertThat(reserve(square, loads(11, 40, 0)))
                .isCloseTo(STRENGTH * 0.14e-3 * BOARD.depth() / moment, withinPercentage(1e-9));
    }

    @Test
    void trimAtTheLimitLoadCountsWhereItIsGreater() {
        Airframe airframe = Airframe.of(Samples.trainer());
        Surface tail = airframe.wing();
        double slow = TailPlates.tailPressure(airframe, tail, loads(8, 9, 0.3), 4);
        assertThat(slow).isCloseTo(4 * Atmosphere.GRAVITY * 0.8 * 0.3 / tail.area(), within(ROUNDING * slow));
        assertThat(TailPlates.tailPressure(airframe, tail, loads(8, 9, -0.3), 4))
                .isEqualTo(slow);
    }

    /** Common practice: a plate of 4.5 mm board 400 mm across does at trainer speeds. */
    @Test
    void aTrainersTailHolds() {
        Design common = Records.with(Samples.trainer(), "tail.plane.span", 0.4);
        assertThat(reserve(common, loads(12, 20, -0.05))).isGreaterThan(1.5);
        assertThat(reserve(common, loads(12, 24, -0.05))).isGreaterThan(1.5);
    }

    @Test
    void aTailLikeAWingDoesNot() {
        Design wide = Records.with(Records.with(Samples.trainer(), "tail.plane.span", 0.9), "tail.plane.chord", 0.10);
        assertThat(reserve(wide, loads(12, 20, 0))).as("the standing bound").isLessThan(1.5);
    }

    @Test
    void aFinOfTwiceTheHeightBearsLess() {
        Design tall = Records.with(Samples.trainer(), "tail.fin.height", 0.5);
        assertThat(reserve(tall, loads(20, 20, 0))).isLessThan(0.5 * reserve(Samples.trainer(), loads(20, 20, 0)));
    }

    @Test
    void aStabiliserOnTheFinLoadsIt() {
        Tail.Conventional low = (Tail.Conventional) Samples.trainer().tail();
        Design tee = Arrangements.of("T-tail");
        FlightLoads loads = loads(12, 20, 0);
        assertThat(reserve(tee, loads))
                .isLessThan(reserve(Samples.trainer(), loads))
                .isGreaterThan(1.5);
        // A heavier stabiliser and a longer lever both break the fin first.
        FlightLoads heavy = new FlightLoads(0.8, 0.18, 0.2, 1.225, 7, 12, 20, 4, 4.5, 0, 0);
        assertThat(reserve(tee, heavy)).isLessThan(reserve(tee, loads));
        Fin narrow = new Fin(1, 0.25, 0.07, 1, FinJoint.FIXED);
        assertThat(reserve(Records.with(tee, "tail", new Tail.TTail(low.plane(), narrow)), loads))
                .isLessThan(1.5);
    }

    @Test
    void aVTailIsOnePlateEachSideAndATaillessModelHasItsFins() {
        Design canted = Records.with(
                Samples.trainer(),
                "tail",
                new Tail.VTail(
                        Records.with(((Tail.Conventional) Samples.trainer().tail()).plane(), "dihedral", 0.6)));
        assertThat(reserve(canted, loads(12, 20, 0)))
                .as("a V-tail is one plate each side")
                .isBetween(1.0, 10.0);
        Design plank = Arrangements.of("flying wing");
        assertThat(reserve(plank, loads(12, 20, 0))).as("its fins alone").isBetween(1.5, 99.0);
    }

    @Test
    void noMoreElevatorThanTheWingBearsIsPulledAtTopSpeed() {
        assertThat(reserve(Samples.trainer(), loads(12, 40, 0)))
                .isEqualTo(reserve(Samples.trainer(), loads(12, 14, 0)));
        assertThat(reserve(Samples.trainer(), loads(9, 10, 0)))
                .isGreaterThan(reserve(Samples.trainer(), loads(9, 14, 0)));
    }

    /** ½ ρ V² a U / V until the plate stalls. */
    @Test
    void aGustStrikesTheTailInCruise() {
        Airframe airframe = Airframe.of(Samples.trainer());
        Surface wing = airframe.wing(); // a surface without an elevator
        double breadth = 0.6 / StrictMath.cos(3 * Math.PI / 180);
        double slope = Helmbold.liftSlope(4 * breadth * breadth / wing.area(), 1);
        assertThat(TailPlates.tailPressure(airframe, wing, loads(30, 30, 0), 4))
                .isCloseTo(0.5 * 1.225 * 30 * slope * 4, withinPercentage(1e-9));
        assertThat(TailPlates.tailPressure(airframe, wing, loads(12, 12, 0), 4))
                .isCloseTo(0.7 * 0.5 * 1.225 * 144, withinPercentage(1e-9));
    }

    /** Its panels take rudder too, in a cruise faster than the manoeuvring speed of 14 m/s more than the elevator. */
    @Test
    void aVTailIsAlsoAFin() {
        Design canted = Arrangements.of("V-tail");
        FlightLoads calm = new FlightLoads(0.8, 0.18, 0.035, 1.225, 7, 16, 20, 0, 4.5, 0, 0);
        FlightLoads slow = new FlightLoads(0.8, 0.18, 0.035, 1.225, 7, 8, 20, 0, 4.5, 0, 0);
        assertThat(reserve(canted, calm)).isLessThan(reserve(canted, slow));
        assertThat(pressure(Samples.trainer(), calm)).isEqualTo(pressure(Samples.trainer(), slow));
    }

    private static double pressure(Design design, FlightLoads loads) {
        Airframe airframe = Airframe.of(design);
        return TailPlates.tailPressure(airframe, Objects.requireNonNull(airframe.tail()), loads, 4);
    }
}
