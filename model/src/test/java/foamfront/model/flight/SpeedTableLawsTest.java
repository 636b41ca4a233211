package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.validation.ErrorStatistics;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Twelve speeds, a parabola and the curve at its vertex against a search a thousand times finer, on trimmed polars of
 * random designs.
 */
class SpeedTableLawsTest {
    /** Found over these designs, rounded up. */
    private static final double LARGEST = 5e-4;

    private static final double RMS = 1e-4;

    private static final int FINE = 4000;

    @Test
    void minimaLieWithinATwentiethOfAPerCent() {
        ErrorStatistics drags = new ErrorStatistics();
        ErrorStatistics powers = new ErrorStatistics();
        LongStream.range(0, 216).forEach(seed -> {
            TrimmedFlight flight = Flights.of(Arrangements.near(seed), 6).flight;
            drags.add(error(flight, flight::drag));
            powers.add(error(flight, v -> flight.drag(v) * v));
        });

        assertThat(drags.largest()).as("RMS %.6f", drags.rms()).isLessThan(LARGEST);
        assertThat(drags.rms()).isLessThan(RMS);
        assertThat(powers.largest()).as("RMS %.6f", powers.rms()).isLessThan(LARGEST);
        assertThat(powers.rms()).isLessThan(RMS);
    }

    private static double error(TrimmedFlight flight, DoubleUnaryOperator curve) {
        SpeedTable table = new SpeedTable();
        table.spread(flight.stallSpeed());
        double[] y = new double[SpeedTable.SIZE];
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            y[i] = curve.applyAsDouble(table.speed[i]);
        }
        table.minimise(y, 0, curve);
        double slowest = table.speed[0];
        double step = (table.speed[SpeedTable.SIZE - 1] - slowest) / FINE;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= FINE; i++) {
            least = Math.min(least, curve.applyAsDouble(slowest + step * i));
        }
        return table.value() / least - 1;
    }

    @Test
    void aMinimumAtTheEndIsThatEnd() {
        SpeedTable table = new SpeedTable();
        table.spread(5);
        double[] falling = new double[SpeedTable.SIZE];
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            falling[i] = -i;
        }

        table.minimise(falling);

        assertThat(table.at()).isEqualTo(table.speed[SpeedTable.SIZE - 1]);
        assertThat(table.value()).isCloseTo(1 - SpeedTable.SIZE, within(0.0));
    }

    /** Drag falls to a minimum between the first two speeds where the stall is near that of best glide. */
    @Test
    void aMinimumBesideTheFirstSpeedIsFound() {
        SpeedTable table = new SpeedTable();
        table.spread(5);
        double least = table.speed[0] + 0.4 * (table.speed[1] - table.speed[0]);
        double[] bowl = new double[SpeedTable.SIZE];
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            bowl[i] = (table.speed[i] - least) * (table.speed[i] - least);
        }

        table.minimise(bowl);

        assertThat(table.at()).isCloseTo(least, within(1e-9));
    }

    @Test
    void noSpeedBelowTheSlowestAllowedIsTaken() {
        SpeedTable table = new SpeedTable();
        table.spread(5);
        double[] rising = new double[SpeedTable.SIZE];
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            rising[i] = table.speed[i] * table.speed[i];
        }

        table.minimise(rising, 7, v -> v * v);

        assertThat(table.at()).isEqualTo(7);
        assertThat(table.value()).isEqualTo(49);
    }
}
