package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Examples;
import foamfront.model.parts.Provenance;
import foamfront.model.parts.Spar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WingBeamTest {
    private static final double ROUNDING = 1e-12;
    private static final Sandwich BOARD = new Sandwich(0.15e-3, 4.5e-3, 3e9, 10e6, 3e6);
    private static final WingSpar STRIP = new WingSpar.BoardStrip();

    @Test
    void aFlatPlateIsASandwichStrip() {
        WingBeam beam = new WingBeam(BOARD, new WingSection.FlatPlate(), STRIP, Examples.BEAD);
        // D = 4.943 N m (derived, see SandwichTest).
        assertThat(beam.bendingStiffness(0.2)).isCloseTo(0.2 * 4.943, within(0.2 * 0.5e-3));
        assertThat(beam.top(0.2)).isCloseTo(2.4e-3, within(ROUNDING));
    }

    @Test
    void aPlateSteppedOverItsWholeChordIsTwoBoardsDeep() {
        // Two boards bonded: own stiffness twice, and each t/2 off the common middle. The step ends at 0.8 at most.
        WingBeam beam = new WingBeam(BOARD, new WingSection.SteppedPlate(0.8), STRIP, Examples.BEAD);
        double t = 4.8e-3;
        double steiner = 2 * 0.15e-3 * 3e9 * t * t * 0.8 / 1.8;
        assertThat(beam.bendingStiffness(0.2))
                .isCloseTo(0.2 * (1.8 * BOARD.bendingStiffness() + steiner), withinPercentage(1e-9));
    }

    @Test
    void aCurvedPlateIsAParabola() {
        WingBeam beam = new WingBeam(BOARD, new WingSection.CurvedPlate(0.06), STRIP, Examples.BEAD);
        int n = 20_000;
        double h = 0.06 * 0.2;
        double mean = 2.0 / 3 * h;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double x = (i + 0.5) / n;
            double z = 4 * h * x * (1 - x) - mean;
            sum += z * z * 0.2 / n;
        }
        double paper = 2 * 0.15e-3 * 3e9;
        assertThat(beam.bendingStiffness(0.2))
                .isCloseTo(paper * sum + 0.2 * BOARD.bendingStiffness(), withinPercentage(1e-5));
    }

    @Test
    void aWingBentDownIsCompressedBelow() {
        WingBeam flat = new WingBeam(BOARD, new WingSection.FoldedFlatBottom(0.12), STRIP, Examples.BEAD);
        WingBeam even = new WingBeam(BOARD, new WingSection.FoldedSymmetrical(0.12), STRIP, Examples.BEAD);
        WingBeam arc = new WingBeam(BOARD, new WingSection.CurvedPlate(0.06), STRIP, Examples.BEAD);
        WingBeam stepped = new WingBeam(BOARD, new WingSection.SteppedPlate(0.5), STRIP, Examples.BEAD);
        // The flat bottom draws the centroid down, an arc's lies at two thirds, the step's a third of the way up.
        assertThat(flat.faceStress(-1, 0.2)).isPositive().isLessThan(flat.faceStress(1, 0.2));
        assertThat(even.faceStress(-1, 0.2)).isCloseTo(even.faceStress(1, 0.2), withinPercentage(1e-9));
        assertThat(arc.bottom(0.2) - arc.top(0.2)).isCloseTo(0.06 * 0.2 / 3, within(ROUNDING));
        assertThat(flat.top(0.2) + flat.bottom(0.2)).isCloseTo(0.12 * 0.2, within(ROUNDING));
        assertThat(stepped.top(0.2) + stepped.bottom(0.2)).isCloseTo(2 * BOARD.thickness(), within(ROUNDING));
        assertThat(stepped.bottom(0.2)).isCloseTo(BOARD.thickness() * (0.5 / 1.5 + 0.5), within(ROUNDING));
    }

    /** Whatever spar stands beside it, the web ties the skins: the boards' part is the board strip wing's. */
    @Test
    void aStockSparStandsBesideTheWeb() {
        WingSection fold = new WingSection.FoldedFlatBottom(0.12);
        WingBeam strip = new WingBeam(BOARD, fold, STRIP, Examples.BEAD);
        for (double diameter : new double[] {2e-3, 8e-3, 14e-3}) {
            WingBeam beam = new WingBeam(BOARD, fold, rod(diameter), Examples.BEAD);
            assertThat(beam.skinStiffness(0.2)).isEqualTo(strip.skinStiffness(0.2));
            assertThat(beam.bendingStiffness(0.2)).isEqualTo(strip.bendingStiffness(0.2) + beam.sparStiffness());
            assertThat(beam.faceStress(3, 0.2)).isLessThan(strip.faceStress(3, 0.2));
        }
    }

    /**
     * V Q / (I t) over both papers of the web at the centroid of the whole section, against the V / (H 2 t_f) of
     * {@link WingReserve}.
     */
    @Test
    void theWebsShearIsOnTheSafeSideOfTheSectionsOwn() {
        double c = 0.2;
        double h = 0.12 * c - BOARD.thickness();
        double[] x = {0, 0.075, 0.30, 1};
        double[] rise = {0, 0.75, 1, 0};
        double mean = SectionOutline.flatBottom(0.12).top();
        double first = 0;
        int n = 100_000;
        for (int i = 0; i < 3; i++) {
            double length = Math.hypot(x[i + 1] - x[i], 0.12 * (rise[i + 1] - rise[i]));
            for (int k = 0; k < n; k++) {
                double z = rise[i] + (k + 0.5) / n * (rise[i + 1] - rise[i]) - (1 - mean);
                first += Math.max(0, z) * length / n;
            }
        }
        double lever = SectionOutline.flatBottom(0.12).secondMoment() / first * h;
        WingBeam beam = new WingBeam(BOARD, new WingSection.FoldedFlatBottom(0.12), STRIP, Examples.BEAD);
        // The lever I / Q of the skins is a tenth longer than the web is high.
        assertThat(beam.webHeight(c)).isBetween(0.85 * lever, lever);
    }

    private static WingSpar rod(double diameter) {
        return new WingSpar.Stock(new Spar(
                "rod", Spar.Shape.ROUND, diameter, diameter, 0, 127e9, 600e6, 1500, 1, 1, Provenance.INVENTED));
    }

    /** Caps of two papers, derived: 60 mm wide, 22 mm apart, 3.331 N m: 151.4 N, 8.41 MPa; webs taken off the box here. */
    @Test
    void capsOverASparStripAreMarginal() {
        double w = 0.060;
        double h = 0.022;
        SectionOutline box = SectionOutline.of(new double[] {0, w, w, 0}, new double[] {0, 0, h, h});
        double webs = 2 * h / 12;
        double second = 2 * 0.15e-3 * h * h * (box.secondMoment() - webs);
        double moment = 4 * 0.8 * Atmosphere.GRAVITY * 1.0 / (3 * Math.PI);
        assertThat(moment).isCloseTo(3.331, withinPercentage(0.05));
        assertThat(moment * box.top() * h / second / 1e6).isCloseTo(8.41, within(0.005));
        assertThat(box.area() * h).isCloseTo(w * h, within(ROUNDING));
        assertThat(box.areaCentre()).isCloseTo(0.5 * w, within(ROUNDING));
    }

    /** The fold unrolled, derived: top facets of 210.87 mm on a chord of 200 mm. */
    @Test
    void theFoldsPerimeterIsItsDevelopedWidth() {
        assertThat(SectionOutline.flatBottom(0.12).perimeter() * 200).isCloseTo(410.87, within(0.005));
    }

    /** τ = V / (H t), derived: 15.7 N on a strip 22 mm high: 2.4 MPa in its two papers. */
    @Test
    void aSparStripStandsOnItsPapers() {
        WingBeam beam = new WingBeam(BOARD, new WingSection.FoldedFlatBottom(0.12), STRIP, Examples.BEAD);
        double chord = (0.022 + 2 * 4.8e-3) / 0.12;
        assertThat(beam.webHeight(chord)).isCloseTo(0.022, within(ROUNDING));
        WingStress stress = new WingStress(0, 15.7, 0, 0, 0, 0, 0, 0);
        double reserve = WingReserve.shear(stress, beam, chord, Examples.BOARD, Factors.NOMINAL);
        assertThat(0.5 * Examples.BOARD.faceStrength() / reserve / 1e6).isCloseTo(2.4, within(0.05));
    }

    @Test
    void aSparSharesTheMomentByStiffness() {
        WingBeam beam =
                new WingBeam(BOARD, new WingSection.FlatPlate(), new WingSpar.Stock(Examples.TUBE), Examples.BEAD);
        double total = 0.2 * BOARD.bendingStiffness() + 127e9 * Examples.TUBE.secondMoment();
        assertThat(beam.bendingStiffness(0.2)).isCloseTo(total, withinPercentage(1e-9));
        double skin = beam.faceStress(3, 0.2) / (3e9 * beam.top(0.2));
        double spar = beam.sparStress(3, 0.2) / (127e9 * 0.004);
        assertThat(skin).as("one curvature").isCloseTo(spar, withinPercentage(1e-9));
        assertThat(skin).isCloseTo(3 / total, withinPercentage(1e-9));
    }

    @Test
    void aFoldIsFarStifferInTorsionThanItsPlate() {
        double fold =
                new WingBeam(BOARD, new WingSection.FoldedFlatBottom(0.12), STRIP, Examples.BEAD).torsionStiffness(0.2);
        double plate = new WingBeam(BOARD, new WingSection.FlatPlate(), STRIP, Examples.BEAD).torsionStiffness(0.2);
        assertThat(fold).isGreaterThan(10 * plate);
    }

    /** A linear couple, p = 6 M / (d l²), derived; tolerance half the last printed digit. */
    @ParameterizedTest(name = "{0} N m, {1} mm, {2} mm")
    @CsvSource({"5, 8, 150, 167", "5, 8, 100, 375", "3, 6, 120, 208"})
    void aTubePressesOnItsSleeve(double moment, double diameter, double engaged, double kilopascal) {
        assertThat(JointTube.of(moment, 0, diameter * 1e-3, engaged * 1e-3).pressure() / 1e3)
                .isCloseTo(kilopascal, within(0.5));
    }

    @Test
    void aPluggedInWingHangsOnItsTube() {
        JointTube joint = JointTube.of(5, 0, 0.008, 0.15);
        // Tube 8/6 at 600 MPa: 0.6 of 34.36 N m against 5 N m; 450 kPa against 167.
        assertThat(WingReserve.joint(joint, Examples.TUBE)).isCloseTo(0.45e6 / 166_667, withinPercentage(0.01));
        assertThat(WingReserve.joint(JointTube.of(5, 0, 0.008, 0.30), Examples.TUBE))
                .isCloseTo(0.6 * 34.36 / 5, withinPercentage(0.02));
        // 18 MPa on 22 mm², twice the mean but a hundredth, against 1.5 M / l.
        assertThat(WingReserve.jointShear(joint, Examples.TUBE))
                .isCloseTo(18e6 * 21.991e-6 / (4.0 / 3 * 1.48) / 50, withinPercentage(0.01));
    }
}
