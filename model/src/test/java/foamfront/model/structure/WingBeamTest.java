package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.HoldDown;
import foamfront.model.design.WingBuild;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.design.WingTips;
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
        WingBeam beam = new WingBeam(BOARD, new WingSection.FlatPlate(), STRIP);
        // D = 4.943 N m (derived, see SandwichTest).
        assertThat(beam.bendingStiffness(0.2)).isCloseTo(0.2 * 4.943, within(0.2 * 0.5e-3));
        assertThat(beam.top(0.2)).isCloseTo(2.4e-3, within(ROUNDING));
    }

    @Test
    void aPlateSteppedOverItsWholeChordIsTwoBoardsDeep() {
        // Two boards bonded: own stiffness twice, and each t/2 off the common middle. The step ends at 0.8 at most.
        WingBeam beam = new WingBeam(BOARD, new WingSection.SteppedPlate(0.8), STRIP);
        double t = 4.8e-3;
        double steiner = 2 * 0.15e-3 * 3e9 * t * t * 0.8 / 1.8;
        assertThat(beam.bendingStiffness(0.2))
                .isCloseTo(0.2 * (1.8 * BOARD.bendingStiffness() + steiner), withinPercentage(1e-9));
    }

    @Test
    void aCurvedPlateIsAParabola() {
        WingBeam beam = new WingBeam(BOARD, new WingSection.CurvedPlate(0.06), STRIP);
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
        WingBeam flat = new WingBeam(BOARD, new WingSection.FoldedFlatBottom(0.12), STRIP);
        WingBeam even = new WingBeam(BOARD, new WingSection.FoldedSymmetrical(0.12), STRIP);
        WingBeam arc = new WingBeam(BOARD, new WingSection.CurvedPlate(0.06), STRIP);
        WingBeam stepped = new WingBeam(BOARD, new WingSection.SteppedPlate(0.5), STRIP);
        // The flat bottom draws the centroid down, an arc's lies at two thirds, the step's a third of the way up.
        assertThat(flat.faceStress(-1, 0.2)).isPositive().isLessThan(flat.faceStress(1, 0.2));
        assertThat(even.faceStress(-1, 0.2)).isCloseTo(even.faceStress(1, 0.2), withinPercentage(1e-9));
        assertThat(arc.bottom(0.2) - arc.top(0.2)).isCloseTo(0.06 * 0.2 / 3, within(ROUNDING));
        assertThat(flat.top(0.2) + flat.bottom(0.2)).isCloseTo(0.12 * 0.2, within(ROUNDING));
        assertThat(stepped.top(0.2) + stepped.bottom(0.2)).isCloseTo(2 * BOARD.thickness(), within(ROUNDING));
        assertThat(stepped.bottom(0.2)).isCloseTo(BOARD.thickness() * (0.5 / 1.5 + 0.5), within(ROUNDING));
    }

    /** Chord 0.2 m, inside height 14.4 mm: a rod of 11.5 mm ties the skins, one of 2 mm touches neither. */
    @Test
    void aSparThatTouchesNeitherSkinTiesNothing() {
        WingSection fold = new WingSection.FoldedFlatBottom(0.12);
        WingBeam strip = new WingBeam(BOARD, fold, STRIP);
        WingBeam thin = new WingBeam(BOARD, fold, rod(2e-3));
        WingBeam low = new WingBeam(BOARD, fold, rod(11.5e-3));
        WingBeam tall = new WingBeam(BOARD, fold, rod(11.6e-3));
        double perimeter = SectionOutline.flatBottom(0.12).perimeter() * 0.2;
        assertThat(thin.isTied(0.2)).isFalse();
        assertThat(low.isTied(0.2)).isFalse();
        assertThat(tall.isTied(0.2)).isTrue();
        assertThat(thin.skinStiffness(0.2)).isCloseTo(perimeter * BOARD.bendingStiffness(), withinPercentage(1e-9));
        assertThat(thin.bendingStiffness(0.2)).isLessThan(0.2 * strip.bendingStiffness(0.2));
        assertThat(thin.faceStress(3, 0.2)).isGreaterThan(strip.faceStress(3, 0.2));
        assertThat(thin.torsionStiffness(0.2)).as("the fold stays closed").isEqualTo(strip.torsionStiffness(0.2));
        // The same spar ties a smaller chord.
        assertThat(low.isTied(0.18)).isTrue();
    }

    /** How far the folds alone tie the skins is unknown: no spar may gain by leaving them untied. */
    @Test
    void untiedSkinsAreNeverJudgedBetter() {
        for (double diameter = 1e-3; diameter < 11.5e-3; diameter += 0.5e-3) {
            WingSpar spar = rod(diameter);
            WingBeam beam = new WingBeam(BOARD, new WingSection.FoldedFlatBottom(0.12), spar);
            double tied = beam.tied(0.2) + beam.sparStiffness();
            assertThat(beam.bendingStiffness(0.2)).isLessThan(tied);
            assertThat(beam.faceStress(3, 0.2)).isGreaterThanOrEqualTo((1 - ROUNDING) * 3e9 * 3 * beam.top(0.2) / tied);
            assertThat(beam.sparStress(3, 0.2)).isGreaterThan(127e9 * 3 * 0.5 * diameter / tied);
        }
    }

    @Test
    void aPlateWithARodInItStaysOnePlate() {
        assertThat(new WingBeam(BOARD, new WingSection.FlatPlate(), rod(2e-3)).isTied(0.2))
                .isTrue();
        assertThat(new WingBeam(BOARD, new WingSection.CurvedPlate(0.06), rod(2e-3)).isTied(0.2))
                .isTrue();
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
        WingBeam beam = new WingBeam(BOARD, new WingSection.FoldedFlatBottom(0.12), STRIP);
        double chord = (0.022 + 2 * 4.8e-3) / 0.12;
        assertThat(beam.stripHeight(chord)).isCloseTo(0.022, within(ROUNDING));
        WingStress stress = new WingStress(0, 15.7, 0, 0, 0, 0);
        double reserve = WingReserve.shear(stress, beam, chord, Examples.BOARD, Factors.NOMINAL);
        assertThat(0.5 * Examples.BOARD.faceStrength() / reserve / 1e6).isCloseTo(2.4, within(0.05));
    }

    @Test
    void aSparSharesTheMomentByStiffness() {
        WingBeam beam = new WingBeam(BOARD, new WingSection.FlatPlate(), new WingSpar.Stock(Examples.TUBE));
        double total = 0.2 * BOARD.bendingStiffness() + 127e9 * Examples.TUBE.secondMoment();
        assertThat(beam.bendingStiffness(0.2)).isCloseTo(total, withinPercentage(1e-9));
        double skin = beam.faceStress(3, 0.2) / (3e9 * beam.top(0.2));
        double spar = beam.sparStress(3, 0.2) / (127e9 * 0.004);
        assertThat(skin).as("one curvature").isCloseTo(spar, withinPercentage(1e-9));
        assertThat(skin).isCloseTo(3 / total, withinPercentage(1e-9));
    }

    @Test
    void aFoldIsFarStifferInTorsionThanItsPlate() {
        double fold = new WingBeam(BOARD, new WingSection.FoldedFlatBottom(0.12), STRIP).torsionStiffness(0.2);
        double plate = new WingBeam(BOARD, new WingSection.FlatPlate(), STRIP).torsionStiffness(0.2);
        assertThat(fold).isGreaterThan(10 * plate);
    }

    /** A linear couple, p = 6 M / (d l²), derived; tolerance half the last printed digit. */
    @ParameterizedTest(name = "{0} N m, {1} mm, {2} mm")
    @CsvSource({"5, 8, 150, 167", "5, 8, 100, 375", "3, 6, 120, 208"})
    void aTubePressesOnItsSleeve(double moment, double diameter, double engaged, double kilopascal) {
        assertThat(WingReserve.bearing(moment, diameter * 1e-3, engaged * 1e-3) / 1e3)
                .isCloseTo(kilopascal, within(0.5));
    }

    @Test
    void aPluggedInWingHangsOnItsTube() {
        WingBeam beam = new WingBeam(BOARD, new WingSection.FoldedFlatBottom(0.12), new WingSpar.Stock(Examples.TUBE));
        WingStress stress = new WingStress(5, 20, 1e6, 50e6, 0, 0);
        WingBuild plug = build(WingJoint.PLUG_IN);
        // Tube 8/6 at 600 MPa: 0.6 of 34.36 N m (derived).
        assertThat(WingReserve.bending(stress, beam, plug, 12.5e6)).isCloseTo(0.6 * 34.36 / 5, withinPercentage(0.02));
        assertThat(WingReserve.bending(stress, beam, build(WingJoint.ONE_PIECE), 12.5e6))
                .isEqualTo(12.0);
        assertThat(WingReserve.joint(stress, beam, plug, 0.15)).isCloseTo(0.45e6 / 166_667, withinPercentage(0.01));
    }

    private static WingBuild build(WingJoint joint) {
        return new WingBuild(
                new WingSection.FoldedFlatBottom(0.12),
                joint,
                new WingSpar.Stock(Examples.TUBE),
                HoldDown.GLUED,
                WingTips.PLAIN);
    }
}
