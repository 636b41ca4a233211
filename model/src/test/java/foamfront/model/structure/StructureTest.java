package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.Body;
import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import foamfront.model.design.Fin;
import foamfront.model.design.FinJoint;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Nose;
import foamfront.model.design.Tail;
import foamfront.model.design.Wing;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Examples;
import org.junit.jupiter.api.Test;

class StructureTest {
    private static final FlightLoads LOADS = new FlightLoads(0.8, 0.18, 0.035, 1.225, 7, 12, 20, 4, 4.5, 0);
    private static final Sandwich BOARD = Sandwich.of(Examples.BOARD, Factors.NOMINAL);

    private final Airframe airframe = Airframe.of(Examples.trainer());

    @Test
    void aFoldedTrainerHoldsAndAPlateDoesNot() {
        StructureMargins fold = Structure.margins(airframe, SpanLoad.elliptic(0.6, 0.5), LOADS, Factors.NOMINAL);
        assertThat(fold.wingBending()).isGreaterThan(1.5);
        assertThat(fold.tipDeflection()).isLessThan(0.15);
        assertThat(fold.divergenceSpeed()).isGreaterThan(1.2 * 20);
        assertThat(fold.boomDeflection()).isLessThan(0.05);
        assertThat(fold.servoTorque()).isGreaterThan(2);
        assertThat(fold.joint()).isEqualTo(StructureMargins.UNLOADED);
    }

    @Test
    void aSquareTubeBendsAsThinWalls() {
        TailBoom.Beam beam = TailBoom.Beam.of(airframe, BOARD, 12.5e6);
        double b = 0.0702;
        double h = 0.0752;
        double caps = 2 * b * 0.0003 * 0.25 * h * h;
        double webs = 2 * 0.0003 * h * h * h / 12;
        assertThat(beam.bending()).isCloseTo(3e9 * (caps + webs), withinPercentage(1e-9));
        assertThat(beam.torsion())
                .isCloseTo(1e9 * ThinTube.rectangle(b, h, 0.0003).torsionConstant(), withinPercentage(1e-9));
    }

    @Test
    void aStockBoomIsItsTube() {
        Airframe boom = Airframe.of(Examples.with(
                Examples.trainer(), new Body.PodAndBoom(0.96, 0.075, 0.08, Nose.FIXED, 0.5, Examples.TUBE)));
        TailBoom.Beam beam = TailBoom.Beam.of(boom, BOARD, 12.5e6);
        // 17.455 N m² and 34.36 N m at 1000 MPa (derived).
        assertThat(beam.bending()).isCloseTo(17.455, within(0.5e-3));
        assertThat(beam.moment()).isCloseTo(0.6 * 34.36, within(0.005));
        TailBoom soft = TailBoom.of(boom, LOADS, 4, BOARD, 12.5e6);
        TailBoom stiff = TailBoom.of(airframe, LOADS, 4, BOARD, 12.5e6);
        assertThat(soft.deflection()).isGreaterThan(stiff.deflection());
    }

    @Test
    void aWingThatIsMostOfTheMassIsSizedByTheLanding() {
        FlightLoads light = new FlightLoads(0.8, 0.1, 0.035, 1.225, 7, 12, 20, 4, 4.5, 0);
        FlightLoads heavy = new FlightLoads(0.8, 0.7, 0.035, 1.225, 7, 12, 20, 4, 4.5, 0);
        SpanLoad load = SpanLoad.elliptic(0.6, 0.5);
        double flown = Structure.margins(airframe, load, light, Factors.NOMINAL).sparShear();
        double landed =
                Structure.margins(airframe, load, heavy, Factors.NOMINAL).sparShear();
        // Flight bends with 0.7 kg at 4 g, landing with 0.7 kg at 4.4.
        assertThat(landed).isCloseTo(flown * 4 / LoadFactor.landing(), withinPercentage(1e-9));
    }

    @Test
    void aHeavyTailIsSizedByTheLanding() {
        FlightLoads heavy = new FlightLoads(0.8, 0.18, 0.5, 1.225, 7, 12, 20, 4, 4.5, 0);
        double flown = TailBoom.of(airframe, LOADS, 4, BOARD, 12.5e6).reserve();
        double landed = TailBoom.of(airframe, heavy, 4, BOARD, 12.5e6).reserve();
        assertThat(landed).isLessThan(flown);
    }

