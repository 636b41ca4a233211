package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Nose;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Examples;
import org.junit.jupiter.api.Test;

class StructureTest {
    private static final FlightLoads LOADS = new FlightLoads(0.8, 0.18, 0.035, 1.225, 7, 12, 20, 4, 4.5);
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
        Airframe boom = Airframe.of(withBody(new Body.PodAndBoom(0.96, 0.075, 0.08, Nose.FIXED, 0.5, Examples.TUBE)));
        TailBoom.Beam beam = TailBoom.Beam.of(boom, BOARD, 12.5e6);
        // 17.455 N m² and 34.36 N m at 1000 MPa (check M-60).
        assertThat(beam.bending()).isCloseTo(17.455, within(0.5e-3));
        assertThat(beam.moment()).isCloseTo(0.6 * 34.36, within(0.005));
        TailBoom soft = TailBoom.of(boom, LOADS, 4, BOARD, 12.5e6);
        TailBoom stiff = TailBoom.of(airframe, LOADS, 4, BOARD, 12.5e6);
        assertThat(soft.deflection()).isGreaterThan(stiff.deflection());
    }

    @Test
    void aTouchDownAtOneMetrePerSecondIsThreeToFiveG() {
        // Check S-15.
        assertThat(TailBoom.landingFactor()).isBetween(3.0, 5.0);
    }

    @Test
    void aHeavyTailIsSizedByTheLanding() {
        FlightLoads heavy = new FlightLoads(0.8, 0.18, 0.5, 1.225, 7, 12, 20, 4, 4.5);
        double flown = TailBoom.of(airframe, LOADS, 4, BOARD, 12.5e6).reserve();
        double landed = TailBoom.of(airframe, heavy, 4, BOARD, 12.5e6).reserve();
        assertThat(landed).isLessThan(flown);
    }

    @Test
    void servosAreJudgedByTheirHardestSurface() {
        double slow = Structure.margins(airframe, SpanLoad.elliptic(0.6, 0.5), LOADS, Factors.NOMINAL)
                .servoTorque();
        FlightLoads fast = new FlightLoads(0.8, 0.18, 0.035, 1.225, 7, 12, 40, 4, 4.5);
        double quick = Structure.margins(airframe, SpanLoad.elliptic(0.6, 0.5), fast, Factors.NOMINAL)
                .servoTorque();
        assertThat(quick).isCloseTo(slow / 4, withinPercentage(1e-9));
        // Elevator of both halves, 0.35 of chords 0.14 to 0.112 m over 0.45 m, 20°, 20 m/s.
        double squares = 0.45 * (0.14 * 0.14 + 0.14 * 0.112 + 0.112 * 0.112) / 3 * 0.35 * 0.35;
        double moment = 245 * squares * -HingeMoment.of(0.35).deflection() * 20 * Math.PI / 180;
        assertThat(slow).isCloseTo(0.17 / moment, withinPercentage(0.1));
    }

    private static Design withBody(Body body) {
        Design d = Examples.trainer();
        return new Design(
                d.name(),
                d.wing(),
                d.tail(),
                body,
                d.power(),
                d.undercarriage(),
                d.controls(),
                d.board(),
                d.covering(),
                d.radio(),
                d.loads());
    }
}
