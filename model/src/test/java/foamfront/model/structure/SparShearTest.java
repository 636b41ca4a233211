package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import foamfront.model.parts.Provenance;
import foamfront.model.parts.Spar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SparShearTest {
    private static final double ROUNDING = 1e-12;

    private static Spar round(double diameter, double bore) {
        return new Spar("x", Spar.Shape.ROUND, diameter, diameter, bore, 127e9, 600e6, 1500, 1, 1, Provenance.INVENTED);
    }

    private static Spar strip(double strength, double density) {
        return new Spar("x", Spar.Shape.STRIP, 3e-3, 6e-3, 0, 10e9, strength, density, 1, 1, Provenance.INVENTED);
    }

    @Test
    void rodStripAndThinTubeHaveTheTextbooksFactors() {
        assertThat(SparShear.peak(round(0.002, 0))).isCloseTo(4.0 / 3, within(ROUNDING));
        assertThat(SparShear.peak(strip(30e6, 370))).isEqualTo(1.5);
        assertThat(SparShear.peak(round(0.01, 0.00999))).isCloseTo(2, within(1e-6));
    }

    /** V Q / (I t) summed over thin layers above the neutral axis. */
    @ParameterizedTest(name = "bore {0} of the diameter")
    @ValueSource(doubles = {0, 0.4, 0.75})
    void aTubeFollowsItsIntegral(double share) {
        double r = 0.004;
        double q = share * r;
        int n = 200_000;
        double first = 0;
        for (int i = 0; i < n; i++) {
            double z = (i + 0.5) / n * r;
            double width = Math.sqrt(r * r - z * z) - Math.sqrt(Math.max(0, q * q - z * z));
            first += 2 * width * z * r / n;
        }
        Spar tube = round(2 * r, 2 * q);
        double area = tube.linearMass() / tube.density();
        double peak = first / (tube.secondMoment() * 2 * (r - q)) * area;
        // The layers' own error.
        assertThat(SparShear.peak(tube)).isCloseTo(peak, withinPercentage(1e-4));
    }

    @Test
    void woodShearsAtALargerShareOfItsStrengthThanCarbon() {
        // Rod of 2 mm: 18 MPa on 3.14 mm² over 4/3; wood 3x6: 4.5 MPa on 18 mm² over 3/2.
        assertThat(SparShear.bears(round(0.002, 0))).isCloseTo(42.41, within(0.005));
        assertThat(SparShear.bears(strip(30e6, 370))).isCloseTo(54, within(1e-9));
        assertThat(SparShear.bears(strip(30e6, 1500))).isCloseTo(10.8, within(1e-9));
    }
}
