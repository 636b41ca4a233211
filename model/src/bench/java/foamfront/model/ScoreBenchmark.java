package foamfront.model;

import foamfront.model.appraisal.Appraiser;
import foamfront.model.appraisal.Score;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One full appraisal by score: every measure and limit of the sample trainer (a feasible design, so that no stage is left out),
 * one thread. Run with {@code ./test --bench}; allocation by JMH's gc profiler.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class ScoreBenchmark {
    private final Design design = Samples.trainer();
    private final Mission mission = Samples.mission();
    private final Appraiser appraiser =
            new Appraiser(List.of(Measure.PAYLOAD, Measure.ENDURANCE, Measure.BUILD_COST));

    @Benchmark
    public Score score() {
        return appraiser.score(design, mission, Factors.NOMINAL);
    }
}
