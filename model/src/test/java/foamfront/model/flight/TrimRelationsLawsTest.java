package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.design.Design;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What must hold between two conditions of one trimmed aeroplane, over two hundred designs of every arrangement. */
class TrimRelationsLawsTest {
    private static final int CASES = 200;

    /** Sums of a few dozen terms. */
    private static final double ROUNDING = 1e-10;

    /** What the table of twelve speeds promises of a minimum's value on a parabolic polar. */
    private static final double VALUE = 1e-3;

    /** A flat minimum's place is known less well than its value. */
    private static final double PLACE = 0.02;

    private static double random(int seed, double from, double to) {
        return new SplittableRandom(seed).nextDouble(from, to);
    }

    /** At one lift coefficient k times the speed lifts k² the weight, and the loading's induced drag coefficient stays. */
    @Test
    void forcesGrowWithTheSquareOfSpeed() {
        for (int seed = 0; seed < CASES; seed++) {
            Design design = Arrangements.near(seed);
            double k = random(seed, 1.1, 2.5);
            TrimmedFlight light = Flights.of(design, 7).flight;
            TrimmedFlight heavy = Flights.of(design, 7 * k * k).flight;
            assertThat(heavy.speedAt(0.5) / light.speedAt(0.5)).isCloseTo(k, within(ROUNDING));
            light.drag(light.speedAt(0.5), 0.5);
            heavy.drag(heavy.speedAt(0.5), 0.5);
            assertThat(heavy.inducedDrag()).isCloseTo(light.inducedDrag(), within(ROUNDING));
            assertThat(heavy.profileDrag()).isLessThanOrEqualTo(light.profileDrag() + ROUNDING);
        }
    }

    /** Profile, induced and parasite drag make up the drag, and at one lift coefficient none rises with the Reynolds number. */
    @Test
    void dragPartsAddUpAndFallWithReynoldsNumber() {
        for (int seed = 0; seed < CASES; seed++) {
            TrimmedFlight flight = Flights.of(Arrangements.near(seed), 7).flight;
            double profile = Double.POSITIVE_INFINITY;
            double parasite = Double.POSITIVE_INFINITY;
            for (double speed = 8; speed < 24; speed *= 1.2) {
                double drag = flight.drag(speed, 0.4);
                double parts = flight.profileDrag() + flight.inducedDrag() + flight.parasiteDrag();
                double pressureArea = 0.5 * flight.density() * speed * speed * flight.referenceArea();
                assertThat(drag).isCloseTo(pressureArea * parts, within(ROUNDING * drag));
                assertThat(flight.profileDrag()).isLessThanOrEqualTo(profile);
                assertThat(flight.parasiteDrag()).isLessThanOrEqualTo(parasite);
                profile = flight.profileDrag();
                parasite = flight.parasiteDrag();
            }
        }
    }

    /** In level flight lift is the weight, at any speed. */
    @Test
    void levelFlightLiftsTheWeight() {
        for (int seed = 0; seed < CASES; seed++) {
            double weight = random(seed, 3, 15);
            TrimmedFlight flight = Flights.of(Arrangements.near(seed), weight).flight;
            for (double speed = 7; speed < 20; speed *= 1.3) {
                double pressureArea = 0.5 * flight.density() * speed * speed * flight.referenceArea();
                assertThat(pressureArea * flight.liftCoefficient(speed)).isCloseTo(weight, within(ROUNDING));
            }
        }
    }

    /**
     * On C_D = C_D0 + k C_L² least power is where induced drag is three times the rest, 3^(1/4) slower than best lift over drag
     * (J. D. Anderson, Introduction to Flight, ch. 6).
     */
    @Test
    void leastPowerOfAParabolicPolarIsWhereInducedDragIsThreeTimesTheRest() {
        for (int seed = 0; seed < CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double weight = random.nextDouble(3, 15);
            double qArea = 0.5 * 1.225 * random.nextDouble(0.1, 0.5);
            double zeroLift = random.nextDouble(0.02, 0.07);
            double k = random.nextDouble(0.04, 0.13);
            SpeedTable table = new SpeedTable();
            // From a stall slow enough for the speed of least power to lie inside the table, wherever on it.
            double slowest = Math.sqrt(weight / qArea * Math.sqrt(k / (3 * zeroLift)));
            table.spread(slowest / random.nextDouble(1.2, 1.6));
            DoubleUnaryOperator curve = v -> {
                double c = weight / (qArea * v * v);
                return qArea * v * v * (zeroLift + k * c * c);
            };
            double[] power = new double[SpeedTable.SIZE];
            for (int i = 0; i < SpeedTable.SIZE; i++) {
                table.drag[i] = curve.applyAsDouble(table.speed[i]);
                power[i] = table.drag[i] * table.speed[i];
            }
            table.minimise(table.drag, 0, curve);
            double glide = table.at();
            assertThat(table.value()).isCloseTo(2 * weight * Math.sqrt(k * zeroLift), within(VALUE * table.value()));
            table.minimise(power, 0, v -> curve.applyAsDouble(v) * v);
            double lift = weight / (qArea * table.at() * table.at());
            assertThat(k * lift * lift / zeroLift).isCloseTo(3, within(4 * 3 * PLACE));
            assertThat(glide / table.at()).isCloseTo(StrictMath.sqrt(Math.sqrt(3)), within(2 * PLACE));
            double exact = 4 * zeroLift * qArea * slowest * slowest * slowest;
            assertThat(table.value()).isCloseTo(exact, within(VALUE * exact));
        }
    }
}
