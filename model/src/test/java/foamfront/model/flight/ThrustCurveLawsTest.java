package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.design.PowerPlant;
import foamfront.model.factors.Factors;
import foamfront.model.propulsion.Plants;
import foamfront.model.propulsion.PowerTrain;
import foamfront.model.validation.ErrorStatistics;
import org.junit.jupiter.api.Test;

/** The sextic through seven solutions against solutions everywhere between them, on combinations of the catalogue. */
class ThrustCurveLawsTest {
    /** Of static thrust: the worst of these, where the propeller leaves its measured advance ratios. */
    private static final double LARGEST = 3e-3;

    private static final double RMS = 3e-4;

    private static final int COMBINATIONS = 40;
    private static final int BETWEEN = 30;
    private static final double CHARGE = 0.3;

    @Test
    void liesWithinThreeTenthsOfAPerCentOfStaticThrust() {
        ErrorStatistics errors = new ErrorStatistics();
        String worst = "";
        for (int seed = 0; seed < COMBINATIONS; seed++) {
            PowerPlant plant = Plants.random(seed);
            PowerTrain train = PowerTrain.of(plant, 1, Factors.NOMINAL, Plants.DENSITY, 0.5);
            ThrustCurve curve = new ThrustCurve();
            curve.fit(train, plant.propeller().pitch(), CHARGE);
            train.solveFullThrottle(0, CHARGE);
            double still = train.thrust();
            double before = errors.largest();
            for (int i = 0; i <= BETWEEN; i++) {
                double speed = curve.fastest() * i / BETWEEN;
                train.solveFullThrottle(speed, CHARGE);
                if (train.thrust() > 0) {
                    errors.add((curve.at(speed) - train.thrust()) / still);
                }
            }
            if (errors.largest() > before) {
                worst = plant.motor().name() + " " + plant.propeller().name();
            }
        }
        assertThat(errors.largest()).as("%s, RMS %.5f", worst, errors.rms()).isLessThan(LARGEST);
        assertThat(errors.rms()).isLessThan(RMS);
    }
}
