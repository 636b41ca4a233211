package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.flight.LateralDerivatives;
import foamfront.model.flight.LateralModes;
import foamfront.model.flight.Motions;
import foamfront.model.flight.ShortPeriod;
import foamfront.model.units.Currency;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.study.ShowIn;
import org.junit.jupiter.api.Test;

/** The sentences say no more than the motions do. */
class MotionsTextTest {
    private static final ShortPeriod QUICK = new ShortPeriod(8, 1.4, true);
    private static final LateralModes CALM = new LateralModes(-12, -0.01, 3, 0.2);

    private static String of(ShortPeriod pitch, LateralModes modes) {
        return MotionsText.of(
                new Motions(11, pitch, new LateralDerivatives(-0.3, -0.1, -0.4, 0.1, 0.08, -0.05, -0.1), modes),
                new Show(ShowIn.METRIC, new Currency("USD")));
    }

    @Test
    void whatIsStableSettles() {
        assertThat(of(QUICK, CALM)).contains("pitch settles without a swing", "a bank dies out by itself");
    }

    @Test
    void behindTheNeutralPointNothingSettles() {
        assertThat(of(new ShortPeriod(8, 1.4, false), CALM))
                .contains("pitch drifts away from its trim", "neutral point")
                .doesNotContain("settles without");
    }

    @Test
    void rootsThatWereNotFoundAreNotTold() {
        LateralModes lost = new LateralModes(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        assertThat(of(QUICK, lost)).contains("slow swing", "not told").doesNotContain("NaN", "dies out", "doubles");
    }
}
