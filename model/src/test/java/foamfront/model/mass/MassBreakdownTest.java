package foamfront.model.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.Place;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Workshop;
import java.util.List;
import org.junit.jupiter.api.Test;

class MassBreakdownTest {
    /** Sums of about thirty terms in double precision. */
    private static final double ROUNDING = 1e-12;

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
    void aSheetUsedWholeWeighsItsOwnArealMass() {
        assertThat(weightOf(part(0.762 * 0.508, 0, 0, 0), Factors.NOMINAL))
                .isCloseTo(0.762 * 0.508 * Examples.BOARD.arealDensity(), within(ROUNDING));
    }

    @Test
    void factorAndAllowanceActOnBoardGlueAndTapeButNotOnStock() {
        Factors heavy = new Factors(1, 1, 1, 1.1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1);
        BuiltPart part = part(0.2, 0.033, 2, 3);
        double soft = 0.2 * Examples.BOARD.arealDensity() + 2 * 0.0076 + 3 * 0.002;
        assertThat(weightOf(part, Factors.NOMINAL)).isCloseTo(soft + 0.033, within(ROUNDING));
        assertThat(weightOf(part, heavy)).isCloseTo(1.1 * soft + 0.033, within(ROUNDING));
    }

    @Test
    void partsBelongWhereTheirNamesSay() {
        assertThat(MassGroup.ofPart("wing bottom")).isEqualTo(MassGroup.WING);
        assertThat(MassGroup.ofPart("upper wing spar")).isEqualTo(MassGroup.WING);
        assertThat(MassGroup.ofPart("wing saddle doubler")).isEqualTo(MassGroup.BODY);
        assertThat(MassGroup.ofPart("fin")).isEqualTo(MassGroup.TAIL);
        assertThat(MassGroup.ofPart("stabiliser")).isEqualTo(MassGroup.TAIL);
        assertThat(MassGroup.ofPart("float end")).isEqualTo(MassGroup.UNDERCARRIAGE);
        assertThat(MassGroup.ofPart("tail boom")).isEqualTo(MassGroup.BODY);
    }

    private static BuiltPart part(double area, double stock, double glue, double tape) {
        return new BuiltPart("part", MassGroup.BODY, area, stock, 0.5, 0, 0, glue, tape);
    }

    /** Of one part in the trainer, without allowance. */
    private double weightOf(BuiltPart part, Factors factors) {
        Workshop bare = new Workshop(0.002, 0, 0.0076, 0, 1, 1, 1, 1, 1, 1, 0);
        return MassBreakdown.of(airframe, List.of(part), bare, factors).mass()
                - MassBreakdown.of(airframe, List.of(), bare, factors).mass();
    }

    @Test
    void theBuildersAllowanceIsOnTheBuiltShare() {
        MassItem allowance = masses.items().stream()
                .filter(item -> item.name().equals("builder's allowance"))
                .findFirst()
                .orElseThrow();
        double built = masses.items().stream()
                .filter(item ->
                        List.of("wing skins", "body tube", "stabiliser", "fin").contains(item.name()))
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
