package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import foamfront.model.Records;
import foamfront.model.airframe.Airframe;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Body;
import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import foamfront.model.design.Fin;
import foamfront.model.design.FinJoint;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Nose;
import foamfront.model.design.Power;
import foamfront.model.design.Tail;
import foamfront.model.design.Wing;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Examples;
import foamfront.model.parts.Provenance;
import foamfront.model.parts.Spar;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class StructureTest {
    private static final FlightLoads LOADS = new FlightLoads(0.8, 0.18, 0.035, 1.225, 7, 12, 20, 4, 4.5, 0, 0);
    private static final Sandwich BOARD = Sandwich.of(Examples.BOARD, Factors.NOMINAL);

    private final Airframe airframe = Airframe.of(Examples.trainer());

    @Test
    void aFoldedTrainerHoldsAndAPlateDoesNot() {
        StructureMargins fold = Structure.margins(
                airframe, List.of(SpanLoad.elliptic(0.6, 0.5)), LOADS, Examples.GLUE, Factors.NOMINAL);
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
        FlightLoads light = new FlightLoads(0.8, 0.1, 0.035, 1.225, 7, 12, 20, 4, 4.5, 0, 0);
        FlightLoads heavy = new FlightLoads(0.8, 0.7, 0.035, 1.225, 7, 12, 20, 4, 4.5, 0, 0);
        SpanLoad load = SpanLoad.elliptic(0.6, 0.5);
        double flown = Structure.margins(airframe, List.of(load), light, Examples.GLUE, Factors.NOMINAL)
                .sparShear();
        double landed = Structure.margins(airframe, List.of(load), heavy, Examples.GLUE, Factors.NOMINAL)
                .sparShear();
        // Flight bends with 0.7 kg at 4 g, landing with 0.7 kg at 4.4.
        assertThat(landed).isCloseTo(flown * 4 / LoadFactor.landing(), withinPercentage(1e-9));
    }

    @Test
    void aHeavyTailIsSizedByTheLanding() {
        FlightLoads heavy = new FlightLoads(0.8, 0.18, 0.5, 1.225, 7, 12, 20, 4, 4.5, 0, 0);
        double flown = TailBoom.of(airframe, LOADS, 4, BOARD, 12.5e6).reserve();
        double landed = TailBoom.of(airframe, heavy, 4, BOARD, 12.5e6).reserve();
        assertThat(landed).isLessThan(flown);
    }

    @Test
    void servosAreJudgedByTheirHardestSurface() {
        double slow = Structure.margins(
                        airframe, List.of(SpanLoad.elliptic(0.6, 0.5)), LOADS, Examples.GLUE, Factors.NOMINAL)
                .servoTorque();
        FlightLoads fast = new FlightLoads(0.8, 0.18, 0.035, 1.225, 7, 12, 40, 4, 4.5, 0, 0);
        double quick = Structure.margins(
                        airframe, List.of(SpanLoad.elliptic(0.6, 0.5)), fast, Examples.GLUE, Factors.NOMINAL)
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
        double one = Structure.margins(
                        airframe, List.of(SpanLoad.elliptic(0.6, 0.5)), LOADS, Examples.GLUE, Factors.NOMINAL)
                .wingBending();
        double two = Structure.margins(
                        biplane,
                        Collections.nCopies(2, SpanLoad.elliptic(0.6, 0.25)),
                        LOADS,
                        Examples.GLUE,
                        Factors.NOMINAL)
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
        Controls flapped = new Controls(true, false, FlapKind.FLAPS, 0.3, 0.3, 0.1, 0.1, 0.6, 0.3);
        Airframe flaps = Airframe.of(Examples.with(Examples.trainer(), flapped));
        FlightLoads slow = new FlightLoads(0.8, 0.18, 0.035, 1.225, 3, 12, 20, 4, 4.5, 0, 0);
        // Stalling at 3 m/s the flaps never see more than 5.4 m/s, and the ailerons set the pace.
        assertThat(ServoLoad.ratio(flaps, slow)).isGreaterThan(ServoLoad.ratio(flaps, LOADS));
    }

    private static Airframe pair() {
        Wing.Monoplane m = (Wing.Monoplane) Examples.trainer().wing();
        return Airframe.of(Examples.with(
                Examples.trainer(),
                new Wing.Biplane(m.planform(), m.build(), m.x(), m.z(), 0.2, 0.05),
                Examples.trainer().tail()));
    }

    private static StructureMargins pair(double first, double second) {
        List<SpanLoad> loads = List.of(SpanLoad.elliptic(0.6, first), SpanLoad.elliptic(0.6, second));
        return Structure.margins(pair(), loads, LOADS, Examples.GLUE, Factors.NOMINAL);
    }

    /** The harder loaded wing counts, whichever it is. */
    @Test
    void theSecondWingIsJudgedToo() {
        StructureMargins upper = pair(0.3, 0.2);
        StructureMargins lower = pair(0.2, 0.3);
        StructureMargins even = pair(0.25, 0.25);
        assertThat(lower.wingBending()).isEqualTo(upper.wingBending()).isLessThan(even.wingBending());
        assertThat(lower.sparShear()).isEqualTo(upper.sparShear()).isLessThan(even.sparShear());
        assertThat(lower.tipDeflection()).isEqualTo(upper.tipDeflection()).isGreaterThan(even.tipDeflection());
        Airframe plugged = Airframe.of(Records.with(
                Records.with(pair().design(), "wing.build.spar", new WingSpar.Stock(Examples.TUBE)),
                "wing.build.joint",
                WingJoint.PLUG_IN));
        List<SpanLoad> loads = List.of(SpanLoad.elliptic(0.6, 0.2), SpanLoad.elliptic(0.6, 0.3));
        List<SpanLoad> turned = List.of(loads.get(1), loads.get(0));
        double joint = Structure.margins(plugged, loads, LOADS, Examples.GLUE, Factors.NOMINAL)
                .joint();
        // The upper wing's dihedral is read from larger heights: it rounds otherwise.
        assertThat(joint)
                .isCloseTo(
                        Structure.margins(plugged, turned, LOADS, Examples.GLUE, Factors.NOMINAL)
                                .joint(),
                        within(1e-12))
                .isLessThan(StructureMargins.UNLOADED);
    }

    private static StructureMargins plugged(double wingMass, double push) {
        Airframe plugged = Airframe.of(Examples.design(
                1.2, new WingSection.FoldedFlatBottom(0.12), new WingSpar.Stock(Examples.TUBE), WingJoint.PLUG_IN));
        FlightLoads loads = new FlightLoads(0.8, wingMass, 0.035, 1.225, 7, 12, 20, 4, 4.5, push, 0);
        return Structure.margins(plugged, List.of(SpanLoad.elliptic(0.6, 0.5)), loads, Examples.GLUE, Factors.NOMINAL);
    }

    /** 0.6 kg of wing pushed at 90 m/s²: 27 N on each half, against 0.2 kg at 4 g in flight and 0.3 kg at 4.4 g in landing. */
    @Test
    void aThrowBendsTheTubeOfAHeavyWing() {
        double still = plugged(0.6, 0).joint();
        double thrown = plugged(0.6, 90).joint();
        assertThat(thrown).isCloseTo(still * LoadFactor.landing() * Atmosphere.GRAVITY / 90, withinPercentage(1e-9));
        assertThat(plugged(0.1, 90).joint())
                .as("light wings fly harder")
                .isEqualTo(plugged(0.1, 0).joint());
        assertThat(plugged(0.6, 90).wingBending()).isEqualTo(plugged(0.6, 0).wingBending());
    }

    /** Two flat skins in their own plane, 2 t_f c² / 6 each, under the push of the sample's half wing at its middle. */
    @Test
    void aThrowBendsNoWingInItsPlane() {
        double modulus = 2 * 2 * 0.15e-3 * 0.22 * 0.22 / 6;
        double moment = 0.5 * 0.18 * 90 * 0.3;
        assertThat(12.5e6 * modulus / moment).isGreaterThan(20);
    }

    /** A rod of 2 mm takes no shear off the web; a wooden strip does, and neither fails first. */
    @Test
    void aThinRodHasNoMoreShearInHandThanAWoodenStrip() {
        Spar rod = new Spar("rod", Spar.Shape.ROUND, 2e-3, 2e-3, 0, 127e9, 600e6, 1500, 1, 1, Provenance.INVENTED);
        Spar wood = new Spar("wood", Spar.Shape.STRIP, 5e-3, 10e-3, 0, 10.1e9, 30e6, 370, 1, 1, Provenance.INVENTED);
        double thin = shear(new WingSpar.Stock(rod));
        double board = shear(new WingSpar.BoardStrip());
        assertThat(thin).isBetween(board, 1.02 * board);
        assertThat(shear(new WingSpar.Stock(wood))).isGreaterThan(thin);
    }

    private static double shear(WingSpar spar) {
        Airframe wing =
                Airframe.of(Examples.design(1.2, new WingSection.FoldedFlatBottom(0.12), spar, WingJoint.ONE_PIECE));
        return Structure.margins(wing, List.of(SpanLoad.elliptic(0.6, 0.5)), LOADS, Examples.GLUE, Factors.NOMINAL)
                .sparShear();
    }

    /** 90 g of motor, propeller, controller and mount at 4.4 g on each side of a twin's wing in landing. */
    @Test
    void aTwinsEnginesBendTheLandingWing() {
        Design lone = Examples.design(
                1.2, new WingSection.FoldedFlatBottom(0.12), new WingSpar.BoardStrip(), WingJoint.ONE_PIECE);
        Airframe twin = Airframe.of(Records.with(lone, "power", new Power.TwinTractor(Examples.PLANT, 0.3, false)));
        FlightLoads heavy = new FlightLoads(0.8, 0.7, 0.035, 1.225, 7, 12, 20, 4, 4.5, 0, 0);
        List<SpanLoad> load = List.of(SpanLoad.elliptic(0.6, 0.5));
        double without = Structure.margins(Airframe.of(lone), load, heavy, Examples.GLUE, Factors.NOMINAL)
                .sparShear();
        double with = Structure.margins(twin, load, heavy, Examples.GLUE, Factors.NOMINAL)
                .sparShear();
        double engine = 0.053 + 0.013 + 0.022 + 0.020;
        assertThat(with).isCloseTo(without * 0.35 / (0.35 + engine), withinPercentage(1e-9));
    }
}
