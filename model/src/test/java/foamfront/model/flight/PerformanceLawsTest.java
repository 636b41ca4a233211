package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Samples;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.factors.Factors;
import foamfront.model.propulsion.PowerTrain;
import foamfront.model.validation.ErrorStatistics;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Climb and the three speeds of level flight against fine searches, on random designs with the sample power plant. */
class PerformanceLawsTest {
    /** Found over these designs, rounded up. */
    private static final double LARGEST = 1e-3;

    private static final double RMS = 2e-4;

    private static final int DESIGNS = 108;
    private static final int FINE = 1500;
    private static final double WEIGHT = 7;

    /** The load factor is halved to 1e-4, drag grows with its square. */
    private static final double TURN = 1e-3;

    private static final double DISC = 0.25
            * Math.PI
            * Samples.propeller().diameter()
            * Samples.propeller().diameter();

    private final PowerTrain train = PowerTrain.of(Samples.plant(), 1, Factors.NOMINAL, Flights.AIR.density(), 0.5);

    private static Performance of(TrimmedFlight flight, PowerTrain train, double wind) {
        Performance performance = new Performance();
        performance.solve(flight, train, Samples.propeller(), DISC, 0.001, wind);
        return performance;
    }

    /** The least of a curve between two speeds. */
    private static double least(double from, double to, DoubleUnaryOperator curve) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= FINE; i++) {
            least = Math.min(least, curve.applyAsDouble(from + (to - from) * i / FINE));
        }
        return least;
    }

    /** Where thrust and not bank ends the turn, full throttle balances the drag of its own slipstream there and no more. */
    @Test
    void aTurnThatThrustEndsIsFlownInItsSlipstream() {
        int ended = 0;
        for (double weight = 9; weight < 40; weight += 0.5) {
            TrimmedFlight flight = Flights.of(Samples.trainer(), weight).flight;
            FullThrottle full = of(flight, train, 0).fullThrottle();
            double radius = LevelTurn.radius(flight, full);
            double load = load(flight.stallSpeed(), radius);
            if (load > 1.05 && load < 1.40) {
                double speed = Performance.SAFE * flight.stallSpeed() * Math.sqrt(load);
                double pull = full.thrust(speed);
                double lift = load * flight.liftCoefficient(speed);
                assertThat(flight.pulledDrag(pull, speed, lift, DISC)).isCloseTo(pull, within(TURN * pull));
                ended++;
            }
        }
        assertThat(ended).isPositive();
    }

    /** Of a turn's radius, r = V² / (g √(n² − 1)) with V² = (1.2 V_s)² n: n² (1 − k²) = 1, k = (1.2 V_s)² / g r. */
    private static double load(double stall, double radius) {
        double k = Performance.SAFE * stall * Performance.SAFE * stall / (Atmosphere.GRAVITY * radius);
        return 1 / Math.sqrt(1 - k * k);
    }

    @Test
    void everySpeedIsAsGoodAsTheBest() {
        ErrorStatistics climb = new ErrorStatistics();
        ErrorStatistics endurance = new ErrorStatistics();
        ErrorStatistics range = new ErrorStatistics();
        ErrorStatistics outAndBack = new ErrorStatistics();
        for (long seed = 0; seed < DESIGNS; seed++) {
            TrimmedFlight flight = Flights.of(Arrangements.near(seed), WEIGHT).flight;
            double wind = 2.0 * (seed % 4);
            Performance performance = of(flight, train, wind);
            FullThrottle full = performance.fullThrottle();
            LevelFlight level = performance.level();
            double safe = Performance.SAFE * flight.stallSpeed();
            double slowest = Math.max(safe, 1.33 * wind);
            double top = full.topSpeed();
            if (top > slowest) {
                climb.add(full.climbRate() / -least(safe, top, v -> -full.climbRate(flight, v)) - 1);
                DoubleUnaryOperator power = v -> LevelFlight.power(train, flight.poweredDrag(v, DISC), v);
                endurance.add(power.applyAsDouble(level.enduranceSpeed()) / least(slowest, top, power) - 1);
                DoubleUnaryOperator perMetre = v -> power.applyAsDouble(v) / v;
                range.add(perMetre.applyAsDouble(level.rangeSpeed()) / least(slowest, top, perMetre) - 1);
                DoubleUnaryOperator bothWays = v -> power.applyAsDouble(v) / (v - wind * wind / v);
                double cruise = Math.max(Performance.CRUISE * flight.stallSpeed(), 1.33 * wind);
                if (top > cruise) {
                    outAndBack.add(bothWays.applyAsDouble(level.cruiseSpeed()) / least(cruise, top, bothWays) - 1);
                }
            }
        }

        for (ErrorStatistics errors : new ErrorStatistics[] {climb, endurance, range, outAndBack}) {
            assertThat(errors.largest()).as("RMS %.6f", errors.rms()).isLessThan(LARGEST);
            assertThat(errors.rms()).isLessThan(RMS);
        }
    }
}
