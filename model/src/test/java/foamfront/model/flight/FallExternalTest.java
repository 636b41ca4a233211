package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import org.junit.jupiter.api.Test;

/** Parachutes and falling loads against the closed forms of fall with quadratic drag. */
class FallExternalTest {
    /** Half the last digit printed. */
    private static final double PRINTED = 5e-4;

    private static final double DENSITY = 1.225;
    private static final double CANOPY_AREA = Math.PI * 0.6 * 0.6 / 4;

    private static final Validation DESCENT = Validation.of(
            Subject.FLIGHT,
            "Descent of 0.20 kg under a parachute of 0.60 m",
            "v = √(2mg / ρ C_D S₀) (derived); C_D of flat circular canopies after T. W. Knacke, NWC TP 6575, table 5-1 (from"
                    + " memory).");

    @Test
    void descentSpeeds() {
        DESCENT.value("C_D 0.75", 3.886, Fall.terminalSpeed(0.2, 0.75, CANOPY_AREA, DENSITY), PRINTED, "m/s")
                .value("C_D 0.80", 3.763, Fall.terminalSpeed(0.2, 0.80, CANOPY_AREA, DENSITY), PRINTED, "m/s")
                .value("C_D 0.60", 4.345, Fall.terminalSpeed(0.2, 0.60, CANOPY_AREA, DENSITY), PRINTED, "m/s");
    }

    @Test
    void aCanopyForADescentSpeedGivesThatSpeed() {
        DESCENT.value("diameter for 3.886 m/s", 0.600, Fall.canopyDiameter(0.2, 3.886, DENSITY), PRINTED, "m");
    }

    @Test
    void ninetyNinePerCentOfTheSpeedComesWithinThreeMetres() {
        double terminal = Fall.terminalSpeed(0.2, 0.75, CANOPY_AREA, DENSITY);

        DESCENT.value("share of the speed after 3.016 m", 0.99, Fall.speed(terminal, 3.016) / terminal, 1e-5, "");
    }

    /** The same fall by small steps. */
    @Test
    void timeAgreesWithStepsThroughTheFall() {
        for (double terminal : new double[] {2, 8, 25, 60}) {
            double height = 30;
            double step = 1e-4;
            double z = 0;
            double v = 0;
            double t = 0;
            while (z < height) {
                double a = 9.80665 * (1 - v * v / (terminal * terminal));
                double middle = v + 0.5 * step * a;
                v += step * 9.80665 * (1 - middle * middle / (terminal * terminal));
                z += step * middle;
                t += step;
            }
            assertThat(Fall.time(terminal, height)).isCloseTo(t, within(2e-3));
            assertThat(Fall.speed(terminal, height)).isCloseTo(v, within(2e-3));
        }
    }

    @Test
    void withoutAirATimeOfFreeFall() {
        assertThat(Fall.time(1e4, 30)).isCloseTo(Math.sqrt(2 * 30 / 9.80665), within(1e-5));
    }
}
