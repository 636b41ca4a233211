package foamfront.model.appraisal;

import foamfront.model.Samples;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
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
 * What a workshop's worth of one appraisal takes: geometry, patterns, fast nesting, cost, minutes and masses of the sample trainer,
 * then its structure; the air between them is solved once, outside the measurement. Together they are to stay below 8 µs. Run with
 * {@code ./test --bench WorkshopBenchmark}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class WorkshopBenchmark {
    private final Workbench bench = flown();

    private static Workbench flown() {
        Workbench bench = new Workbench(Samples.trainer(), Samples.mission(), Factors.NOMINAL);
        for (int stage = 0; stage < Stages.count(); stage++) {
            Stages.at(stage).run(bench);
        }
        return bench;
    }

    @Benchmark
    public double workshop() {
        WorkshopStage.run(bench);
        return bench.get(Measure.BUILD_COST);
    }

    @Benchmark
    public double strength() {
        StrengthStage.run(bench);
        return bench.get(Measure.WING_BENDING);
    }

    @Benchmark
    public double together() {
        WorkshopStage.run(bench);
        StrengthStage.run(bench);
        return bench.get(Measure.WING_BENDING) + bench.get(Measure.BUILD_COST);
    }
}
