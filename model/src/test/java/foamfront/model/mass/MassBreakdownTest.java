package foamfront.model.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.Place;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Workshop;
import java.util.List;
import org.junit.jupiter.api.Test;

class MassBreakdownTest {
    /** Sums of about thirty terms in double precision. */
    private static final double ROUNDING = 1e-12;

    /** Half the last digit of 32.99 g/m over 1.2 m. */
    private static final double PRINTED = 0.005e-3 * 1.2 * 1.01;

    private final Airframe airframe = Airframe.of(Examples.trainer());
    private final MassBreakdown masses = Examples.masses(airframe);

    @Test
    void everyMovingSurfaceHasItsServo() {
        assertThat(MovingSurfaces.of(Examples.trainer())).isEqualTo(new MovingSurfaces(2, 2));
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
    void aSheetUsedWholeWeighsItsOwnArealMassAndFactorsActOnBoardGlueAndTapeAlone() {
        Workshop bare = new Workshop(0.002, 0, 0.0076, 0, 1, 1, 1, 1, 1, 1, 0);
        List<BuiltPart> sheet = List.of(new BuiltPart("sheet", MassGroup.BODY, 0.762 * 0.508, 0.5, 0, 0, 0));
        double with = MassBreakdown.of(airframe, sheet, bare, Factors.NOMINAL).mass();
        double edges = 0.002 * (2 * 0.96 + 2 * 0.6 / StrictMath.cos(0.05) + 0.45 + 0.16);
        double without =
                MassBreakdown.of(airframe, List.of(), bare, Factors.NOMINAL).mass();
        assertThat(with - without).isCloseTo(0.762 * 0.508 * Examples.BOARD.arealDensity(), within(ROUNDING));
        Factors heavy = new Factors(1, 1, 1, 1.1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1);
        double more = MassBreakdown.of(airframe, sheet, bare, heavy).mass();
        assertThat(more - with).isCloseTo(0.1 * (with - without + edges), within(ROUNDING));
    }

    @Test
    void aStockSparWeighsItsLengthAndItsLinearMass() {
        Airframe tubed = Airframe.of(Examples.design(
                1.2, new WingSection.FoldedFlatBottom(0.12), new WingSpar.Stock(Examples.TUBE), WingJoint.PLUG_IN));
        double spar = Examples.masses(tubed).mass() - masses.mass();
        // 32.99 g/m (check M-60), along the dihedral.
        assertThat(spar).isCloseTo(0.03299 * 1.2 / StrictMath.cos(0.05), within(PRINTED));
    }

    @Test
    void theBuildersAllowanceIsOnTheBuiltShare() {
        MassItem allowance = masses.items().stream()
                .filter(item -> item.name().equals("builder's allowance"))
                .findFirst()
                .orElseThrow();
        double built = masses.items().stream()
                .filter(item -> List.of("wing skins", "body tube", "stabiliser", "fin", "edge tape")
                        .contains(item.name()))
                .mapToDouble(MassItem::mass)
                .sum();
        assertThat(allowance.mass()).isCloseTo(0.05 * built, within(ROUNDING));
    }

    @Test
    void aLoadAtTheBalancePointFollowsIt() {
        Airframe laden = Airframe.of(Examples.trainer(Examples.load(Place.BALANCE_POINT, false)));
        MassBreakdown m = Examples.masses(laden);
        double shift = m.centreX(0.2, 0.4, 0) - m.centreX(0.2, 0.3, 0);
        // The load and both main wheels move by 0.1 m.
        assertThat(shift).isCloseTo(0.1 * (0.2 + 2 * 0.018) / m.mass(), within(ROUNDING));
    }
}
