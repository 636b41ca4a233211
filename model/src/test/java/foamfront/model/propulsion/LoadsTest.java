package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.parts.Battery;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.Provenance;
import org.junit.jupiter.api.Test;

/** Each ratio is 1 exactly at its limit. */
class LoadsTest {
    private static final double ROUNDING = 1e-12;

    private static Motor motor(double continuousPower) {
        return new Motor("m", 0.05, 0.03, 0.03, 100, 0.1, 0.5, 10, continuousPower, 1, Provenance.INVENTED);
    }

    private static Battery battery(double rating) {
        return new Battery("b", 3, 2.2 * 3600, rating, 0.18, 0.1, 0.03, 0.02, 0.005, 1, Provenance.INVENTED);
    }

    @Test
    void motorBearsFiveWattsAGramOrItsMeasuredRating() {
        assertThat(Loads.motor(motor(0), 250)).isCloseTo(1, within(ROUNDING));
        assertThat(Loads.motor(motor(100), 100)).isCloseTo(1, within(ROUNDING));
        assertThat(Loads.motorBurst(motor(0), 400)).isCloseTo(1, within(ROUNDING));
        // A quarter of 5 W/g as heat, 8/5 of it for half a minute.
        assertThat(Loads.motorHeat(motor(0), 62.5)).isCloseTo(1, within(ROUNDING));
        assertThat(Loads.motorHeat(motor(100), 25)).isCloseTo(1, within(ROUNDING));
        assertThat(Loads.motorHeatBurst(motor(0), 100)).isCloseTo(1, within(ROUNDING));
    }

    @Test
    void batteryBearsHalfItsLabelUpToThirty() {
        assertThat(Loads.battery(battery(35), 17.5 * 2.2)).isCloseTo(1, within(ROUNDING));
        assertThat(Loads.battery(battery(100), 30 * 2.2)).isCloseTo(1, within(ROUNDING));
    }

    @Test
    void cellStaysAboveItsLowestVoltage() {
        assertThat(Loads.cell(battery(35), 9.9)).isCloseTo(1, within(ROUNDING));
        assertThat(Loads.cell(battery(35), 9)).isGreaterThan(1);
        assertThat(Loads.cell(battery(35), 0)).isFinite();
    }

    @Test
    void controllerKeepsAQuarterInHand() {
        Controller controller = new Controller("c", 25, 2, 0.02, 0.04, 0.02, 0.01, 0.005, 1, Provenance.INVENTED);
        assertThat(Loads.controller(controller, 20)).isCloseTo(1, within(ROUNDING));
    }

    /** A linear supply of 2 A on three cells bears 7.6 V at 2 A; on four, 11.8 V at as much heat. */
    @Test
    void supplyBearsBusyServosAndTheirHeat() {
        Controller controller = new Controller("c", 25, 2, 0.02, 0.04, 0.02, 0.01, 0.005, 1, Provenance.INVENTED);
        assertThat(Loads.supply(controller, 3, 0.5, 0.3)).isCloseTo(1, within(ROUNDING));
        assertThat(Loads.supply(controller, 2, 0.5, 0.3)).isCloseTo(1, within(ROUNDING));
        assertThat(Loads.supply(controller, 4, 0.5, 0.3)).isCloseTo(11.8 / 7.6, within(ROUNDING));
    }

    @Test
    void tipStaysBelowItsFamilysSpeed() {
        Propeller propeller = Plants.propeller("10x4.7 slow flyer");
        assertThat(Loads.tip(propeller, 86 / (Math.PI * propeller.diameter()))).isCloseTo(1, within(ROUNDING));
    }
}
