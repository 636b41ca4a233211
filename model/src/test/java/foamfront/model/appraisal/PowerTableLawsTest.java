package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Samples;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of power against speed tells the same as the measures beside it. */
class PowerTableLawsTest {
    /** The measure is the best of a table of speeds, PerformanceLawsTest; of the rate. */
    private static final double TABLE = 1e-3;

    /** Speeds between which the table's steps of 9 % cannot miss much of a flat maximum; of the rate. */
    private static final double STEP = 0.02;

    private final Appraiser appraiser = new Appraiser(List.of());

    static LongStream seeds() {
        return LongStream.range(0, 36);
    }

    /** Both with the slipstream of full throttle. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void bestClimbOfTheTableIsTheClimbRate(long seed) {
        Appraisal found = appraiser.appraise(Arrangements.near(seed), Samples.mission(), Factors.NOMINAL);
        double safe = 1.2 * found.measures().of(Measure.STALL_SPEED);
        double rate = found.measures().of(Measure.CLIMB_RATE);
        double best = Math.max(
                at(safe, found.power()),
                found.power().stream()
                        .filter(point -> point.speed() >= safe)
                        .mapToDouble(PowerPoint::climb)
                        .max()
                        .orElseThrow());

        assertThat(best)
                .isLessThanOrEqualTo(rate + TABLE * Math.abs(rate))
                .isCloseTo(rate, within(STEP * Math.abs(rate)));
    }

    /** The least speed allowed lies between two of the table, and a draggy model climbs best there. */
    private static double at(double speed, List<PowerPoint> table) {
        int i = 0;
        while (table.get(i + 1).speed() < speed) {
            i++;
        }
        PowerPoint below = table.get(i);
        PowerPoint above = table.get(i + 1);
        double share = (speed - below.speed()) / (above.speed() - below.speed());
        return below.climb() + share * (above.climb() - below.climb());
    }
}
