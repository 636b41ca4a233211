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
    /**
     * Of static thrust. Two of the forty exceed 0.2 %, at 0.25 % and 0.20 % and a fifteenth of their top speed: steep pitches, whose
     * measured thrust bends near rest. The quartic through five solutions kept to 0.2 % only on the flatter cubics of before.
     */
    private static final double LARGEST = 2.6e-3;

    private static final double RMS = 2.5e-4;

    private static final int COMBINATIONS = 40;
    private static final int BETWEEN = 30;
    private static final double CHARGE = 0.3;

    @Test
    void liesWithinAQuarterOfAPerCentOfStaticThrust() {
        ErrorStatistics errors = new ErrorStatistics();
        String worst = "";
        for (int seed = 0; seed < COMBINATIONS; seed++) {
            PowerPlant plant = Plants.random(seed);
            PowerTrain train = PowerTrain.of(plant, 1, Factors.NOMINAL, Plants.DENSITY, 0.5);
            ThrustCurve curve = new ThrustCurve();
            train.solveFullThrottle(0, CHARGE);
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