    @Test
    void servosAreJudgedByTheirHardestSurface() {
        double slow = Structure.margins(airframe, SpanLoad.elliptic(0.6, 0.5), LOADS, Factors.NOMINAL)
                .servoTorque();
        FlightLoads fast = new FlightLoads(0.8, 0.18, 0.035, 1.225, 7, 12, 40, 4, 4.5, 0);
        double quick = Structure.margins(airframe, SpanLoad.elliptic(0.6, 0.5), fast, Factors.NOMINAL)
                .servoTorque();
        assertThat(quick).isCloseTo(slow / 4, withinPercentage(1e-9));
        // Elevator of both halves, 0.35 of chords 0.14 to 0.112 m over 0.45 m, 20°, 20 m/s.
        double squares = 0.45 * (0.14 * 0.14 + 0.14 * 0.112 + 0.112 * 0.112) / 3 * 0.35 * 0.35;
        double moment = 245 * squares * -HingeMoment.of(0.35).deflection() * 20 * Math.PI / 180;
        assertThat(slow).isCloseTo(0.17 / moment, withinPercentage(0.1));
    }

    @Test
    void aProfileBoardStandsOnEdge() {
        Airframe profile = Airframe.of(Examples.with(
                Examples.trainer(), new Body.ProfileBoard(0.96, Examples.BOARD.thickness(), 0.12, Nose.FIXED)));
        TailBoom.Beam beam = TailBoom.Beam.of(profile, BOARD, 12.5e6);
        double second = 0.0003 * 0.12 * 0.12 * 0.12 / 12;
        assertThat(beam.bending()).isCloseTo(3e9 * second, withinPercentage(1e-9));
        assertThat(beam.moment()).isCloseTo(12.5e6 * second / 0.06, withinPercentage(1e-9));
        // One board twists: its two faces as a flat tube, 2 t_f h d².
        double flat = 2 * 0.00015 * 0.12 * BOARD.depth() * BOARD.depth();
        assertThat(beam.torsion()).isCloseTo(1e9 * flat, withinPercentage(1e-9));
    }

    @Test
    void aTaillessAeroplaneHasNoBoom() {
        Wing.Monoplane m = (Wing.Monoplane) Examples.trainer().wing();
        Airframe plank = Airframe.of(Examples.with(
                Examples.trainer(),
                new Wing.FlyingWing(m.planform(), m.build(), m.x(), m.z()),
                new Tail.None(new Fin(2, 0.12, 0.12, 0.6, FinJoint.FIXED))));
        assertThat(TailBoom.of(plank, LOADS, 4, BOARD, 12.5e6)).isEqualTo(TailBoom.NONE);
    }

    @Test
    void eachWingOfABiplaneRelievesItselfWithItsOwnMass() {
        Wing.Monoplane m = (Wing.Monoplane) Examples.trainer().wing();
        Airframe biplane = Airframe.of(Examples.with(
                Examples.trainer(),
                new Wing.Biplane(m.planform(), m.build(), m.x(), m.z(), 0.2, 0.05),
                Examples.trainer().tail()));
        // A half wing with a quarter of the lift carries half of what the lone half wing does.
        double one = Structure.margins(airframe, SpanLoad.elliptic(0.6, 0.5), LOADS, Factors.NOMINAL)
                .wingBending();
        double two = Structure.margins(biplane, SpanLoad.elliptic(0.6, 0.25), LOADS, Factors.NOMINAL)
                .wingBending();
        assertThat(two).isCloseTo(2 * one, withinPercentage(1e-9));
    }

    @Test
    void aServoOfEachSideDrivesBothWingsOfABiplane() {
        Controls wide = new Controls(true, true, FlapKind.NONE, 0.9, 0.4, 0.1, 0.1);
        Wing.Monoplane m = (Wing.Monoplane) Examples.trainer().wing();
        Design lone = Examples.with(Examples.trainer(), wide);
        Design pair =
                Examples.with(lone, new Wing.Biplane(m.planform(), m.build(), m.x(), m.z(), 0.2, 0.05), lone.tail());
        assertThat(ServoLoad.ratio(Airframe.of(pair), LOADS))
                .isCloseTo(0.5 * ServoLoad.ratio(Airframe.of(lone), LOADS), withinPercentage(1e-9));
    }

    @Test
    void flapsAreLetDownSlowly() {
        Controls flapped = new Controls(true, false, FlapKind.FLAPS, 0.3, 0.3, 0.1, 0.1);
        Airframe flaps = Airframe.of(Examples.with(Examples.trainer(), flapped));
        FlightLoads slow = new FlightLoads(0.8, 0.18, 0.035, 1.225, 3, 12, 20, 4, 4.5, 0);
        // Stalling at 3 m/s the flaps never see more than 5.4 m/s, and the ailerons set the pace.
        assertThat(ServoLoad.ratio(flaps, slow)).isGreaterThan(ServoLoad.ratio(flaps, LOADS));
    }
}
