package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class HingeMomentTest {
    private static final double DEGREE = Math.PI / 180;

    /** The check allows 1 %; the closed form meets the table's last digit, 0.07 % at worst. */
    private static final double PRINTED = 0.07;

    @ParameterizedTest(name = "control chord {0}")
    @CsvFileSource(resources = "hinge-moments.csv")
    void slopesFollowTheTable(double chordFraction, double incidence, double deflection) {
        HingeMoment slopes = HingeMoment.of(chordFraction);
        assertThat(-slopes.incidence() * DEGREE).isCloseTo(incidence, withinPercentage(PRINTED));
        assertThat(-slopes.deflection() * DEGREE).isCloseTo(deflection, withinPercentage(PRINTED));
    }

    /** Thin-aerofoil slopes, derived: elevon 0.4 m × 40 mm of a fifth of the chord, 20°, 20 m/s. */
    @Test
    void anElevonAtTwentyMetresPerSecond() {
        double pressure = 0.5 * 1.225 * 20 * 20;
        double moment = pressure * 0.4 * 0.04 * 0.04 * -HingeMoment.of(0.2).deflection() * 20 * DEGREE;
        assertThat(moment).isCloseTo(0.0505, within(0.5e-4));
    }

    @Test
    void aWholeMovingSurfaceTurnsAboutItsLeadingEdge() {
        // Quarter-chord lift 2π α at a quarter of the chord behind the hinge.
        assertThat(HingeMoment.of(1).incidence()).isCloseTo(-Math.PI / 2, within(1e-12));
        assertThat(HingeMoment.of(1).deflection()).isCloseTo(-Math.PI / 2, within(1e-12));
    }
}
