package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class EllipticLoadTest {
    /** Half the last digit of the table. */
    private static final double PRINTED = 0.5e-5 * 1.0001;

    /** Sixteen sums of order one. */
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest(name = "2y/b {0}")
    @CsvFileSource(resources = "elliptic-load.csv")
    void shearAndMomentFollowTheTable(double eta, double shear, double moment) {
        assertThat(EllipticLoad.shear(eta)).isCloseTo(shear, within(PRINTED));
        assertThat(EllipticLoad.moment(eta)).isCloseTo(moment, within(PRINTED));
    }

    @Test
    void theStandInsStripsKeepForceAndRootMoment() {
        SpanLoad load = SpanLoad.elliptic(0.6, 0.5);
        double moment = 0;
        for (int i = 0; i < load.strips(); i++) {
            moment += load.share(i) * load.y(i);
        }
        assertThat(load.size()).isCloseTo(0.5, within(ROUNDING));
        assertThat(load.semispan()).isCloseTo(0.6, within(ROUNDING));
        // M₀ = n W b / 3π; 0.42441 (L/2)(b/2).
        assertThat(moment).isCloseTo(1.2 / (3 * Math.PI), within(ROUNDING));
    }
}
