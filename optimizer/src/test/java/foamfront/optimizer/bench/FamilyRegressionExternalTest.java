package foamfront.optimizer.bench;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.PropellerCurves;
import foamfront.model.parts.Provenance;
import foamfront.optimizer.catalogue.CatalogueReader;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Each measured propeller of the catalogue left out in turn and predicted from the rest. Source: Brandt, Deters, Ananda,
 * Dantsker and Selig, UIUC Propeller Database, volumes 1-3, through the catalogue's fits at 6000 rpm.
 */
class FamilyRegressionExternalTest {
    /** Acceptance of an unseen propeller. */
    private static final double THRUST = 0.25;

    private static final double POWER = 0.35;

    /** The project's own acceptance. */
    private static final double SHARE_INSIDE = 0.9;

    /** RMS errors found when the regression was made, rounded up. */
    private static final double THRUST_RMS = 0.125;

    private static final double POWER_RMS = 0.16;

    private static final List<Propeller> MEASURED = CatalogueReader.standard().propellers().stream()
            .filter(p -> p.provenance() == Provenance.OPEN_DATA && p.family() != BladeFamily.SMALL)
            .toList();

    @Test
    void nineOfTenLeftOutPropellersLieInsideTheAcceptance() {
        int inside = 0;
        double thrusts = 0;
        double powers = 0;
        for (Propeller left : MEASURED) {
            double[] error = error(left);
            inside += Math.abs(error[0]) <= THRUST && Math.abs(error[1]) <= POWER ? 1 : 0;
            thrusts += error[0] * error[0] / MEASURED.size();
            powers += error[1] * error[1] / MEASURED.size();
        }
        assertThat((double) inside / MEASURED.size())
                .as("%d of %d", inside, MEASURED.size())
                .isGreaterThanOrEqualTo(SHARE_INSIDE);
        assertThat(Math.sqrt(thrusts)).as("C_T").isLessThan(THRUST_RMS);
        assertThat(Math.sqrt(powers)).as("C_P").isLessThan(POWER_RMS);
    }

    private static double[] error(Propeller left) {
        List<Propeller> rest = MEASURED.stream().filter(p -> !p.equals(left)).toList();
        PropellerCurves ours =
                new FamilyRegression(rest).predict(left.family(), left.diameter(), left.pitch(), left.blades());
        double l = left.curves().speedTerm(PropellerCurves.REFERENCE_SPEED);
        double mine = ours.speedTerm(PropellerCurves.REFERENCE_SPEED);
        return new double[] {
            ours.thrustCoefficient(0, mine) / left.curves().thrustCoefficient(0, l) - 1,
            ours.powerCoefficient(0, mine) / left.curves().powerCoefficient(0, l) - 1
        };
    }

    /** Three and four blades over two, research propellers of one planform. */
    @Test
    void moreBladesPullMoreAndTakeMoreStill() {
        FamilyRegression regression = new FamilyRegression(MEASURED);
        PropellerCurves two = regression.predict(BladeFamily.SPORT, 0.2286, 0.1715, 2);
        PropellerCurves three = regression.predict(BladeFamily.SPORT, 0.2286, 0.1715, 3);
        PropellerCurves four = regression.predict(BladeFamily.SPORT, 0.2286, 0.1715, 4);
        org.assertj.core.data.Offset<Double> printed = org.assertj.core.api.Assertions.within(5e-4);
        assertThat(three.thrustCoefficient(0, 0) / two.thrustCoefficient(0, 0)).isCloseTo(1.354, printed);
        assertThat(four.thrustCoefficient(0, 0) / two.thrustCoefficient(0, 0)).isCloseTo(1.633, printed);
        assertThat(three.powerCoefficient(0, 0) / two.powerCoefficient(0, 0)).isCloseTo(1.467, printed);
        assertThat(four.powerCoefficient(0, 0) / two.powerCoefficient(0, 0)).isCloseTo(1.918, printed);
    }
}
