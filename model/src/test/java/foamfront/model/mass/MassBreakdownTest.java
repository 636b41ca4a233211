package foamfront.model.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Servos;
import foamfront.model.design.Place;
import foamfront.model.fabrication.Assembly;
import foamfront.model.fabrication.CutPart;
import foamfront.model.fabrication.FlatPatterns;
import foamfront.model.fabrication.PartsList;
import foamfront.model.fabrication.Rectangle;
import foamfront.model.fabrication.StockPiece;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Difficulty;
import foamfront.model.parts.Spar;
import foamfront.model.parts.Workshop;
import foamfront.model.units.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;

class MassBreakdownTest {
    /** Sums of about thirty terms in double precision. */
    private static final double ROUNDING = 1e-12;

    private final Airframe airframe = Airframe.of(Examples.trainer());
    private final MassBreakdown masses = Examples.masses(airframe);

    @Test
    void everyMovingSurfaceHasItsServo() {
        assertThat(airframe.servos()).isEqualTo(new Servos(2, 2));
        // 9 g servo, 4 g lead, 3 g horn and pushrod, four of them; receiver 8 g.
        assertThat(masses.mass(MassGroup.RADIO)).isCloseTo(4 * 0.016 + 0.008, within(ROUNDING));
    }

    @Test
    void thePowerPlantCarriesItsFloors() {
        // Motor, propeller, controller, then leads 12 g, firewall 8 g, strap 5 g.
        assertThat(masses.mass(MassGroup.POWER))
                .isCloseTo(0.053 + 0.013 + 0.022 + 0.012 + 0.008 + 0.005, within(ROUNDING));
    }

    @Test
    void aSheetUsedWholeWeighsItsOwnArealMass() {
        assertThat(weightOf(new PartsList(List.of(part(0.762, 0.508, 0, 0)), List.of()), Factors.NOMINAL))
                .isCloseTo(0.762 * 0.508 * Examples.BOARD.arealDensity(), within(ROUNDING));
    }

    @Test
    void factorsActOnBoardGlueAndTapeButNotOnStock() {
        Factors heavy = new Factors(1, 1, 1, 1.1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1);
        Spar tube = Examples.TUBE;
        PartsList parts = new PartsList(
                List.of(part(0.4, 0.5, 2, 3)),
                List.of(new StockPiece("wing spar", Assembly.WING, tube, 1, 1, 0.4, 0.25, 0.05)));
        double soft = 0.2 * Examples.BOARD.arealDensity() + 2 * 0.0076 + 3 * 0.002;
        double stock = tube.linearMass();
        assertThat(weightOf(parts, Factors.NOMINAL)).isCloseTo(soft + stock, within(ROUNDING));
        assertThat(weightOf(parts, heavy)).isCloseTo(1.1 * soft + stock, within(ROUNDING));
    }

    @Test
    void massSharesAreThoseOfTheTrade() {
        // Airframe 40-55 %, battery 18-30 %, power plant 12-20 %, radio 8-12 % (common practice);
        // a bare trainer without payload sits at their light end, so the airframe's band alone is asked.
        double built = masses.mass(MassGroup.WING) + masses.mass(MassGroup.TAIL) + masses.mass(MassGroup.BODY);
        assertThat(built / masses.mass()).isBetween(0.40, 0.60);
        assertThat(masses.mass(MassGroup.BATTERY) / masses.mass()).isBetween(0.18, 0.30);
    }

    private static CutPart part(double length, double width, double glue, double tape) {
        return new CutPart(
                "part", Assembly.BODY, 1, false, true, new Rectangle(length, width), glue, tape, 0, 0.5, 0, 0, false);
    }

    /** Of parts in the trainer, without allowance. */
    private double weightOf(PartsList parts, Factors factors) {
        Workshop bare = new Workshop(
                new Currency("USD"),
                0.002,
                0,
                0.0076,
                0,
                0,
                0,
                0,
                0,
                3,
                2,
                3,
                1,
                1,
                1,
                1,
                1,
                1,
                0,
                new Difficulty(1, 1, 0.5, 10));
        PartsList none = new PartsList(List.of(), List.of());
        return MassBreakdown.of(airframe, parts, bare, factors).mass()
                - MassBreakdown.of(airframe, none, bare, factors).mass();
    }

    @Test
    void theBuildersAllowanceIsOnTheBuiltShare() {
        double allowance = masses.items().stream()
                .filter(item -> item.name().startsWith("builder's allowance"))
                .mapToDouble(MassItem::mass)
                .sum();
        double built = 0;
        for (CutPart part : FlatPatterns.of(airframe).cut()) {
            built += PartsList.mass(part, Examples.BOARD, Examples.WORKSHOP);
        }
        assertThat(allowance).isCloseTo(0.05 * built, within(ROUNDING));
    }

    @Test
    void aLoadAtTheBalancePointFollowsIt() {
        Airframe laden = Airframe.of(Examples.trainer(Examples.load(Place.BALANCE_POINT, false)));
        MassBreakdown m = Examples.masses(laden);
        double shift = m.centreX(0.2, 0.4, 0) - m.centreX(0.2, 0.3, 0);
        double pads = m.items().stream()
                .filter(item -> item.name().equals("wheel pad"))
                .mapToDouble(MassItem::mass)
                .sum();
        // The load, both main wheels and the pads they stand on, with their allowance, move by 0.1 m.
        assertThat(pads).isPositive();
        assertThat(shift).isCloseTo(0.1 * (0.2 + 2 * 0.018 + 1.05 * pads) / m.mass(), within(ROUNDING));
    }
}
