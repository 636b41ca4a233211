package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.validation.ErrorStatistics;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Twelve speeds and a parabola against a search a thousand times finer, on trimmed polars of random designs. */
class SpeedTableLawsTest {
    /** Found over these designs, rounded up: a tenth of a per cent needs polars without the corners of measured tables. */
    private static final double LARGEST = 0.0105;

    /** 0.315 % over the arrangements there are, rounded up. */
    private static final double RMS = 0.0033;

    private static final int FINE = 4000;
    private static final double SLOWEST = 1.05;

    @Test
    void minimaLieWithinAboutOnePerCent() {
        ErrorStatistics drags = new ErrorStatistics();
        ErrorStatistics powers = new ErrorStatistics();
        LongStream.range(0, 54).forEach(seed -> {
            TrimmedFlight flight = Flights.of(Arrangements.near(seed), 6).flight;
            SpeedTable table = new SpeedTable();
            table.fill(flight, 0);
            double fastest = table.speed[SpeedTable.SIZE - 1];
            double leastDrag = Double.POSITIVE_INFINITY;
            double leastPower = Double.POSITIVE_INFINITY;
            for (int i = 0; i <= FINE; i++) {
                double slowest = SLOWEST * flight.stallSpeed();
                double v = slowest + (fastest - slowest) * i / FINE;
                double drag = flight.drag(v);
                leastDrag = Math.min(leastDrag, drag);
                leastPower = Math.min(leastPower, drag * v);
            }
            table.minimise(table.drag);
            drags.add(table.value() / leastDrag - 1);
            double[] power = new double[SpeedTable.SIZE];
            for (int i = 0; i < SpeedTable.SIZE; i++) {
                power[i] = table.drag[i] * table.speed[i];
            }
            table.minimise(power);
            powers.add(table.value() / leastPower - 1);
        });

        assertThat(drags.largest()).isLessThan(LARGEST);
        assertThat(drags.rms()).isLessThan(RMS);
        assertThat(powers.largest()).isLessThan(LARGEST);
        assertThat(powers.rms()).isLessThan(RMS);
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
}
