package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Launch;
import foamfront.model.propulsion.PowerTrain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of any throw, whatever its parameters. */
class HandLaunchLawsTest {
    private static final double RELEASE = 1.8;
    private static final double STEP = 0.05;
    private static final double NEXT_TO_NONE = 1e-3;

    /** A throw is known to a centimetre. */
    private static final double CENTIMETRE = 0.01;

    private static ThrustCurve thrust(double push) {
        ThrustCurve curve = new ThrustCurve();
        PowerTrain train = PowerTrain.of(
                Samples.plant(), 1, Records.with(Factors.NOMINAL, "thrust", push), Flights.AIR.density(), 0.5);
        train.solveFullThrottle(0, 0.3);
        curve.fit(train, Samples.propeller().pitch(), 0.3);
        return curve;
    }

    private static double lowest(double weight, double throwFactor, boolean pusher, double push, double step) {
        TrimmedFlight flight = Flights.trainer(weight);
        ThrustCurve thrust = thrust(push);
        return HandLaunch.lowest(flight, thrust, DragParabola.of(flight), Launch.NORMAL, throwFactor, pusher, step);
    }

    @Test
    void aLightModelThrownFastNeverSinks() {
        assertThat(lowest(5, 1, false, 1, STEP)).isGreaterThan(RELEASE - CENTIMETRE);
    }

    /** Without thrust it comes down: height and speed are all there is, and drag takes its share. */
    @Test
    void withoutThrustAHeavyModelReachesTheGround() {
        assertThat(lowest(14, 0.8, false, NEXT_TO_NONE, STEP)).isLessThan(0);
    }

    @ParameterizedTest(name = "{0} N")
    @ValueSource(doubles = {6, 8, 10, 11, 12, 13, 14})
    void lessThrustIsNeverHigher(double weight) {
        double low = lowest(weight, 0.8, false, 0.6, STEP);
        assertThat(low).isLessThanOrEqualTo(lowest(weight, 0.8, false, 0.8, STEP));
        assertThat(low).isLessThanOrEqualTo(lowest(weight, 0.8, false, 1, STEP));
    }

    @ParameterizedTest(name = "{0} N")
    @ValueSource(doubles = {6, 8, 10, 11, 12, 13, 14})
    void heavierIsNeverHigher(double weight) {
        assertThat(lowest(1.1 * weight, 0.8, false, 1, STEP)).isLessThanOrEqualTo(lowest(weight, 0.8, false, 1, STEP));
    }

    @ParameterizedTest(name = "{0} N")
    @ValueSource(doubles = {6, 8, 10, 11, 12, 13, 14})
    void waitingForThePropellerIsNeverHigher(double weight) {
        assertThat(lowest(weight, 0.8, true, 1, STEP)).isLessThanOrEqualTo(lowest(weight, 0.8, false, 1, STEP));
    }

    @ParameterizedTest(name = "{0} N")
    @ValueSource(doubles = {6, 8, 10, 11, 12, 13, 14})
    void aSlowerThrowIsNeverHigher(double weight) {
        assertThat(lowest(weight, 0.7, false, 1, STEP)).isLessThanOrEqualTo(lowest(weight, 0.8, false, 1, STEP));
    }

    /** Heun's method is of second order; the pilot's limits cost some of it. */
    @ParameterizedTest(name = "{0} N")
    @ValueSource(doubles = {8, 10, 12, 14})
    void halvingTheStepHardlyMatters(double weight) {
        double coarse = lowest(weight, 0.8, false, 1, STEP);
        double half = lowest(weight, 0.8, false, 1, STEP / 2);
        double quarter = lowest(weight, 0.8, false, 1, STEP / 4);

        assertThat(Math.abs(coarse - half)).isLessThan(CENTIMETRE);
        assertThat(Math.abs(half - quarter)).isLessThanOrEqualTo(Math.max(1e-6, 0.7 * Math.abs(coarse - half)));
    }
}
